import { expect, test } from 'vitest';
import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import type { Drawing } from '../../src/output/draw/drawing.ts';
import { descent } from '../../src/questions/descent.ts';
import { descentDrawing } from '../../src/questions/descent-drawing.ts';
import { recordedClaimsCaution } from '../../src/questions/grounds.ts';
import { years } from '../output/draw/drawings.ts';
import { memoryStore } from '../support/memory-store.ts';
import { appearance, batchOf, edition, editionDescent, plate, work } from '../support/store-rows.ts';

async function drawn(rows: readonly AnyRow[], of: string): Promise<Drawing> {
  const store = memoryStore();
  await store.write(batchOf(rows));
  return descentDrawing(await descent(store, of));
}

const published = (name: string, date: string): ClaimOf<'Dating'> => ({
  id: `dating-of-${name}`,
  kind: 'Dating',
  of: `edition-of-${name}`,
  event: 'PUBLISHED',
  date,
});
const from = (pair: string, more: Partial<ClaimOf<'EditionDescent'>> = {}) =>
  editionDescent(pair, `edition-of-${pair[0]}`, `edition-of-${pair[1]}`, more);
const bound = (name: string, work: string, title: string, imprint: string) => ({
  ...edition(name),
  work: `work-of-${work}`,
  title,
  imprint,
});

const shelf = [
  { ...work('shore'), labels: [{ text: 'Pleasures of the Shore' }] },
  bound('a', 'shore', 'Vermaak aan de oever.', 'Amsterdam, P. Hartigh, 1751'),
  bound('b', 'shore', 'Lust am Ufer', 'Leipzig, Weidners Erben, [1758?]'),
  bound('c', 'shore', 'Pleasures of the Shore', 'London: T. Calloway'),
  ...[published('a', '1751'), published('b', '1758'), published('c', '1764')],
  ...['p', 'q', 'r'].map(name => plate(name)),
  ...['p', 'q', 'r'].map(name => appearance(`a${name}`, `plate-of-${name}`, 'edition-of-a')),
  appearance('bp', 'plate-of-p', 'edition-of-b'),
  appearance('bq', 'plate-of-q', 'edition-of-b', { presence: 'ABSENT' }),
  from('ba', { text: 'TRANSLATED', leave: 'WITHOUT_LEAVE', surfaces: 'COPIED', certainty: 'PROBABLE' }),
  from('cb', { text: 'SAME', leave: 'AUTHORISED' }),
];
const group = { id: 'work-of-shore', label: 'Pleasures of the Shore' };

test('editions are drawn with imprint, days, manner and plates, and joined as their surfaces say', async () => {
  expect(await drawn(shelf, 'work-of-shore')).toEqual({
    of: 'work-of-shore',
    title: 'Pleasures of the Shore',
    subtitle: 'Descent of the editions: 3 editions, 2 steps',
    nodes: [
      {
        id: 'edition-of-a',
        kind: 'edition',
        lines: ['Vermaak aan de oever', 'Amsterdam, P. Hartigh, 1751', '3 plates new'],
        days: years(1751),
        saysDays: true,
        group,
        plates: ['NEW', 'NEW', 'NEW'],
      },
      {
        id: 'edition-of-b',
        kind: 'edition',
        lines: [
          'Lust am Ufer',
          'Leipzig, Weidners Erben, [1758?]',
          'translated',
          'without leave',
          '1 plate went along',
          '1 left out',
          '1 not known to be in it',
        ],
        days: years(1758),
        saysDays: true,
        group,
        plates: ['WENT_ALONG', 'LEFT_OUT', 'NOT_KNOWN'],
      },
      {
        id: 'edition-of-c',
        kind: 'edition',
        lines: ['Pleasures of the Shore', 'London: T. Calloway', 'with leave', '1 plate not known to be in it'],
        days: years(1764),
        group,
        plates: ['NOT_KNOWN'],
      },
    ],
    steps: [
      {
        from: 'edition-of-a',
        to: 'edition-of-b',
        kind: 'copied surfaces',
        certainty: 'PROBABLE',
        sign: 'without leave',
      },
      { from: 'edition-of-b', to: 'edition-of-c', kind: 'surfaces not known', certainty: 'CERTAIN' },
    ],
    notes: ['Drawn from claims still said, held, and at least possible.', recordedClaimsCaution],
  });
});

test('the descent of one edition says so', async () => {
  expect((await drawn(shelf, 'edition-of-c')).subtitle).toBe(
    'Descent of the editions around this one: 3 editions, 2 steps',
  );
});

test.each([
  ['SAME', 'same surfaces'],
  ['RETOUCHED', 'retouched surfaces'],
  ['RECUT', 'recut surfaces'],
  ['COPIED', 'copied surfaces'],
  ['MIXED', 'mixed surfaces'],
] as const)('surfaces that are %s are drawn as %s', async (surfaces, kind) => {
  const rows = [work('shore'), bound('a', 'shore', 'A', ''), bound('b', 'shore', 'B', ''), from('ba', { surfaces })];
  expect((await drawn(rows, 'work-of-shore')).steps[0]!.kind).toBe(kind);
});

test('an edition that was published before the one it was made from takes part in a contradiction', async () => {
  const rows = shelf.map(row => (row.id === 'dating-of-c' ? { ...row, date: '1749' } : row));
  const drawing = await drawn(rows, 'work-of-shore');
  expect(drawing.steps.find(({ to }) => to === 'edition-of-c')!.contradiction).toBe(true);
  expect(drawing.notes[0]).toMatch(/^In contradiction: /);
});
