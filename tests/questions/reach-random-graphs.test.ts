import { describe, expect, test } from 'vitest';
import { formatDay, parseDay } from '../../src/domain/dates/calendar.ts';
import { edtfBounds } from '../../src/domain/dates/edtf.ts';
import { defaultSlack } from '../../src/domain/dates/slack.ts';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { compareText } from '../../src/domain/text/compare.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { locatedPlace } from '../../src/questions/located-places.ts';
import type { ReachAsked, ReachOrder, ReachPosition, VerdictCounts } from '../../src/questions/questions.ts';
import { reach } from '../../src/questions/reach.ts';
import type { EditionFilter, GraphStore, WindowColumns } from '../../src/store/graph-store.ts';
import { type BruteForce, readWhole } from '../outside/reach-by-brute-force.ts';
import { faultyStore } from '../support/faulty-store.ts';
import { type Dice, dice, randomDate, randomEdition, randomEditions, randomPlaces } from '../support/random-graph.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const changeSet = { moment: '2026-01-01T00:00:00.000Z', who: 'a tester', why: 'chance' };

/** A graph that was written in some steps, each changing a few editions. */
async function randomStore(roll: Dice): Promise<GraphStore> {
  const { store } = sqliteStoreInProcess(temporaryStore());
  const count = 4 + roll.below(16);
  const first = [...randomPlaces, ...randomEditions(count, roll)];
  await applyChanges(store, { changeSet, rows: first, added: new Set(first.map(row => row.id)) });
  for (let step = roll.below(4); step > 0; step--) {
    const again: readonly AnyRow[] = randomEdition(roll.below(count), roll);
    await applyChanges(store, { changeSet, rows: again, added: new Set() });
  }
  return store;
}

function randomFilter(roll: Dice): EditionFilter {
  return roll.pick<EditionFilter>([
    {},
    {},
    { illustrated: roll.chance(0.5) },
    { form: 'ANNUAL' },
    { work: 'work-of-two' },
    { place: roll.pick(randomPlaces).id },
    { place: 'place-of-london', illustrated: true },
  ]);
}

/** What a random question is answered, beside what plain inequalities give edition by edition. */
async function answered(store: GraphStore, brute: BruteForce, roll: Dice): Promise<readonly [unknown, unknown]> {
  const place = roll.pick(randomPlaces.slice(0, 5));
  const by = roll.chance(0.4) ? await edgeDay(store, place.id, roll) : randomDate(roll);
  const filter = randomFilter(roll);
  const order = roll.pick<ReachOrder>(['ROOM', 'DATE', 'TITLE']);
  const asked = { at: { place: place.id }, by, filter, order, tallies: true, page: { first: 0 } };
  const at = locatedPlace(place as Parameters<typeof locatedPlace>[0]);
  const object = edtfBounds(by, defaultSlack).parts;
  const { counts } = await reach(store, asked);
  const expected = brute.count(at, object, filter);
  const rows = await allRows(store, asked, 1 + roll.below(6));
  const verdicts = new Map(brute.editions.map(known => [known.edition.id, brute.verdict(known, at, object)]));
  return [
    { by, filter, order, ...named(counts), decades: sum(counts.byDecade), rows: rows.toSorted(byId) },
    {
      ...{ by, filter, order, inEveryCase: expected.IN_EVERY_CASE, inSomeCases: expected.IN_SOME_CASES },
      ...{ inNoCase: expected.IN_NO_CASE, contradictory: expected.CONTRADICTORY },
      decades: Object.values(expected).reduce((a, b) => a + b),
      rows: brute
        .passing(filter)
        .map(({ edition }) => [edition.id, verdicts.get(edition.id)])
        .sort(byId as never),
    },
  ];
}

/** A day on which a verdict turns: an object of that day has no day of room on one reckoning. */
async function edgeDay(store: GraphStore, place: string, roll: Dice): Promise<string> {
  const by = roll.pick(['1760-05-12', '1837-01-31', '1880-11-02']);
  const { rows } = await reach(store, { at: { place }, by, page: { first: 50 } });
  const rooms = rows.items.flatMap(({ item }) =>
    [item.margin.every, item.margin.some].filter(each => each !== undefined),
  );
  return rooms.length === 0 ? by : formatDay(parseDay(by)! - roll.pick(rooms));
}

function named({ inEveryCase, inSomeCases, inNoCase, contradictory }: VerdictCounts): VerdictCounts {
  return { inEveryCase, inSomeCases, inNoCase, contradictory };
}

function sum(tallies: readonly VerdictCounts[] = []): number {
  return tallies.flatMap(tally => Object.values(named(tally))).reduce((a: number, b: number) => a + b, 0);
}

type Row = readonly [string, string];

function byId(a: Row, b: Row): number {
  return compareText(a[0], b[0]);
}

/** Editions page by page with their verdicts from their claims; the order is looked at on the way. */
async function allRows(store: GraphStore, asked: ReachAsked, first: number): Promise<readonly Row[]> {
  const rows: Row[] = [];
  let last: readonly number[] = [];
  for (let after: ReachPosition | undefined; ; ) {
    const { rows: page } = await reach(store, { ...asked, page: { first, after } });
    for (const { item, position } of page.items) {
      rows.push([item.edition, item.verdict]);
      if (position.order === 'TITLE') continue;
      const keys = position.order === 'ROOM' ? [position.verdict, position.margin] : [position.first, position.last];
      if (last.length > 0) expect(keys[0]! - last[0]! || keys[1]! - last[1]!).toBeGreaterThanOrEqual(0);
      last = keys;
    }
    if (!page.more) return rows;
    after = page.items.at(-1)!.position;
  }
}

/** Asks some questions of as many graphs, until an answer is wrong: says which graph. */
async function firstWrong(
  graphs: number,
  from: number,
  spoil: (store: GraphStore) => GraphStore = store => store,
): Promise<{ readonly seed: number; readonly answer: unknown; readonly truth: unknown } | undefined> {
  for (let graph = from; graph < from + graphs; graph++) {
    const roll = dice(graph);
    const store = await randomStore(roll);
    const brute = await readWhole(store);
    for (let question = 0; question < 3; question++) {
      const [answer, truth] = await answered(spoil(store), brute, roll);
      if (JSON.stringify(answer) !== JSON.stringify(truth)) return { seed: graph, answer, truth };
    }
    await store.close();
  }
  return undefined;
}

/** A store that tells windows other than they are. */
function withColumns(store: GraphStore, change: (columns: WindowColumns) => WindowColumns): GraphStore {
  const windowGroups: GraphStore['windowGroups'] = async filter => {
    const groups = await store.windowGroups(filter);
    return { ...groups, columns: groups.columns.map(change) };
  };
  return faultyStore(store, { fault: 'windows are told otherwise', spoil: () => ({ windowGroups }) });
}

describe('counts and rows of random graphs', () => {
  const seed = seedOfRun();
  test(`are those of plain inequalities, on 100 graphs, and on 4,000 where there is time (seed ${seed})`, async () => {
    expect(await firstWrong(runs(100, 4000), seed)).toBeUndefined();
  }, 1_800_000);

  test.each<readonly [string, (columns: WindowColumns) => WindowColumns]>([
    ['a last day is told a day later', columns => ({ ...columns, last: columns.last.map(day => day + 1) })],
    ['a first day is told a day earlier', columns => ({ ...columns, first: columns.first.map(day => day - 1) })],
    ['annuals are told as books', columns => ({ ...columns, dateClass: columns.dateClass.map(kind => kind % 2) })],
    ['details are not told', columns => ({ ...columns, detail: columns.detail.map(() => 0) })],
    ['what was there before is not taken away', columns => ({ ...columns, count: columns.count.map(Math.abs) })],
  ])(
    'are seen to be wrong where %s',
    async (_fault, change) => {
      expect(await firstWrong(100, 1, store => withColumns(store, change))).toBeDefined();
    },
    120_000,
  );
});
