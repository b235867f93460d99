import { beforeAll, describe, expect, test } from 'vitest';
import { claimStepNames } from '../../../src/domain/descent/walk-steps.ts';
import type { Field, Role } from '../../../src/domain/model/declaration.ts';
import { claimKinds, type KindName, recordKinds } from '../../../src/domain/model/kinds.ts';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import type { EditionFilter, SearchFilter } from '../../../src/store/graph-store.ts';
import { type Condition, reachSql } from '../../../src/store/sqlite/reach-statements.ts';
import { kindNames } from '../../../src/store/sqlite/schema-text.ts';
import {
  type Condition as SearchCondition,
  searchConditions,
  ways,
} from '../../../src/store/sqlite/search-conditions.ts';
import { searchSql } from '../../../src/store/sqlite/search-statements.ts';
import { kindSql, sql } from '../../../src/store/sqlite/statements.ts';
import { walkSql } from '../../../src/store/sqlite/walk-statements.ts';
import { type InProcess, sqliteStoreInProcess } from '../../support/sqlite-store-in-process.ts';
import {
  batchOf,
  copying,
  dating,
  depiction,
  edition,
  imprint,
  walkFrom,
  windowOf,
  work,
} from '../../support/store-rows.ts';
import { temporaryStore } from '../../support/temporary-store.ts';

const conditions = ['traits', 'work', 'place', 'subject'] as const;
const someFilters: readonly (readonly Condition[])[] = [
  [],
  ...conditions.map(condition => [condition]),
  ['place', 'subject'],
  [...conditions],
];
const values: Readonly<Record<Condition, EditionFilter>> = {
  traits: { form: 'BOOK', language: 'de', illustrated: true },
  work: { work: 'work-of-birds' },
  place: { place: 'place-of-bare' },
  subject: { subject: '25F' },
};

const searchFilters: readonly (readonly SearchCondition[])[] = [
  [],
  ...searchConditions.map(condition => [condition]),
  [...searchConditions],
];
const searchValues = {
  days: { lo: -65743, hi: -65379 },
  place: 'place-of-bare',
  subject: '25F',
} as const satisfies SearchFilter;

let open: InProcess;
/** The same store, read as one where every condition is passed by many. */
let manyPass: InProcess;
beforeAll(async () => {
  const file = temporaryStore();
  open = sqliteStoreInProcess(file);
  manyPass = sqliteStoreInProcess(file, 0);
  await everything(open);
});

describe('statements of the SQLite engine', () => {
  test('each one is used', () => {
    const texts = [...Object.values(sql), ...kindNames.flatMap(kind => Object.values(kindSql(kind)))];
    expect(texts.filter(text => text !== undefined && !open.used().has(text as string))).toEqual([]);
  });

  test('each question about reach is asked with the statement of its filter', () => {
    const texts = someFilters.flatMap(filter => {
      const hasSets = filter.some(condition => condition !== 'traits');
      const asked = hasSets ? [reachSql.groups, reachSql.windows] : [reachSql.inWindow];
      return [...asked, reachSql.byTitle].map(text => text(filter));
    });
    expect(texts.filter(text => !open.used().has(text))).toEqual([]);
  });

  test('each search is asked with the statement of its filter', () => {
    const { byWay, inOrder, inOrderOfKeys, byWords, byWordsOfKeys, ...others } = searchSql;
    const ofFilters = searchFilters.flatMap(filter => [inOrder(filter), byWords(filter)]);
    const ofWays = Object.values(ways).flatMap(those => those.map(way => byWay(way.text)));
    const used = new Set([...open.used(), ...manyPass.used()]);
    const texts = [...Object.values(others), ...ofFilters, ...ofWays, inOrderOfKeys([]), byWordsOfKeys([])];
    expect(texts.filter(text => !used.has(text))).toEqual([]);
  });

  test('only those that are meant to look at a whole table do', () => {
    const found = [...open.used(), ...manyPass.used()].flatMap(text =>
      scans(open, text).map(step => `${step}: ${text}`),
    );
    expect(found).toEqual([
      `SCAN window_tally: ${sql.newestTallies}`,
      `SCAN edition_window USING COVERING INDEX edition_window_in_order: ${sql.allWindows}`,
      `SCAN window_tally: ${sql.talliesInOrder}`,
      'SCAN tally: SELECT kind, rows FROM tally',
    ]);
  });

  test.each(['SOURCES', 'COPIES'] as const)('walks to %s look at no row, but for the wholes of details', side => {
    const text = walkSql([...claimStepNames, 'Detail'], side);
    expect(open.used()).toContain(text);
    const steps = plan(open, text).filter(step => / t /.test(step));
    const source = side === 'SOURCES';
    expect(steps.map(step => step.replace('SEARCH t USING ', ''))).toEqual([
      `COVERING INDEX copying_by_${source ? 'copy (copy=?)' : 'source (source=?)'}`,
      `COVERING INDEX printed_from_by_${source ? 'picture (picture=?)' : 'matrix (matrix=?)'}`,
      `COVERING INDEX casting_by_${source ? 'cast (cast=?)' : 'parent (parent=?)'}`,
      `COVERING INDEX edition_descent_by_${source ? 'later (later=?)' : 'earlier (earlier=?)'}`,
      'PRIMARY KEY (_key=? AND _since<?)',
      'COVERING INDEX detail_by_of (of=?)',
    ]);
  });

  test('editions are listed in the order of an index, without sorting', () => {
    expect(plan(open, reachSql.inWindow([])).join('\n')).not.toContain('USE TEMP B-TREE');
    expect(plan(open, reachSql.inWindow(['traits'])).join('\n')).not.toContain('ORDER BY');
    expect(plan(open, sql.listKind).join('\n')).not.toContain('USE TEMP B-TREE');
    expect(plan(open, reachSql.byTitle(['traits'])).join('\n')).not.toContain('USE TEMP B-TREE');
  });
});

/** Steps of the plan that go through a table from end to end; what a statement made itself (c, g, inside), lists and the word index are none. */
function scans(store: InProcess, text: string): string[] {
  return plan(store, text).filter(step =>
    /^SCAN (?!\(subquery|[cg]$|inside$|CONSTANT ROW|json_each|\w+ VIRTUAL TABLE|pragma)/.test(step),
  );
}

function plan({ reading }: InProcess, text: string): string[] {
  return reading
    .prepare(`EXPLAIN QUERY PLAN ${text}`)
    .all()
    .map(row => row['detail'] as string);
}

/** What joins an edition to days, a place and a subject. */
const passing = [
  dating('a', 'edition-of-a', '1790'),
  dating('about', 'edition-of-a', '1790~'),
  imprint('a', 'edition-of-a', 'place-of-bare'),
  depiction('a', 'edition-of-a', '25F3'),
];

/** Does everything that the store can do at least once. */
async function everything({ store }: InProcess): Promise<void> {
  const rows = kindNames.map(bare);
  const origin = { source: 's', key: 'k' };
  const wait = { origin, claim: copying('x', 'plate-of-bare', ''), role: 'source' };
  await store.write(
    batchOf([...rows, work('birds'), edition('a'), ...passing], {
      windows: [windowOf('edition-of-a', { illustrated: true }), windowOf('edition-of-bare', { detail: 'more' })],
      origins: [{ ...origin, id: 'edition-of-a', digest: 'd' }],
      await: [wait],
      checkpoint: { intake: 'i', records: 1, report: {} },
    }),
  );
  await store.write(batchOf([...rows], { arrived: [origin] }));
  const next = await store.lastChangeSet();
  await store.write({ ...batchOf(rows), put: batchOf(rows).put.map(put => ({ ...put, seen: next })) });
  await store.write(batchOf([], { remove: [...rows, ...passing].map(({ id }) => ({ id })) }));
  await store.write(batchOf([...rows, ...passing], { windows: [windowOf('edition-of-bare', { detail: 'more' })] }));
  for (let last = 0; last < 8; last++) {
    await store.write(batchOf([], { windows: [windowOf('edition-of-a', { last })], recount: last === 0 }));
  }
  for (const row of rows) {
    await store.rows([row.id]);
    await store.versions(row.id);
  }
  await store.linked(['artwork-of-bare'], [{ kind: 'Copying', name: 'copy' }]);
  await store.walk(walkFrom(['plate-of-bare'], { steps: [...claimStepNames, 'Detail'] }));
  await store.list('Edition', undefined, 9);
  await store.count('Edition');
  const text = { whole: 'a title', tokens: ['a', 'title'], few: 9 };
  for (const conditions of searchFilters) {
    const given = Object.fromEntries(conditions.map(condition => [condition, searchValues[condition]])) as SearchFilter;
    for (const asker of [store, manyPass.store]) {
      await asker.search({ filter: given, limit: 9, cap: 9 });
      await asker.search({ text, filter: given, limit: 9, cap: 9 });
    }
  }
  await store.datedDaysOf(['dating-of-bare']);
  await store.byOrigin([origin]);
  await store.byOriginKey(['k']);
  await store.originsOf(['edition-of-a']);
  for (const filter of someFilters) {
    const given: EditionFilter = Object.assign({}, ...filter.map(condition => values[condition]));
    await store.windowGroups(given);
    await store.editionsInWindows([[windowOf('edition-of-a')]], given, undefined, 9);
    await store.editionsByTitle(given, undefined, 9);
  }
  await store.changeSets([1]);
  await store.lastChangeSet();
  await store.changesAfter(0, 99);
  await store.originsAfter(undefined, 9);
  await store.awaitedAfter(undefined, 9);
  await store.checkpointsAfter(undefined, 9);
  await store.scan(undefined, 99);
  await store.scan(undefined, 99, { asOf: 1 });
  await store.windowsOf(['edition-of-a']);
  await store.sortKeysOf(['edition-of-a']);
  await store.awaited([origin]);
  await store.checkpoint('i');
  await store.facts();
}

/** A row of a kind that holds nothing but the links it must hold, to other bare rows. */
function bare(kind: KindName): AnyRow {
  const names: Readonly<Record<string, Field | Role>> =
    kind in recordKinds
      ? recordKinds[kind as keyof typeof recordKinds].fields
      : claimKinds[kind as keyof typeof claimKinds].roles;
  const links = Object.entries(names).flatMap(([name, declared]) =>
    declared.required && 'to' in declared
      ? [[name, bareId(declared.to[0]!.startsWith('any') ? 'Edition' : declared.to[0]!)]]
      : [],
  );
  return { id: bareId(kind), kind, ...Object.fromEntries(links) } as unknown as AnyRow;
}

function bareId(kind: string): string {
  return `${kind.toLowerCase()}-of-bare`;
}
