import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { AnyClaim, AnyRow, ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import type { Lineage, LineageNode } from '../../src/questions/lineage-answer.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { days } from '../support/days.ts';
import { describeWithData } from '../support/outside-data.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';
import { plainRows, printingPlates, prints, takeTable } from './take-tables.ts';
import { type PrintCase, twentyPrints } from './twenty-prints.ts';

describeWithData('twenty prints after named artists', 'prints-after', folder => {
  let store: GraphStore;

  beforeAll(async () => {
    store = await openSqliteStore(temporaryStore(), { create: true });
    const world = testWorld();
    for (const table of [prints, printingPlates]) await takeTable(store, world, folder, table);
  }, 300_000);
  afterAll(() => store.close());

  test('are twenty, with the cells that the table has', () => {
    expect(twentyPrints).toHaveLength(20);
    const rows = plainRows(folder, prints);
    expect(twentyPrints.map(({ row }) => rows.find(({ id }) => id === row.id))).toMatchObject(
      twentyPrints.map(({ row }) => row),
    );
  });

  describe.each(twentyPrints)('$row.id $caption', expected => {
    let found: Found;

    beforeAll(async () => {
      found = await findPrint(store, expected);
    });

    test('goes back to an inferred picture by its artists', async () => {
      const { artwork, lineage, print } = found;
      expect(artwork).toMatchObject({ kind: 'Artwork', survival: 'INFERRED' });
      expect(await namesOf(store, artwork, 'art')).toEqual(expected.artists);
      expect(lineage.nodes.map(node => [node.record, node.depth])).toEqual([
        [artwork.id, 0],
        [print.id, 1],
      ]);
      expect(lineage.steps.map(({ kind, copy, source }) => ({ kind, copy, source }))).toEqual([
        { kind: 'Copying', copy: print.id, source: artwork.id },
      ]);
      expect([lineage.earliest, lineage.latest]).toEqual([[artwork.id], [print.id]]);
    });

    test('has its caption, its printmakers and its publisher', async () => {
      const { print } = found;
      expect((print as RecordOf<'Plate'>).caption).toBe(expected.caption);
      const printmakers = expected.printmakers.map(([name, role]) => `${name} as ${role}`);
      const publishers = expected.publisher === undefined ? [] : [`${expected.publisher} as pbl`];
      expect(await namesOf(store, print)).toEqual([...printmakers, ...publishers].toSorted());
    });

    test('is in the publication that its row names', async () => {
      const editions = await store.rows(found.node.appearances.map(({ edition }) => edition));
      expect(editions.map(edition => (edition as RecordOf<'Edition'>).title)).toEqual(
        expected.publication === undefined ? [] : [expected.publication],
      );
    });

    test('is dated as its row says, and so is what it follows: not later', async () => {
      const { print, node, artwork, lineage } = found;
      const datings = (await claimsAbout(store, print, 'Dating', 'of')) as readonly ClaimOf<'Dating'>[];
      const dates = (event: 'PUBLISHED' | 'MADE') =>
        datings.filter(dating => dating.event === event).map(({ date }) => date);
      expect(dates('MADE')).toEqual(expected.made === undefined ? [] : [expected.made]);
      expect(dates('PUBLISHED').filter(date => date !== undefined)).toEqual(
        expected.published === undefined ? [] : [expected.published],
      );
      const last = expected.madeBy === undefined ? undefined : days(expected.madeBy);
      if (expected.published === undefined || last !== undefined) {
        expect(node.made.hi).toBe(last);
        expect(lineage.nodes.find(({ record }) => record === artwork.id)?.made.hi).toBe(last);
      } else expect(node.made.hi).toBeGreaterThanOrEqual(days(`${expected.published.slice(0, 4)}-12-31`));
    });

    test('does not say whether it is in reverse, and nothing contradicts itself', () => {
      const { node, lineage } = found;
      expect(node.handedness).toBe('UNKNOWN');
      expect([lineage.contradictions, lineage.missingLinks, lineage.cut]).toEqual([[], [], false]);
    });

    test('names its row in the evidence of every claim', async () => {
      const { print, artwork } = found;
      const claims = [
        ...(await claimsAbout(store, print, 'Attribution', 'record')),
        ...(await claimsAbout(store, artwork, 'Attribution', 'record')),
        ...(await claimsAbout(store, print, 'Copying', 'copy')),
        ...(await claimsAbout(store, print, 'Appearance', 'plate')),
      ];
      const locators = claims.map(claim => claim.evidence?.[0]?.locator ?? '');
      expect(locators.filter(locator => !locator.startsWith(`${expected.row.id} `))).toEqual([]);
      expect(found.reference).toBe(`Prints after named artists in the collection records of ${expected.row.museum}`);
    });
  });

  test('the one whose plate for printing survives goes back to it as well, in reverse', async () => {
    const expected = twentyPrints.find(({ matrix }) => matrix !== undefined)!;
    const { print, artwork } = await findPrint(store, expected);
    const [found] = await store.byOrigin([{ source: 'Tate', key: expected.matrix! }]);
    const lineage = await askStore(store).lineage({ of: print.id, towards: 'SOURCES' });
    const matrix = lineage.nodes.find(({ record }) => record === found?.id);
    expect(new Set(lineage.nodes.map(({ record }) => record))).toEqual(new Set([print.id, artwork.id, found?.id]));
    expect(matrix).toMatchObject({ depth: 1, handedness: 'REVERSED', made: { hi: days('1830-12-31') } });
    expect(lineage.contradictions).toEqual([]);
  });
});

interface Found {
  readonly print: AnyRow;
  readonly artwork: AnyRow;
  /** Of the picture that was followed. */
  readonly lineage: Lineage;
  /** The print in it. */
  readonly node: LineageNode;
  /** Title of what the evidence of the copying names. */
  readonly reference: string | undefined;
}

async function findPrint(store: GraphStore, { row }: PrintCase): Promise<Found> {
  const origins = await store.byOrigin(['', ':after'].map(end => ({ source: row.museum, key: row.id + end })));
  const [print, artwork] = await store.rows(origins.map(origin => origin?.id ?? ''));
  if (print === undefined || artwork === undefined) throw new Error(`${row.id} is not in the store`);
  const lineage = await askStore(store).lineage({ of: artwork.id });
  const node = lineage.nodes.find(({ record }) => record === print.id);
  if (node === undefined) throw new Error(`${row.id} is not in the lineage of what it follows`);
  const [copying] = await claimsAbout(store, print, 'Copying', 'copy');
  const [reference] = await store.rows([copying?.evidence?.[0]?.reference ?? '']);
  return { print, artwork, lineage, node, reference: (reference as RecordOf<'Reference'>).labels?.[0]?.text };
}

async function claimsAbout(
  store: GraphStore,
  record: AnyRow,
  kind: AnyClaim['kind'],
  name: string,
): Promise<readonly AnyClaim[]> {
  const [rows] = await store.linked([record.id], [{ kind, name }]);
  return (rows ?? []) as readonly AnyClaim[];
}

/** Those to whom a record is attributed, in one role by name, else with their roles, in the order of names. */
async function namesOf(store: GraphStore, record: AnyRow, role?: string): Promise<readonly string[]> {
  const claims = (await claimsAbout(store, record, 'Attribution', 'record')) as readonly ClaimOf<'Attribution'>[];
  const agents = await store.rows(claims.map(({ agent }) => agent));
  return claims
    .map((claim, i) => {
      const name = (agents[i] as RecordOf<'Agent'>).labels?.[0]?.text ?? '';
      return claim.role === role ? name : `${name} as ${claim.role}`;
    })
    .toSorted();
}
