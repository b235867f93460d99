import { describe, expect, test } from 'vitest';
import { daysFromCivil } from '../../src/domain/dates/calendar.ts';
import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import type { Drawing } from '../../src/output/draw/drawing.ts';
import { recordedClaimsCaution } from '../../src/questions/grounds.ts';
import { lineage } from '../../src/questions/lineage.ts';
import { lineageDrawing } from '../../src/questions/lineage-drawing.ts';
import { memoryStore } from '../support/memory-store.ts';
import {
  appearance,
  batchOf,
  copying,
  detail,
  edition,
  matrix,
  plate,
  printedFrom,
  work,
} from '../support/store-rows.ts';

async function drawn(rows: readonly AnyRow[], of: string): Promise<Drawing> {
  const store = memoryStore();
  await store.write(batchOf(rows));
  return lineageDrawing(await lineage(store, { of }));
}

const made = (name: string, date: string): ClaimOf<'Dating'> => ({
  id: `dating-of-${name}`,
  kind: 'Dating',
  of: `plate-of-${name}`,
  event: 'MADE',
  date,
});
const copied = (pair: string, more: Partial<ClaimOf<'Copying'>> = {}) =>
  copying(pair, `plate-of-${pair[0]}`, `plate-of-${pair[1]}`, more);
const steps = ({ steps: all }: Drawing) =>
  all.map(({ from, to, kind, certainty, sign, contradiction }) => {
    const more = [sign, contradiction === true ? 'contradiction' : undefined].filter(word => word !== undefined);
    return [from.replace('-of-', ' '), '→', to.replace('-of-', ' '), kind, certainty, ...more].join(' ');
  });

/** A lost painting, the sheet etched after it, which a book has, and two tiles of a panel painted after that. */
const tiles: readonly AnyRow[] = [
  { id: 'artwork-of-g', kind: 'Artwork', labels: [{ text: 'The Ferry' }], medium: 'oil on panel', survival: 'LOST' },
  plate('s', { caption: 'Das Fährboot', form: 'SINGLE_SHEET_PRINT', technique: 'etching' }),
  { ...work('views'), labels: [{ text: 'Views' }] },
  edition('v', { work: 'work-of-views', title: 'Ansichten.' }),
  appearance('vs', 'plate-of-s', 'edition-of-v', { number: '7' }),
  { id: 'dating-of-v', kind: 'Dating', of: 'edition-of-v', event: 'PUBLISHED', date: '1750' },
  { id: 'piece-of-w', kind: 'Piece', labels: [{ text: 'Panel' }] },
  { id: 'motif-of-x', kind: 'Motif', piece: 'piece-of-w', caption: 'A ferry', technique: 'painted' },
  { id: 'motif-of-y', kind: 'Motif', piece: 'piece-of-w' },
  copying('sg', 'plate-of-s', 'artwork-of-g', { certainty: 'PROBABLE', handedness: 'REVERSED' }),
  copying('xs', 'motif-of-x', 'plate-of-s', { handedness: 'SAME' }),
  copying('ys', 'motif-of-y', 'plate-of-s'),
];

test('a lineage is drawn with names, what each is and where, days, directions and grounds', async () => {
  const by1750 = { hi: daysFromCivil(1750, 12, 31) };
  // A copy of what a book has is not before the book.
  const after1750 = { lo: daysFromCivil(1750, 1, 1) };
  const { nodes, steps, ...rest } = await drawn(tiles, 'artwork-of-g');
  expect(nodes).toEqual([
    {
      id: 'artwork-of-g',
      kind: 'artwork',
      lines: ['The Ferry', 'oil on panel, lost'],
      days: by1750,
      lost: true,
    },
    {
      id: 'plate-of-s',
      kind: 'sheet',
      lines: ['Das Fährboot', 'etching, Ansichten, no. 7'],
      days: by1750,
      group: { id: 'work-of-views', label: 'Views' },
    },
    {
      id: 'motif-of-x',
      kind: 'motif',
      lines: ['A ferry', 'painted, Panel'],
      days: after1750,
      group: { id: 'piece-of-w', label: 'Panel' },
    },
    {
      id: 'motif-of-y',
      kind: 'motif',
      lines: ['motif', 'Panel'],
      days: after1750,
      group: { id: 'piece-of-w', label: 'Panel' },
    },
  ]);
  expect(steps).toEqual([
    { from: 'artwork-of-g', to: 'plate-of-s', kind: 'copied', certainty: 'PROBABLE', sign: 'reverse' },
    { from: 'plate-of-s', to: 'motif-of-x', kind: 'copied', certainty: 'CERTAIN', sign: 'same' },
    { from: 'plate-of-s', to: 'motif-of-y', kind: 'copied', certainty: 'CERTAIN', sign: 'direction not known' },
  ]);
  expect(rest).toEqual({
    of: 'artwork-of-g',
    title: 'The Ferry',
    subtitle: 'Lineage of an artwork: 4 pictures, 3 steps',
    notes: ['Drawn from claims still said, held, and at least possible.', recordedClaimsCaution],
  });
});

describe('the steps', () => {
  test('have the kind, certainty and direction that their claims say', async () => {
    const rows = [
      plate('a'),
      plate('b'),
      matrix('m'),
      plate('c'),
      detail('d', 'plate-of-a'),
      // Of a detail that nothing follows there is nothing to draw.
      detail('e', 'plate-of-a'),
      copied('ba', { certainty: 'POSSIBLE', handedness: 'REVERSED' }),
      copying('cd', 'plate-of-c', 'detail-of-d', { handedness: 'SAME' }),
      printedFrom('am', 'plate-of-a', 'matrix-of-m'),
    ];
    expect(steps(await drawn(rows, 'plate-of-a')).sort()).toEqual([
      'detail d → plate c copied CERTAIN same',
      'matrix m → plate a printed CERTAIN reverse',
      'plate a → detail d part CERTAIN',
      'plate a → plate b copied POSSIBLE reverse',
    ]);
  });

  test('take part in a contradiction where one of dates, of directions or of circles names them', async () => {
    const dates = [plate('a'), plate('b'), copied('ba'), made('a', '1790'), made('b', '1780')];
    expect(steps(await drawn(dates, 'plate-of-a'))).toEqual([
      'plate a → plate b copied CERTAIN direction not known contradiction',
    ]);
    const mirror = [
      ...['a', 'b', 'c'].map(name => plate(name)),
      copied('ba', { handedness: 'REVERSED' }),
      copied('cb', { handedness: 'REVERSED' }),
      copied('ca', { handedness: 'REVERSED' }),
    ];
    const drawing = await drawn(mirror, 'plate-of-a');
    expect(drawing.steps.filter(({ contradiction }) => contradiction === true).length).toBe(3);
    expect(drawing.notes[0]).toMatch(/^In contradiction: /);
    expect((await drawn([plate('a'), copied('aa')], 'plate-of-a')).notes[0]).toMatch(/^In contradiction: /);
  });

  test('without a contradiction take part in none', async () => {
    const rows = [plate('a'), plate('b'), copied('ba'), made('a', '1780'), made('b', '1790')];
    expect((await drawn(rows, 'plate-of-a')).steps.map(step => step.contradiction)).toEqual([undefined]);
  });
});

test('dates that contradict each other are drawn as they are recorded', async () => {
  const twice = [made('a', '1790'), { ...made('a', '1780'), id: 'dating-of-a2' }];
  const { nodes } = await drawn([plate('a'), ...twice], 'plate-of-a');
  expect(nodes[0]!.days).toEqual({ lo: daysFromCivil(1790, 1, 1), hi: daysFromCivil(1780, 12, 31) });
});

test('what contradicting claims date says so, and what they do not speak of has the days that all others leave', async () => {
  const rows = ['a', 'b', 'c'].map(name => plate(name));
  const dates = [made('a', '1790'), made('b', '1780'), made('c', '1770')];
  const { nodes } = await drawn([...rows, copied('ba'), copied('ac'), ...dates], 'plate-of-a');
  const told = nodes.map(({ id, days, contradiction, lines }) => [id, days.lo, contradiction, lines.at(-1)]);
  expect(told.sort()).toEqual([
    ['plate-of-a', daysFromCivil(1790, 1, 1), true, 'its dates contradict each other'],
    ['plate-of-b', daysFromCivil(1780, 1, 1), true, 'its dates contradict each other'],
    ['plate-of-c', daysFromCivil(1770, 1, 1), undefined, expect.not.stringContaining('contradict')],
  ]);
});

test('contradictions are noted by names', async () => {
  const dates = [made('a', '1790'), made('b', '1780')];
  const rows = [plate('a', { caption: 'The Ferry' }), plate('b', { caption: 'Das Boot' }), copied('ba'), ...dates];
  expect((await drawn(rows, 'plate-of-a')).notes[0]).toMatch(
    /^In contradiction: “Das Boot” made: not before .* days short\.$/,
  );
});

test('that only one of several sources is the true one is noted by names', async () => {
  const captions = { a: 'The Ferry', b: 'Das Boot', c: 'Le bac' };
  const either = { alternativeTo: 'alternatives-of-a' };
  const rows = (open: boolean, ...copyings: readonly AnyRow[]): readonly AnyRow[] => [
    ...Object.entries(captions).map(([name, caption]) => plate(name, { caption })),
    { id: 'alternatives-of-a', kind: 'Alternatives', ...(open ? { open } : {}) },
    ...copyings,
  ];
  const notes = async (all: readonly AnyRow[]) => (await drawn(all, 'plate-of-a')).notes.slice(0, -2);
  const [ab, ac] = [copied('ab', either), copied('ac', either)];
  expect(await notes(rows(false, ab, ac))).toEqual([
    'Only one of these is the source of “The Ferry”: “Das Boot”; “Le bac”.',
  ]);
  expect(await notes(rows(true, ab))).toEqual([
    'Only one of these is the source of “The Ferry”: “Das Boot”; a source not recorded.',
  ]);
  expect(await notes(rows(false, ab))).toEqual([]);
});

test('what is missing, and that there is more, is noted', async () => {
  const rows = [plate('a'), plate('b'), plate('c'), copied('ba', { remove: 'AT_SOME_REMOVE' }), copied('cb')];
  const store = memoryStore();
  await store.write(batchOf(rows));
  const { notes } = lineageDrawing(await lineage(store, { of: 'plate-of-a', depth: 1 }));
  expect(notes[0]).toBe('There is more than is drawn: more steps lead on from here.');
  expect(notes[1]).toContain('at some remove');
});

test('what stands alone is drawn alone', async () => {
  expect((await drawn([plate('a')], 'plate-of-a')).subtitle).toBe('Lineage of a plate: nothing else is recorded');
});
