import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import type { World } from '../../src/questions/ports.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { type Dice, randomDate, randomEdition, randomEditions, randomPlaces } from './random-graph.ts';
import { randomRows } from './random-rows.ts';
import { copying, dating, plate } from './store-rows.ts';
import { testWorld } from './test-world.ts';

/** Editions with what is said of them, pictures copied from each other, now and then every kind; all of it edited and withdrawn. */
export async function fillAtRandom(store: GraphStore, roll: Dice): Promise<void> {
  const world = testWorld(roll.below(1000));
  const there = new Set<string>();
  const write = async (rows: readonly AnyRow[], more: object = {}): Promise<void> => {
    // A row that is edited twice in a change has but one next version.
    const each = [...new Map(rows.map(row => [row.id, row])).values()];
    const added = new Set(each.flatMap(({ id }) => (there.has(id) ? [] : [id])));
    const changeSet = { moment: world.now(), who: roll.pick(['Ada', 'Å', 'é "q"']), why: 'chance', ...batch(roll) };
    await applyChanges(store, { rows: each, added, changeSet, ...more });
    for (const { id } of each) there.add(id);
  };
  const count = 2 + roll.below(6);
  const plates = Array.from({ length: 3 + roll.below(4) }, (_, i) => plate(`${i}`));
  const hasEveryKind = roll.chance(0.25);
  await write([
    ...randomPlaces,
    ...randomEditions(count, roll),
    ...plates,
    ...(hasEveryKind ? randomRows(1, roll) : []),
  ]);
  for (let step = roll.below(8); step > 0; step--) {
    if (roll.chance(0.3)) await removeSome(store, roll, world);
    await write(
      [
        ...(roll.chance(0.5) ? randomEdition(roll.below(count + 2), roll) : []),
        ...Array.from({ length: 1 + roll.below(3) }, () => randomPictureRow(plates, roll)),
        ...(hasEveryKind && roll.chance(0.3) ? randomRows(1, roll) : []),
      ],
      leftBehind(roll),
    );
  }
}

/** Copyings that are there, of which each may go. */
async function removeSome(store: GraphStore, roll: Dice, { now }: World): Promise<void> {
  const there = await store.rows(Array.from({ length: 9 }, (_, i) => `copying-of-${i}`));
  const remove = there.flatMap(row => (row !== undefined && roll.chance(0.5) ? [{ id: row.id }] : []));
  const changeSet = { moment: now(), who: 'Ada', why: 'chance' };
  await applyChanges(store, { rows: [], added: new Set(), remove, changeSet });
}

function batch(roll: Dice): { readonly batch?: string } {
  return roll.chance(0.5) ? { batch: `run-${roll.below(3)}` } : {};
}

function randomPictureRow(plates: readonly AnyRow[], roll: Dice): AnyRow {
  const [one, other] = [roll.pick(plates).id, roll.pick(plates).id];
  const standing = roll.chance(0.3) ? ({ standing: 'WITHDRAWN', withdrawnBecause: 'a "doubt"\n' } as const) : {};
  return roll.pick<AnyRow>([
    copying(`${roll.below(9)}`, one, other, standing),
    dating(`plate-${roll.below(5)}`, one, randomDate(roll), standing),
    plate(`${roll.below(3)}`, { caption: `caption ${roll.below(99)}`, columns: { b: 'x', a: '𠮷' } }),
  ]);
}

/** What intakes leave behind them beside rows. */
function leftBehind(roll: Dice): object {
  const origin = { source: roll.pick(['A', 'b']), key: `${roll.below(12)}` };
  const claim = { id: `copying-of-w${roll.below(9)}`, kind: 'Copying', copy: 'plate-of-0' } as ClaimOf<'Copying'>;
  return {
    ...(roll.chance(0.4) ? { origins: [{ ...origin, id: 'plate-of-0', digest: `${roll.below(9)}` }] } : {}),
    ...(roll.chance(0.4) ? { await: [{ origin, claim, role: 'source' }] } : {}),
    ...(roll.chance(0.2) ? { arrived: [origin] } : {}),
    ...(roll.chance(0.3)
      ? { checkpoint: { intake: `i${roll.below(2)}`, records: roll.below(99), report: { n: roll.below(9), of: [] } } }
      : {}),
  };
}
