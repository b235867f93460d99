import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Intention } from '../../../src/intake/intention.ts';
import { type MarcxmlOptions, marcxmlIntentions } from '../../../src/intake/marcxml/marcxml-intentions.ts';
import { collection, inPieces, recordXml } from './xml.ts';

async function intentions(input: string | Uint8Array, options?: MarcxmlOptions): Promise<Intention[]> {
  const all: Intention[] = [];
  for await (const intention of marcxmlIntentions(inPieces(input, 100), options)) all.push(intention);
  return all;
}

const what = (intention: Intention): string =>
  intention.outcome === 'taken' ? intention.origin.key : `refused ${intention.problem.code}`;

describe('intentions of MARCXML', () => {
  const file = `${collection(recordXml(1), recordXml(2, 'A & B'), recordXml(3), recordXml(''))}rest`;

  it('are one for each record, and one for each fault of the file', async () => {
    expect((await intentions(file)).map(what)).toEqual([
      '1',
      'refused INPUT_INVALID',
      '3',
      'refused INPUT_INVALID',
      'refused SOURCE_REFUSED',
    ]);
  });

  it('name file, record, control number and reason of what is refused', async () => {
    const [, second] = await intentions(file, { file: 'shelf.xml' });
    expect(second).toMatchObject({
      problem: {
        place: { file: 'shelf.xml', record: 2, key: '2' },
        message: expect.stringMatching(/^the XML is not well-formed at line 4, column \d+/),
      },
    });
  });

  it('go on after those already dealt with, the same as if never interrupted', async () => {
    const all = await intentions(file);
    for (let skip = 0; skip <= all.length; skip++) expect(await intentions(file, { skip })).toEqual(all.slice(skip));
  });

  it('take the source of the record before the one given', async () => {
    const without = recordXml(2).replace('<controlfield tag="003">XX</controlfield>', '');
    const read = await intentions(collection(recordXml(1), without), { source: 'DE-1' });
    expect(read.map(one => one.outcome === 'taken' && one.origin)).toEqual([
      { source: 'XX', key: '1' },
      { source: 'DE-1', key: '2' },
    ]);
  });

  it('do not change with the name of the file', async () => {
    const [one] = await intentions(collection(recordXml(1)), { file: 'a.xml' });
    const [other] = await intentions(collection(recordXml(1)), { file: 'b.xml' });
    expect({ ...other, place: undefined }).toEqual({ ...one, place: undefined });
  });

  it('come of any fields whatever, with locators that tell claims of a kind apart', async () => {
    const seed = 20_261_126;
    const tag = fc.constantFrom(
      '008',
      '046',
      '100',
      '245',
      '260',
      '264',
      '300',
      '700',
      '720',
      '773',
      '775',
      '787',
      '880',
    );
    const value = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom('London :', '[1834?]', '880-01', '(XX)5', 'ill.'),
    );
    const subfields = fc.array(fc.tuple(fc.constantFrom(...'abcdefgiknpqtvw46'), value), { maxLength: 6 });
    await fc.assert(
      fc.asyncProperty(fc.array(fc.tuple(tag, subfields), { maxLength: 12 }), async fields => {
        const xml = fields.map(([name, parts]) => fieldXml(name, parts)).join('');
        const [read, ...more] = await intentions(collection(recordXml(1).replace('</record>', `${xml}</record>`)));
        expect(more).toEqual([]);
        if (read?.outcome !== 'taken') return;
        const locators = [...read.rows, ...read.links].flatMap(({ row }) =>
          'evidence' in row ? [`${row.kind} ${row.evidence?.[0]?.locator}`] : [],
        );
        expect(new Set(locators).size).toBe(locators.length);
      }),
      { seed, numRuns: 300 },
    );
  });
});

function fieldXml(tag: string, subfields: readonly (readonly [string, string])[]): string {
  if (tag === '008')
    return `<controlfield tag="008">${escaped(subfields.map(([, value]) => value).join(''))}</controlfield>`;
  const parts = subfields.map(([code, value]) => `<subfield code="${code}">${escaped(value)}</subfield>`);
  return `<datafield tag="${tag}" ind1=" " ind2="1">${parts.join('')}</datafield>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
