import { expect, test } from 'vitest';
import { parseDay } from '../../src/domain/dates/calendar.ts';
import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import { lineage } from '../../src/questions/lineage.ts';
import type { Lineage, LineageAsked } from '../../src/questions/lineage-answer.ts';
import { memoryStore } from '../support/memory-store.ts';
import { batchOf, copying, dating, motif, plate, thing } from '../support/store-rows.ts';

async function ask(rows: readonly AnyRow[], asked: LineageAsked): Promise<Lineage> {
  const store = memoryStore();
  await store.write(batchOf(rows));
  return lineage(store, asked);
}

/** Nodes as `id depth direction`. */
const nodes = (answer: Lineage) =>
  answer.nodes.map(({ record, depth, handedness }) => `${record.replace(/^.*-of-/, '')} ${depth} ${handedness}`);

const copied = (more: Partial<ClaimOf<'Copying'>> = {}) => copying('ab', 'plate-of-a', 'plate-of-b', more);

test('the direction seen when two of them were looked at side by side counts as that of a copying does', async () => {
  const seen: AnyRow = {
    ...{ id: 'comparison-of-ab', kind: 'Comparison', picture: 'plate-of-a', against: 'plate-of-b' },
    handedness: 'REVERSED',
  };
  const rows = [plate('a'), plate('b'), copied(), seen];
  expect(nodes(await ask(rows, { of: 'plate-of-a' }))).toEqual(['a 0 SAME', 'b 1 REVERSED']);
  const against = [plate('a'), plate('b'), copied({ handedness: 'SAME' }), seen];
  const { contradictions } = await ask(against, { of: 'plate-of-a' });
  expect(contradictions.map(({ code, involved }) => [code, involved.toSorted()])).toEqual([
    ['MIRROR', ['comparison-of-ab', 'copying-of-ab']],
  ]);
});

test('a motif is no older than the design that its piece follows', async () => {
  const rows: readonly AnyRow[] = [
    plate('a'),
    thing('Piece', 'dish'),
    motif('m', 'piece-of-dish'),
    { id: 'design-of-d', kind: 'Design' },
    copying('ma', 'motif-of-m', 'plate-of-a'),
    dating('d', 'design-of-d', '1790', { event: 'INTRODUCED' }),
    { id: 'follows-of-d', kind: 'Follows', record: 'piece-of-dish', design: 'design-of-d' },
  ];
  expect((await ask(rows, { of: 'motif-of-m' })).nodes[0]?.made).toEqual({ lo: parseDay('1790-01-01') });
});

test('an artwork is no later than its first holder had it', async () => {
  const held: AnyRow = {
    ...{ id: 'custody-of-x', kind: 'Custody', thing: 'artwork-of-x', holder: 'agent-of-h', acquired: '1801' },
  };
  const rows = [plate('b'), thing('Artwork', 'x'), copying('bx', 'plate-of-b', 'artwork-of-x'), held];
  const answer = await ask([...rows, thing('Agent', 'h')], { of: 'artwork-of-x' });
  expect(answer.nodes[0]?.made).toEqual({ hi: parseDay('1801-12-31') });
});

test('a design is a picture as others are', async () => {
  const rows: readonly AnyRow[] = [
    plate('a'),
    { id: 'design-of-d', kind: 'Design' },
    copying('da', 'design-of-d', 'plate-of-a', { handedness: 'SAME' }),
  ];
  expect(nodes(await ask(rows, { of: 'design-of-d' }))).toEqual(['d 0 SAME', 'a 1 SAME']);
});
