import { setTimeout } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import type { ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import type { Bundle, Intention } from '../../src/intake/intention.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { applyIntake, batchSize, takenUp } from '../../src/questions/apply-intake.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import { emptyReport, type IntakeReport } from '../../src/questions/intake-report.ts';
import type { GraphStore, WriteBatch } from '../../src/store/graph-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { sqliteStoreInProcess } from '../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

/** A library record: an edition of a work, brought out at a place in a year, perhaps after another record. */
function record(key: string, title: string, year: string, after?: string): Bundle {
  const evidence = (field: string) => [{ reference: '@catalogue', locator: `${key} ${field}` }];
  return {
    outcome: 'taken',
    place: { record: Number(key), key },
    origin: { source: 'X', key },
    digest: `${title} ${year}`,
    rows: [
      { row: { id: '@edition', kind: 'Edition', work: '@work', title }, origin: { source: 'X', key } },
      {
        row: { id: '@work', kind: 'Work', labels: [{ text: title }], form: 'BOOK' },
        origin: { source: 'X', key: `work:${title}` },
      },
      {
        row: { id: '@catalogue', kind: 'Reference', labels: [{ text: 'Catalogue of X' }] },
        origin: { source: 'X', key: 'catalogue' },
      },
      {
        row: { id: '@place', kind: 'Place', labels: [{ text: 'Haarlem' }] },
        origin: { source: 'X', key: 'place:haarlem' },
      },
      {
        row: {
          id: '@imprint',
          kind: 'Imprint',
          edition: '@edition',
          place: '@place',
          role: 'PUBLISHER',
          evidence: evidence('260$a'),
        },
      },
      {
        row: {
          id: '@dating',
          kind: 'Dating',
          of: '@edition',
          event: 'PUBLISHED',
          date: year,
          basis: 'IMPRINT',
          evidence: evidence('260$c'),
        },
      },
    ],
    links:
      after === undefined
        ? []
        : [
            {
              row: {
                id: '@descent',
                kind: 'EditionDescent',
                later: '@edition',
                earlier: '',
                evidence: evidence('534$w'),
              },
              role: 'earlier',
              target: { source: 'X', key: after },
            },
          ],
    remarks: [],
  };
}

/** A record of plates that says when the edition they are in was published, which may have no record of its own. */
function platesIn(key: string, of: string, year: string): Bundle {
  return {
    ...record(key, 'Views', year),
    rows: [
      { row: { id: '@plate', kind: 'Plate', labels: [{ text: key }] }, origin: { source: 'X', key } },
      { row: { id: '@edition', kind: 'Edition', work: '@work', title: of }, origin: { source: 'X', key: of } },
      { row: { id: '@work', kind: 'Work', form: 'BOOK' }, origin: { source: 'X', key: `work of ${of}` } },
      { row: { id: '@dating', kind: 'Dating', of: '@edition', event: 'PUBLISHED', date: year, basis: 'IMPRINT' } },
    ],
  };
}

async function* from(intentions: readonly Intention[]): AsyncGenerator<Intention> {
  yield* intentions;
}

/** One whose lists of thousands are found by indexes. */
function sqliteStore(): GraphStore {
  return sqliteStoreInProcess(temporaryStore()).store;
}

let runs = 0;

function take(store: GraphStore, intentions: readonly Intention[], begun?: IntakeReport): Promise<IntakeReport> {
  return applyIntake(store, testWorld(++runs), from(intentions), begun ?? emptyReport('run'), {
    intake: 'file',
    who: 'intake',
    why: 'test',
  });
}

/** A store that is another way of writing to one. */
function writingBy(store: GraphStore, write: GraphStore['write']): GraphStore {
  return new Proxy(store, {
    get: (target, name) => (name === 'write' ? write : Reflect.get(target, name).bind(target)),
  });
}

/** A store whose writes take a while, before or after what they write can be read. */
function slowStore(store: GraphStore, when: 'before' | 'after'): GraphStore {
  return writingBy(store, async batch => {
    if (when === 'before') await setTimeout(5);
    const receipt = await store.write(batch);
    if (when === 'after') await setTimeout(5);
    return receipt;
  });
}

async function faultsAndSum(store: GraphStore): Promise<unknown> {
  const { faults, checksum } = await checkStore(store, testWorld(), { rebuild: false });
  return { faults, checksum };
}

const sums = ({ records, taken, known, edited, differing, refused }: IntakeReport) => ({
  records,
  taken,
  known,
  edited,
  differing,
  refused,
});

async function editionOf(store: GraphStore, key: string): Promise<RecordOf<'Edition'>> {
  const [found] = await store.byOrigin([{ source: 'X', key }]);
  const [row] = await store.rows([found!.id]);
  return row as RecordOf<'Edition'>;
}

async function datingsOf(store: GraphStore, key: string): Promise<readonly ClaimOf<'Dating'>[]> {
  const edition = await editionOf(store, key);
  const [rows] = await store.linked([edition.id], [{ kind: 'Dating', name: 'of' }]);
  return rows as readonly ClaimOf<'Dating'>[];
}

/** A store in which somebody else does something before each write, when everything for it has been worked out. */
function beside(store: GraphStore, happens: (batch: WriteBatch) => Promise<void>): GraphStore {
  return writingBy(store, async batch => {
    await batch.after;
    await happens(batch);
    return store.write(batch);
  });
}

/** Somebody says that the work "Views" is another kind of book. */
async function changeWork(store: GraphStore): Promise<void> {
  const [found] = await store.byOrigin([{ source: 'X', key: 'work:Views' }]);
  const [row] = await store.rows([found!.id]);
  const { since: _since, ...before } = row as RecordOf<'Work'> & { since: number };
  await applyChanges(store, {
    rows: [{ ...before, form: 'ANNUAL' }],
    added: new Set(),
    changeSet: { who: 'Ada', why: 'seen', moment: '2026-01-02T00:00:00Z' },
  });
}

/** A record of the work "Views" itself, which is of another form by it. */
const workOfViews: Bundle = {
  ...record('0', 'Views', '1764'),
  origin: { source: 'X', key: 'work:Views' },
  digest: 'of the work',
  rows: [{ row: { id: '@work', kind: 'Work', form: 'ANNUAL' }, origin: { source: 'X', key: 'work:Views' } }],
};

describe('an intake', () => {
  test('takes each record once, with what records share made once', async () => {
    const store = memoryStore();
    const report = await take(store, [
      record('1', 'Views', '1764'),
      record('2', 'Views', '1770'),
      record('3', 'Vases', '1771'),
    ]);
    expect(sums(report)).toEqual({ records: 3, taken: 3, known: 0, edited: 0, differing: 0, refused: 0 });
    expect(
      await Promise.all((['Edition', 'Work', 'Place', 'Reference'] as const).map(kind => store.count(kind))),
    ).toEqual([3, 2, 1, 1]);
    expect(await store.windowsOf([(await editionOf(store, '1')).id])).toMatchObject([
      { dateClass: 'IMPRINT', first: -75240, last: -74875 },
    ]);
  });

  test('adds nothing when the same file comes again', async () => {
    const store = memoryStore();
    const records = [record('1', 'Views', '1764'), record('2', 'Vases', '1770', '1')];
    await take(store, records);
    const before = [await checksum(store), await store.lastChangeSet()];
    expect(sums(await take(store, records))).toEqual({
      records: 2,
      taken: 0,
      known: 2,
      edited: 0,
      differing: 0,
      refused: 0,
    });
    expect([await checksum(store), await store.lastChangeSet()]).toEqual(before);
  });

  test('knows the same record under another source', async () => {
    const store = memoryStore();
    await take(store, [record('1', 'Views', '1764')]);
    const other = { ...record('1', 'Views', '1764'), origin: { source: 'Y', key: '1' } };
    expect(sums(await take(store, [other]))).toMatchObject({ taken: 0, known: 1 });
  });

  test('accounts for refused records with their reason', async () => {
    const problem = { code: 'INPUT_INVALID', message: 'expected field 001', place: { record: 2 } } as const;
    const report = await take(memoryStore(), [record('1', 'Views', '1764'), { outcome: 'refused', problem }]);
    expect(sums(report)).toEqual({ records: 2, taken: 1, known: 0, edited: 0, differing: 0, refused: 1 });
    expect(report.problems).toEqual([problem]);
  });

  test('edits what changed in the source and nobody touched', async () => {
    const store = memoryStore();
    await take(store, [record('1', 'Views', '1764')]);
    const { id } = await editionOf(store, '1');
    expect(sums(await take(store, [record('1', 'Views of Haarlem', '1765')]))).toMatchObject({
      edited: 1,
      differing: 0,
    });
    expect(await editionOf(store, '1')).toMatchObject({ id, title: 'Views of Haarlem' });
    expect((await datingsOf(store, '1')).map(dating => dating.date)).toEqual(['1765']);
    expect(await store.windowsOf([id])).toMatchObject([{ first: -74874, last: -74510 }]);
  });

  test('leaves what a person changed, and reports it as differing', async () => {
    const store = memoryStore();
    await take(store, [record('1', 'Views', '1764')]);
    const [dating] = await datingsOf(store, '1');
    const { since: _since, ...row } = dating as ClaimOf<'Dating'> & { since: number };
    await applyChanges(store, {
      rows: [{ ...row, date: '1763' }],
      added: new Set(),
      changeSet: { who: 'Ada', why: 'seen', moment: '2026-01-02T00:00:00Z' },
    });
    const report = await take(store, [record('1', 'Views', '1765')]);
    expect(sums(report)).toMatchObject({ edited: 0, differing: 1 });
    expect(report.problems[0]).toMatchObject({ place: { key: '1' } });
    expect((await datingsOf(store, '1')).map(each => each.date)).toEqual(['1763']);
  });

  test('withdraws a claim that the source no longer makes', async () => {
    const store = memoryStore();
    await take(store, [record('1', 'Views', '1764')]);
    const without = record('1', 'Views', '1764');
    await take(store, [{ ...without, digest: 'other', rows: without.rows.filter(({ row }) => row.kind !== 'Dating') }]);
    expect(await datingsOf(store, '1')).toMatchObject([{ standing: 'WITHDRAWN', date: '1764' }]);
  });

  test.each([
    ['before', [record('1', 'Views', '1764'), record('2', 'Views', '1770', '1')]],
    ['after', [record('2', 'Views', '1770', '1'), record('1', 'Views', '1764')]],
  ])('makes a link to a record that came %s', async (_when, records) => {
    const store = memoryStore();
    const report = await take(store, records);
    const [earlier, later] = [await editionOf(store, '1'), await editionOf(store, '2')];
    const [descents] = await store.linked([earlier.id], [{ kind: 'EditionDescent', name: 'earlier' }]);
    expect(descents).toMatchObject([{ later: later.id, earlier: earlier.id }]);
    expect([report.linksMade, report.linksAwaited]).toEqual([1, 0]);
  });

  test('keeps a link waiting until its record comes in a later file', async () => {
    const store = memoryStore();
    expect(await take(store, [record('2', 'Views', '1770', '1')])).toMatchObject({ linksMade: 0, linksAwaited: 1 });
    await take(store, [record('1', 'Views', '1764')]);
    const [descents] = await store.linked(
      [(await editionOf(store, '1')).id],
      [{ kind: 'EditionDescent', name: 'earlier' }],
    );
    expect(descents).toHaveLength(1);
  });

  test('makes a link once that a changed record brings', async () => {
    const store = memoryStore();
    await take(store, [record('1', 'Views', '1764'), record('2', 'Views', '1770')]);
    const changed = { ...record('2', 'Views', '1770', '1'), digest: 'linked' };
    expect(await take(store, [changed])).toMatchObject({ edited: 1, linksMade: 1 });
    expect(await take(store, [{ ...changed, digest: 'linked again' }])).toMatchObject({ edited: 1, linksMade: 0 });
    const waiting = { ...record('2', 'Views', '1770', '9'), digest: 'waits' };
    expect(await take(store, [waiting])).toMatchObject({ linksMade: 0, linksAwaited: 0 });
  });

  test('counts what is being written as known: a slow store comes to the same content', async () => {
    // Works are shared with the batch before; links point forwards and backwards over batches; records come again, as
    // they are, changed, and under another source.
    const size = 3 * batchSize;
    const records = Array.from({ length: size }, (_, i) => {
      const target = i % 3 === 0 ? i + batchSize - 1 : i - batchSize + 1;
      return record(
        String(i),
        `Views ${i % (batchSize + 7)}`,
        '1764',
        target < 0 || target >= size ? undefined : String(target),
      );
    });
    const again = records.slice(batchSize - 50, batchSize).map((bundle, i): Bundle => {
      if (i % 3 === 0) return bundle;
      if (i % 3 === 1) return record(bundle.origin.key, `Other views ${i}`, '1790');
      return { ...bundle, origin: { ...bundle.origin, source: 'Y' } };
    });
    const all = [...records.slice(0, batchSize + 100), ...again, ...records.slice(batchSize + 100)];
    const expected = sqliteStore();
    const report = await take(expected, all);
    expect(sums(report)).toMatchObject({ taken: size, known: 33, edited: 17 });
    for (const when of ['before', 'after'] as const) {
      const slow = sqliteStore();
      const slowReport = await take(slowStore(slow, when), all);
      expect({ ...slowReport, seconds: 0, batch: '' }).toEqual({ ...report, seconds: 0, batch: '' });
      expect(await faultsAndSum(slow)).toEqual(await faultsAndSum(expected));
    }
  });

  test('works out the window of an edition from what later records say of it, in its part, its batch and after', async () => {
    const editions = Array.from({ length: batchSize + 200 }, (_, i) => record(`e${i}`, `Title ${i % 9}`, '1764'));
    const of = (i: number): Bundle => platesIn(`p${i}`, `e${i}`, '1770');
    const alone = Array.from({ length: 70 }, (_, i) => platesIn(`q${i}`, `new ${i % 7}`, String(1700 + i)));
    const all = [
      ...editions.slice(0, 300),
      of(299),
      of(200),
      ...editions.slice(300, 310),
      of(310),
      ...editions.slice(310),
      of(5),
      of(batchSize + 190),
      ...alone,
    ];
    const store = sqliteStore();
    await take(slowStore(store, 'after'), all);
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
    // Day of 1 January 1770: the window says both years.
    const detail = expect.stringContaining('-73048');
    for (const i of [299, 200, 310, 5, batchSize + 190]) {
      const { id } = await editionOf(store, `e${i}`);
      expect(await store.windowsOf([id]), `edition ${i}`).toMatchObject([{ detail }]);
    }
  });

  test.each([0, 60, batchSize])(
    'a record that another one named before it came has what it says of itself, and its links (%i between)',
    async between => {
      const others = Array.from({ length: between }, (_, i) => record(String(i), 'Vases', '1770'));
      const store = sqliteStore();
      const report = await take(store, [
        record('a', 'Vases', '1771', 'k'),
        platesIn('n', 'k', '1764'),
        ...others,
        record('k', 'Birds', '1765'),
      ]);
      expect(report).toMatchObject({ linksMade: 1, linksAwaited: 0 });
      expect(await editionOf(store, 'k')).toMatchObject({ title: 'Birds' });
      const [descents] = await store.linked(
        [(await editionOf(store, 'k')).id],
        [{ kind: 'EditionDescent', name: 'earlier' }],
      );
      expect(descents).toHaveLength(1);
      expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
    },
  );

  test('says when it is dry what a run would do', async () => {
    const many = Array.from({ length: 4 * batchSize }, (_, i) => record(String(i), `Views ${i % 50}`, '1764'));
    const all = [...many, record('last', 'Vases', '1770', '1'), many[2]!, record('3', 'Other views', '1790')];
    const options = { intake: 'f', who: 'i', why: 'w' };
    const [dry, real] = await Promise.all(
      [true, false].map(dryRun =>
        applyIntake(sqliteStore(), testWorld(), from(all), emptyReport('run'), { ...options, dryRun }),
      ),
    );
    expect(sums(real!)).toMatchObject({ taken: 4 * batchSize + 1, known: 1, edited: 1 });
    expect({ ...dry, seconds: 0, changeSet: 0 }).toEqual({ ...real, seconds: 0, changeSet: 0 });
  });

  test('keeps with a checkpoint the problems of its own records alone, however late it is written', async () => {
    const reports: IntakeReport[] = [];
    const late = beside(memoryStore(), async ({ checkpoint }) => {
      await setTimeout(20);
      reports.push(structuredClone(checkpoint!.report) as IntakeReport);
    });
    const problem = { code: 'INPUT_INVALID', message: 'expected field 001', place: {} } as const;
    await take(late, Array<Intention>(2 * batchSize + 5).fill({ outcome: 'refused', problem }));
    expect(reports.map(({ records, problems }) => [records, problems.length])).toEqual([
      [batchSize, batchSize],
      [2 * batchSize, 2 * batchSize],
      [2 * batchSize + 5, 2 * batchSize + 5],
    ]);
  });

  test('has windows right where somebody changes a work while the first batch is worked out', async () => {
    const store = sqliteStore();
    await take(store, [record('before', 'Views', '1764')]);
    const records = async function* (): AsyncGenerator<Intention> {
      for (let i = 0; i < batchSize; i++) {
        if (i === 500) await changeWork(store);
        yield record(String(i), 'Views', '1764');
      }
    };
    await applyIntake(store, testWorld(77), records(), emptyReport('run'), { intake: 'f', who: 'i', why: 'w' });
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
  });

  test('has windows right where somebody changes a work while a batch waits that has nothing new', async () => {
    const store = sqliteStore();
    const known = Array.from({ length: batchSize }, (_, i) => record(`k${i}`, 'Views', '1764'));
    await take(store, known);
    let batches = 0;
    const besides = beside(store, async batch => {
      // What follows is worked out meanwhile.
      await setTimeout(100);
      if (batch.checkpoint !== undefined && ++batches === 1) await changeWork(store);
    });
    const news = Array.from({ length: batchSize }, (_, i) => record(`n${i}`, 'Views', '1764'));
    await applyIntake(besides, testWorld(78), from([...known, ...news]), emptyReport('run'), {
      intake: 'other',
      who: 'i',
      why: 'w',
    });
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
  });

  test.each([1, 2, 5])('has windows right where somebody changes a work while batch %i is written', async which => {
    const store = sqliteStore();
    let batches = 0;
    const besides = slowStore(
      beside(store, async batch => {
        if (batch.checkpoint !== undefined && ++batches === which + 1) await changeWork(store);
      }),
      'after',
    );
    const records = Array.from({ length: 9 * batchSize }, (_, i) => record(String(i), 'Views', '1764'));
    await take(besides, records);
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
    expect(batches).toBe(9);
  });

  test('has windows right where somebody changes a work that batches before have named, and written', async () => {
    const store = sqliteStore();
    let batches = 0;
    const besides = beside(store, async batch => {
      if (batch.checkpoint !== undefined && ++batches === 2) await changeWork(store);
    });
    const records = async function* (): AsyncGenerator<Intention> {
      for (let i = 0; i < 8 * batchSize; i++) {
        // What came before is written meanwhile.
        if (i % batchSize === 1) await setTimeout(100);
        yield record(String(i), 'Views', '1764');
      }
    };
    await applyIntake(besides, testWorld(79), records(), emptyReport('run'), { intake: 'f', who: 'i', why: 'w' });
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
    expect(batches).toBe(8);
  });

  test('has windows right where an answer of the store comes when somebody else has changed what it tells', async () => {
    const store = sqliteStore();
    await take(store, [record('0', 'Views', '1764')]);
    const [work] = await store.byOrigin([{ source: 'X', key: 'work:Views' }]);
    const asked = Promise.withResolvers<void>();
    const written = Promise.withResolvers<void>();
    let [batches, questions] = [0, 0];
    const writing = beside(store, async batch => {
      if (batch.checkpoint === undefined || ++batches > 1) return;
      await asked.promise;
      await changeWork(store);
      // What waits for the batch has gone on by then.
      void batch.after?.then(() => setTimeout(50)).then(written.resolve);
    });
    const late = new Proxy(writing, {
      get: (target, name) => {
        if (name !== 'rows') return Reflect.get(target, name);
        return async (ids: readonly string[]) => {
          const rows = await store.rows(ids);
          if (ids.includes(work!.id) && ++questions === 1) {
            asked.resolve();
            await written.promise;
          }
          return rows;
        };
      },
    });
    const some = (title: string, name: string) =>
      Array.from({ length: batchSize }, (_, i) => record(`${name}${i}`, title, '1764'));
    await take(late, [...some('Vases', 'a'), ...some('Views', 'b'), ...some('Views', 'c'), ...some('Views', 'd')]);
    expect(questions).toBeGreaterThan(0);
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
  });

  test('has windows right where somebody adds an edition of a work before a batch is written that changes it', async () => {
    const store = sqliteStore();
    await take(store, [record('0', 'Views', '1764')]);
    const [work] = await store.byOrigin([{ source: 'X', key: 'work:Views' }]);
    const edition = { id: 'edition-by-hand', kind: 'Edition', work: work!.id, title: 'Views' } as const;
    let batches = 0;
    const besides = beside(store, async batch => {
      if (batch.checkpoint === undefined || ++batches > 1) return;
      const changeSet = { who: 'Ada', why: 'seen', moment: '2026-01-02T00:00:00Z' };
      await applyChanges(store, { rows: [edition], added: new Set([edition.id]), changeSet });
    });
    await take(besides, [workOfViews]);
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
  });

  test('has windows right where somebody writes a change of a work that was made before its batch', async () => {
    const store = sqliteStore();
    await take(store, [record('0', 'Views', '1764')]);
    const besides = writingBy(store, async batch => {
      if (batch.put.length > 0) await take(store, [record('1', 'Views', '1765')]);
      return store.write(batch);
    });
    await changeWork(besides);
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
  });

  test('has windows right where a record of a work itself comes after its editions, and before others', async () => {
    const store = sqliteStore();
    const records = Array.from({ length: 9 * batchSize }, (_, i) => record(String(i), 'Views', '1764'));
    await take(store, records.slice(0, 1));
    const slow = writingBy(store, async batch => {
      await batch.after;
      await setTimeout(200);
      return store.write(batch);
    });
    const report = await take(slow, [...records.slice(1, batchSize), workOfViews, ...records.slice(batchSize)]);
    expect(report).toMatchObject({ edited: 1, differing: 0 });
    expect(await faultsAndSum(store)).toMatchObject({ faults: [] });
  });

  test('works everything out and writes nothing when it is dry', async () => {
    const store = memoryStore();
    const report = await applyIntake(store, testWorld(), from([record('1', 'Views', '1764')]), emptyReport('run'), {
      intake: 'f',
      who: 'i',
      why: 'w',
      dryRun: true,
    });
    expect([report.taken, await store.count('Edition'), await store.lastChangeSet()]).toEqual([1, 0, 0]);
  });

  test('is taken up where it stood, to the same content as an undisturbed run', async () => {
    const records = Array.from({ length: 2500 }, (_, i) =>
      record(
        String(i + 1),
        `Title ${i % 700}`,
        String(1700 + (i % 90)),
        i % 3 === 0 ? String(((i * 7) % 2500) + 1) : undefined,
      ),
    );
    const undisturbed = sqliteStore();
    const whole = await take(undisturbed, records);

    const broken = sqliteStore();
    const stop = new AbortController();
    const stopped = async function* (): AsyncGenerator<Intention> {
      for (const [i, each] of records.entries()) {
        if (i === 1500) stop.abort();
        yield each;
      }
    };
    await applyIntake(broken, testWorld(9999), stopped(), emptyReport('run'), {
      intake: 'file',
      who: 'intake',
      why: 'test',
      signal: stop.signal,
    });
    const begun = await takenUp(broken, 'file', 'run');
    const rest = await take(broken, records.slice(begun.records), begun);
    expect(sums(rest)).toEqual(sums(whole));
    expect(await checksum(broken)).toBe(await checksum(undisturbed));
  }, 60_000);
});
