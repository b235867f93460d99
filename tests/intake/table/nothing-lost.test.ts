import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Bundle } from '../../../src/intake/intention.ts';
import { bundlesOf, header, mappingOf, plain } from './tables.ts';

/** A mapping that uses every rule that can drop words: parts, words, splits, conditions, dates, and records not made. */
const mapping = mappingOf({
  values: { caption: { column: 'title', part: '^([a-z]+) ' } },
  records: {
    print: {
      ...plain.records.print,
      fields: { caption: 'caption', form: { column: 'engraver', words: { cut: 'CUT' } } },
    },
    maker: {
      kind: 'Agent',
      if: { column: 'title', like: 'a' },
      each: { column: 'engraver', split: ';' },
      named: 'each',
    },
    book: { kind: 'Edition', named: 'book', fields: { work: 'work', title: { column: 'book', nothing: ['cut'] } } },
    work: { kind: 'Work', named: { column: 'book', replace: { d: 'e' } } },
  },
  claims: [
    {
      kind: 'Attribution',
      roles: { record: 'print', agent: 'maker' },
      fields: { role: { column: 'book', read: 'relator' } },
    },
    {
      kind: 'Dating',
      roles: { of: 'print' },
      fields: { event: { always: 'MADE' }, date: { column: 'date', read: 'museum date' } },
    },
    { kind: 'Imprint', roles: { edition: 'book' }, imprint: { place: 'date', agent: 'title' } },
  ],
});

const word = fc.constantFrom(
  'a',
  'd',
  'cut',
  'egr',
  '1793',
  'c.1793',
  'London',
  'S.l.',
  'etc.',
  '(b)',
  '"q"',
  '—',
  ';',
  ',',
);
const cell = fc.array(word, { maxLength: 4 }).map(words => words.join(' '));
const rows = fc.array(fc.tuple(cell, cell, cell, cell), { minLength: 1, maxLength: 3 });

/** Words of the rows that stand nowhere in what they come to. */
function lost(cells: readonly (readonly string[])[], bundles: readonly Bundle[]): string[] {
  return cells.flatMap((row, i) => {
    const kept = new Set(wordsOf(JSON.stringify([bundles[i]!.rows, bundles[i]!.links])));
    return row.flatMap(wordsOf).filter(each => !kept.has(each));
  });
}

function wordsOf(text: string): string[] {
  return text.match(/[\p{L}\p{N}]+/gu) ?? [];
}

async function taken(cells: readonly (readonly string[])[]): Promise<readonly Bundle[]> {
  const quoted = cells.map((row, i) => [`P-${i}`, ...row].map(each => `"${each.replaceAll('"', '""')}"`).join(','));
  return bundlesOf(mapping, [header, ...quoted]);
}

test('no word of a row is lost, whatever the rules make of it', async () => {
  await fc.assert(
    fc.asyncProperty(rows, async cells => {
      expect(lost(cells, await taken(cells))).toEqual([]);
    }),
  );
});

test('a word that is lost is found', async () => {
  const cells = [['d', 'cut', 'etc.', 'egr']];
  const [bundle] = await taken(cells);
  const rows = bundle!.rows.map(({ row, ...rest }) => {
    const { columns: _columns, ...fields } = row as typeof row & { columns?: object };
    return { ...rest, row: fields as typeof row };
  });
  expect(lost(cells, [bundle!])).toEqual([]);
  expect(lost(cells, [{ ...bundle!, rows }])).not.toEqual([]);
});
