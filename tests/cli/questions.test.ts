import { beforeAll, describe, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const store = ['--store', temporaryStore()];

beforeAll(async () => {
  expect(await runCli(['intake', 'graph', ...demoFiles, ...store])).toMatchObject({ code: 0, err: '' });
});

const said = async (...args: readonly string[]) => (await runCli([...args, ...store])).out;

describe('find', () => {
  test('names each record, its kind and its id', async () => {
    expect(await said('find', 'zwolf', 'kupf')).toBe(
      ['Lust am Ufer, in zwölf Kupfern  — edition', '    edition-shore-leipzig-1758', ''].join('\n'),
    );
  });

  test('says that nothing was found', async () => {
    expect(await runCli(['find', 'zebra', ...store])).toEqual({
      code: 0,
      out: 'Nothing found for "zebra".\n',
      err: '',
    });
  });

  test('keeps to kinds and to a number, and says that there is more', async () => {
    expect(await said('find', 'shore', '--kind', 'Edition', '--kind', 'Work', '--first', '1')).toBe(
      [
        'Pleasures of the Shore  — work',
        '    work-shore-pleasures',
        'More were found: ask for more with --first, or with more words.',
        '',
      ].join('\n'),
    );
  });

  test('gives JSON with the names of the API', async () => {
    expect(await jsonOf(['find', 'ohlsen', ...store])).toEqual({
      nodes: [{ id: 'agent-peter-ohlsen', kind: 'Agent', match: 'WORDS', label: 'Peter Ohlsen' }],
      hasNextPage: false,
      cut: false,
    });
  });
});

describe('ask reach', () => {
  test('tells the object, the counts, and each edition with its room, way and grounds', async () => {
    const text = await said('ask', 'reach', '--piece', 'piece-shore-dish');
    for (const part of [
      'Ellerholm faience works',
      'between 1 January 1766 and 1 January 1772',
      '        3  in time on every reckoning\n        3  in time on some reckonings\n        1  too late on every reckoning\n',
      'Lust am Ufer, in zwölf Kupfern. Leipzig, Weidners Erben, 1758',
      '2172 days of room',
      '30 days short',
      'stay-works-at-ellerholm',
      'decoratedWithin',
      '"In time" is not "was there"',
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });

  test('gives JSON with days written out', async () => {
    const answer = await jsonOf(['ask', 'reach', '--piece', 'piece-shore-dish', '--first', '1', ...store]);
    expect(answer).toMatchObject({
      objectDay: { first: '1766-01-01', last: '1772-01-01' },
      counts: { inEveryCase: 3, inSomeCases: 3, inNoCase: 1, contradictory: 0 },
      editions: {
        nodes: [
          {
            edition: 'edition-ferry-sheet',
            verdict: 'IN_EVERY_CASE',
            margin: { every: 1075, some: 4748 },
            arrival: { first: '1755-01-02', last: '1763-01-22' },
          },
        ],
        hasNextPage: true,
      },
    });
  });

  test('takes a place by its name, a form in small letters, and editions that are not said to be illustrated', async () => {
    const asked = ['ask', 'reach', '--place-name', 'Hamburg', '--by', '1770', ...store];
    expect(await jsonOf([...asked, '--form', 'pattern-book'])).toMatchObject({
      counts: { inEveryCase: 3, inSomeCases: 1, inNoCase: 1 },
    });
    expect(await jsonOf([...asked, '--illustrated=no'])).toMatchObject({ counts: { inEveryCase: 0, inNoCase: 0 } });
  });
});

describe('ask history', () => {
  test('tells who, when and why', async () => {
    expect(await said('ask', 'history', 'piece-shore-dish')).toMatch(
      /^3 {2}2026-01-01T00:\d\d:\d\d\.000Z {2}intake: graph {2}\(added\)\n$/,
    );
  });

  test('refuses an id under which nothing is recorded', async () => {
    expect(await runCli(['ask', 'history', 'piece-no-such', ...store])).toEqual({
      code: 1,
      out: '',
      err: 'NOT_FOUND: nothing is recorded under "piece-no-such"\n',
    });
  });
});

describe('cite', () => {
  test.each([
    [[], 'Lust am Ufer, in zwölf Kupfern. Leipzig: Weidners Erben, 1758.'],
    [['--style', 'mhra'], 'Lust am Ufer, in zwölf Kupfern (Leipzig: Weidners Erben, 1758)'],
    [['--style', 'apa'], 'Lust am Ufer, in zwölf Kupfern. (1758). Weidners Erben.'],
  ])('writes text in the style of %j', async (style, text) => {
    expect(await said('cite', 'edition-shore-leipzig-1758', ...style)).toBe(`${text}\n`);
  });

  test('writes BibTeX', async () => {
    expect(await said('cite', 'edition-shore-leipzig-1758', '--format', 'bibtex')).toBe(
      [
        '@book{lust1758-shore-leipzig-1758,',
        '  title = {{Lust am Ufer, in zwölf Kupfern}},',
        '  address = {Leipzig},',
        '  publisher = {Weidners Erben},',
        '  year = {1758},',
        '  language = {de},',
        '}',
        '',
      ].join('\n'),
    );
  });

  test('writes CSL-JSON that is JSON', async () => {
    expect(JSON.parse(await said('cite', 'edition-shore-leipzig-1758', '--format', 'csl'))).toMatchObject([
      { id: 'edition-shore-leipzig-1758', type: 'book', issued: { 'date-parts': [[1758]] } },
    ]);
  });

  test.each([
    [['edition-no-such'], 'NOT_FOUND: '],
    [['work-ferry-print'], 'INPUT_INVALID: expected the id of an edition'],
    [['edition-ferry-sheet', '--style', 'nope'], 'INPUT_INVALID: style: '],
    [['edition-ferry-sheet', '--style', 'no-such.csl'], 'SOURCE_REFUSED: expected a style that can be read'],
  ])('refuses %j', async (args, message) => {
    const { code, out, err } = await runCli(['cite', ...args, ...store]);
    expect([code, out, err.slice(0, message.length)]).toEqual([1, '', message]);
  });
});
