import fc from 'fast-check';
import { expect, test } from 'vitest';
import { marcxmlIntentions } from '../../src/intake/marcxml/marcxml-intentions.ts';
import { collection, recordXml } from '../intake/marcxml/xml.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { inTime } from './answer-law.ts';
import { type Chance, chances } from './chance.ts';
import { damaged } from './damaged.ts';
import { expectLawfulIntention, pieces, readLawfully } from './file-law.ts';
import { hostileDates, hostileTexts } from './hostile-values.ts';

const seed = seedOfRun();
console.info(`Hostile records of libraries: seed ${seed}`);

const tags = [
  '001',
  '003',
  '005',
  '006',
  '007',
  '008',
  '010',
  '020',
  '034',
  '041',
  '100',
  '245',
  '250',
  '260',
  '264',
  '300',
];
const more = [
  '490',
  '500',
  '510',
  '533',
  '600',
  '650',
  '700',
  '752',
  '776',
  '780',
  '787',
  '830',
  '880',
  '999',
  '00',
  '',
  'x',
];

/** Texts as XML writes them; what XML cannot have is left to damage. */
const texts = [
  ...hostileTexts,
  ...hostileDates,
  'London :',
  'c1793.',
  '[179-?]',
  'enk',
  '920219s1793    enka          000 0 eng  ',
].map(text => text.slice(0, 5_000).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;'));

/** A record with fields that may stand in it, and anything in them. */
function anyRecord(chance: Chance): string {
  const fields = Array.from({ length: chance.below(12) }, () => {
    const tag = chance.pick([...tags, ...more]);
    if (tag < '010') return `<controlfield tag="${tag}">${chance.pick(texts)}</controlfield>`;
    const subfields = Array.from(
      { length: chance.below(5) },
      () =>
        `<subfield code="${chance.pick(['a', 'b', 'c', 'd', 'e', '0', '6', 'x', '', 'ab'])}">${chance.pick(texts)}</subfield>`,
    );
    const [one, two] = [chance.pick(['', ' ', '1', '0', 'x']), chance.pick(['', ' ', '4', '0'])];
    return `<datafield tag="${tag}" ind1="${one}" ind2="${two}">${subfields.join('')}</datafield>`;
  });
  return recordXml(chance.below(9)).replace('</record>', `${fields.join('')}</record>`);
}

async function lawful(bytes: Uint8Array, size: number): Promise<void> {
  try {
    await inTime(async () => {
      const read = await readLawfully(marcxmlIntentions(pieces(bytes, size), { file: 'a.xml', source: 'X' }));
      read.forEach(expectLawfulIntention);
    });
  } catch (cause) {
    throw new Error(`It does not hold for ${JSON.stringify(Buffer.from(bytes).toString().slice(0, 5_000))}`, { cause });
  }
}

test('whatever records come, each is taken or refused in time with its place', async () => {
  await fc.assert(
    fc.asyncProperty(chances, async chance => {
      const text = Buffer.from(collection(...Array.from({ length: 1 + chance.below(3) }, () => anyRecord(chance))));
      await lawful(chance.percent(60) ? damaged(text, chance) : text, chance.pick([1, 50, 100_000]));
    }),
    { seed, numRuns: runs(500, 10_000) },
  );
}, 3_600_000);

const entities = Array.from({ length: 12 }, (_, i) => `<!ENTITY e${i + 1} "${`&e${i};`.repeat(10)}">`).join('');

test.each([
  [
    'entities that name each other',
    `<!DOCTYPE r [<!ENTITY e0 "boom">${entities}]><collection>${recordXml(1, '&e12;')}</collection>`,
  ],
  [
    'an entity of another file',
    `<!DOCTYPE r [<!ENTITY x SYSTEM "file:///etc/hostname">]><collection>${recordXml(1, '&x;')}</collection>`,
  ],
  [
    'a document type elsewhere',
    `<!DOCTYPE r SYSTEM "http://localhost:1/x.dtd"><collection>${recordXml(1)}</collection>`,
  ],
  ['a hundred thousand elements in each other', `<collection>${'<record>'.repeat(100_000)}`],
  ['a hundred thousand elements of no record', `<collection>${'<a/>'.repeat(100_000)}</collection>`],
  [
    'ten thousand attributes',
    `<collection ${Array.from({ length: 10_000 }, (_, i) => `a${i}="1"`).join(' ')}>${recordXml(1)}</collection>`,
  ],
  ['a name of a megabyte', `<${'x'.repeat(1_000_000)}>`],
  ['a text of five megabytes', collection(recordXml(1, 'x'.repeat(5_000_000)))],
  ['a comment without end', `<collection><!--${'-'.repeat(1_000_000)}`],
  ['a section without end', `<collection><![CDATA[${']'.repeat(1_000_000)}`],
  [
    'twenty thousand fields',
    collection(
      recordXml(1).replace(
        '</record>',
        `${'<datafield tag="500" ind1=" " ind2=" "><subfield code="a">x</subfield></datafield>'.repeat(20_000)}</record>`,
      ),
    ),
  ],
  ['an encoding that is none', `<?xml version="1.0" encoding="KLINGON"?>${collection(recordXml(1))}`],
  ['a second document', `${collection(recordXml(1))}${collection(recordXml(2))}`],
  ['nothing', ''],
  ['a page of the web', '<!doctype html><html><body><p>503 <br> Service unavailable</body></html>'],
])('%s', async (_name, text) => {
  await lawful(Buffer.from(text), 65_536);
  const read = await readLawfully(marcxmlIntentions(pieces(Buffer.from(text), 65_536), { file: 'a.xml', source: 'X' }));
  expect(JSON.stringify(read)).not.toContain('boomboom');
});
