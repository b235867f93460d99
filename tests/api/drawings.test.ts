import { describe, expect, test } from 'vitest';
import { createApi } from '../../src/api/create-api.ts';
import { demoApi } from './demo-api.ts';

const { api, store, questions } = await demoApi();
const get = (path: string, method = 'GET', of = api) => of.fetch(new Request(`http://localhost${path}`, { method }));
const refused = async (path: string) => {
  const response = await get(path);
  const { errors } = (await response.json()) as { errors: [{ message: string; extensions: { code: string } }] };
  return [response.status, errors[0].extensions.code, errors[0].message];
};

describe('a drawing', () => {
  test.each([
    ['/draw/lineage/motif-dish-net-menders.svg', 'Die Netzflicker'],
    ['/draw/descent/work-shore-pleasures.svg', 'Lust am Ufer'],
    ['/draw/descent/edition-shore-london-1764.svg', 'Pleasures of the'],
  ])('%s is SVG that a browser will not run anything in', async (path, words) => {
    const response = await get(path);
    expect([response.status, response.headers.get('content-type')]).toEqual([200, 'image/svg+xml; charset=utf-8']);
    expect(response.headers.get('content-security-policy')).toBe("default-src 'none'; sandbox; frame-ancestors 'self'");
    expect(response.headers.get('x-content-type-options')).toBe('nosniff');
    const text = await response.text();
    expect([text.startsWith('<svg '), text.includes(words)]).toEqual([true, true]);
  });

  test('is PNG where it is asked for', async () => {
    const response = await get('/draw/lineage/motif-dish-net-menders.png');
    expect([response.status, response.headers.get('content-type')]).toEqual([200, 'image/png']);
    expect(Buffer.from(await response.arrayBuffer()).subarray(0, 8)).toEqual(
      Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    );
  });

  test('follows one way, or so many steps, where that is asked', async () => {
    const sources = await (await get('/draw/lineage/plate-ufer-4-net-menders.svg?towards=sources')).text();
    expect([sources.includes('The net menders'), sources.includes('Two men mending')]).toEqual([true, false]);
    const near = await (await get('/draw/lineage/motif-dish-net-menders.svg?depth=1')).text();
    expect([near.includes('Die Netzflicker'), near.includes('The net menders')]).toEqual([true, false]);
  });
});

describe('a drawing of what would be, or was', () => {
  const without = 'without=copying-dish-menders';
  test.each([
    [`/draw/lineage/motif-dish-net-menders.svg?${without}`, 'Left out: 1 claim: copying-dish-menders.'],
    ['/draw/descent/work-shore-pleasures.svg?as-of=1', 'As of change set 1, made'],
  ])('%s says so', async (path, words) => {
    const text = await (await get(path)).text();
    expect([text.includes(words), text.includes('Die Netzflicker')]).toEqual([true, false]);
  });
});

describe('what cannot be drawn is refused', () => {
  test.each([
    [
      '/draw/lineage/motif-dish-net-menders.svg?as-of=once',
      400,
      'INPUT_INVALID',
      'as of: expected a day such as 2026-03-01, came "once"',
    ],
    [
      '/draw/lineage/motif-dish-net-menders.svg?without=copying-of-none',
      400,
      'INPUT_INVALID',
      'without: expected the id of a claim, came "copying-of-none", which is not there',
    ],
    ['/draw/lineage/plate-no-such.svg', 404, 'NOT_FOUND', 'nothing is recorded under "plate-no-such"'],
    [
      '/draw/lineage/work-shore-pleasures.svg',
      400,
      'KIND_MISMATCH',
      'expected the id of a record of the kind Artwork or Plate or Motif or Detail or Matrix or Design, came "work-shore-pleasures", which is of the kind Work',
    ],
    [
      '/draw/descent/plate-evening-ferry.png',
      400,
      'KIND_MISMATCH',
      'expected the id of a record of the kind Work or Edition, came "plate-evening-ferry", which is of the kind Plate',
    ],
    ['/draw/lineage/nonsense.svg', 400, 'INPUT_INVALID', expect.stringContaining('came "nonsense"')],
    [
      '/draw/lineage/motif-dish-net-menders.svg?towards=up',
      400,
      'INPUT_INVALID',
      'towards: expected sources, copies or both, came "up"',
    ],
    ['/draw/lineage/motif-dish-net-menders.svg?depth=x', 400, 'INPUT_INVALID', 'depth: expected 0 to 30, came NaN'],
    ['/draw/lineage/motif-dish-net-menders.gif', 404, 'NOT_FOUND', expect.stringContaining('/draw/')],
    ['/draw/stemma/motif-dish-net-menders.svg', 404, 'NOT_FOUND', expect.stringContaining('/draw/')],
  ])('%s: %i %s', async (path, status, code, message) => {
    expect(await refused(path)).toEqual([status, code, message]);
  });

  test('and so is another method than GET', async () => {
    const response = await get('/draw/lineage/motif-dish-net-menders.svg', 'POST');
    expect([response.status, response.headers.get('allow')]).toEqual([405, 'GET, HEAD']);
  });

  test('a fault of the program is masked, and logged', async () => {
    const logged: Readonly<Record<string, unknown>>[] = [];
    const failing = { ...questions, draw: () => Promise.reject(new TypeError('secret')) };
    const broken = createApi({ store, questions: failing, log: event => logged.push(event) });
    const response = await get('/draw/lineage/motif-dish-net-menders.svg', 'GET', broken);
    expect(response.status).toBe(500);
    expect(await response.text()).not.toContain('secret');
    expect(logged).toMatchObject([{ level: 'error', event: 'unexpected-error', name: 'TypeError' }]);
  });
});
