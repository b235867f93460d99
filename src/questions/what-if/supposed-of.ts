import type { Conventions } from '../../domain/conventions/conventions.ts';
import { checkRow } from '../../domain/model/check-row.ts';
import { isRecordKind, type KindName } from '../../domain/model/kinds.ts';
import type { AnyRow } from '../../domain/model/row.ts';
import { rowInOrder } from '../../domain/model/row-in-order.ts';
import { howMany } from '../../domain/text/how-many.ts';
import { PlatestemmaError, type SourcePlace } from '../../errors.ts';
import { namedIds } from '../../output/graph-file/canonical-line.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import { mixedInGroups } from '../mixed-groups.ts';
import type { LeftOut } from './left-out.ts';
import { SupposedRows } from './supposed-rows.ts';
import type { Supposed } from './what-if.ts';
import { whatIfStore } from './what-if-store.ts';

interface Placed {
  readonly row: AnyRow;
  readonly place: SourcePlace;
}

/**
 * What is supposed as rows of a graph, checked as a line of a graph file is. A row without an id gets one that nothing has.
 * @throws SUPPOSE_TOO_LARGE; INPUT_INVALID for an id that is there or comes twice, a name of what is neither there nor supposed, or
 *   a claim that does not fit its group of alternatives; what `checkRow` throws
 */
export async function supposedOf(
  store: GraphStore,
  supposed: readonly Supposed[],
  conventions: Conventions,
  leftOut: LeftOut,
): Promise<readonly AnyRow[]> {
  checkNumber(supposed, conventions);
  const ids = await idsFor(store, supposed);
  const rows = supposed.map(({ value, place = {} }, i): Placed => {
    const at = { record: i + 1, ...place };
    return { row: checked(isRow(value) ? { ...filled(value, conventions), id: ids[i]! } : value, at), place: at };
  });
  await checkNames(store, rows);
  await checkGroups(store, rows, leftOut);
  return rows.map(({ row }) => row);
}

/** A convention without a version has the one that follows. */
function filled(value: GivenRow, { all }: Conventions): GivenRow {
  if (value['kind'] !== 'Convention' || (value['version'] ?? undefined) !== undefined) return value;
  const version = all.find(({ key }) => key === value['key'])?.version ?? 0;
  return { ...value, version: version + 1 };
}

function checked(value: unknown, place: SourcePlace): AnyRow {
  try {
    return rowInOrder(checkRow(value, place).row);
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    const { code, message, place: at = place } = error;
    throw new PlatestemmaError(code, `${whereOf(place)}: ${message}`, { cause: error, place: at });
  }
}

function whereOf({ file, record }: SourcePlace): string {
  return file === undefined ? `suppose, no. ${record}` : `${file}, line ${record}`;
}

type GivenRow = Readonly<Record<string, unknown>>;

function isRow(value: unknown): value is GivenRow {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function checkNumber(supposed: readonly Supposed[], conventions: Conventions): void {
  const records = supposed.filter(({ value }) => isRow(value) && isRecordKind(String(value['kind']))).length;
  const claims = supposed.length - records;
  const [most, mostRecords] = [conventions.get('limit.suppose'), conventions.get('limit.suppose.records')];
  if (claims <= most && records <= mostRecords) return;
  throw new PlatestemmaError(
    'SUPPOSE_TOO_LARGE',
    `suppose: expected at most ${howMany(most, 'claim')} and ${howMany(mostRecords, 'record')}, came ${howMany(claims, 'claim')} and ${howMany(records, 'record')}`,
    { place: { field: 'suppose' } },
  );
}

/** The ids that are given, and for each row without one the first of its kind that is free. */
async function idsFor(store: GraphStore, supposed: readonly Supposed[]): Promise<readonly unknown[]> {
  const given = supposed.map(({ value }) => (isRow(value) ? value['id'] : undefined));
  const taken = new Set(given);
  const next = new Map<string, number>();
  const candidate = (kind: string): string => {
    const number = (next.get(kind) ?? 0) + 1;
    next.set(kind, number);
    const id = `${kind.toLowerCase()}-supposed-${number}`;
    return taken.has(id) ? candidate(kind) : id;
  };
  const kindAt = (i: number) => String((supposed[i]!.value as GivenRow)['kind']) as KindName;
  const ids: unknown[] = [...given];
  for (;;) {
    const missing = ids.flatMap((id, i) => (id === undefined && isRow(supposed[i]!.value) ? [i] : []));
    if (missing.length === 0) return ids;
    const tried = missing.map(i => candidate(kindAt(i)));
    const there = await store.rows(tried);
    missing.forEach((i, at) => {
      if (there[at] === undefined) ids[i] = tried[at];
    });
  }
}

async function checkNames(store: GraphStore, rows: readonly Placed[]): Promise<void> {
  const ids = rows.map(({ row }) => row.id);
  const names = [...new Set(rows.flatMap(({ row }) => namedIds(row)))].filter(id => !ids.includes(id));
  const found = await store.rows([...ids, ...names]);
  const there = new Set(found.flatMap(row => row?.id ?? []));
  const seen = new Set<string>();
  for (const { row, place } of rows) {
    const { id } = row;
    if (seen.has(id)) throw refused(`expected each id once, came "${id}" twice`, { ...place, key: id });
    if (there.has(id))
      throw refused(`expected an id that nothing has, or none, came "${id}", which is there`, { ...place, key: id });
    seen.add(id);
  }
  for (const { row, place } of rows) {
    const absent = namedIds(row).find(id => !there.has(id) && !seen.has(id));
    if (absent !== undefined)
      throw refused(`${row.id} names "${absent}", which is neither there nor supposed`, { ...place, key: row.id });
  }
}

/** What is supposed fits its group of alternatives, as the question has it. */
async function checkGroups(store: GraphStore, rows: readonly Placed[], leftOut: LeftOut): Promise<void> {
  const seen = whatIfStore(store, { supposed: new SupposedRows([]), leftOut, hidden: new Set() });
  const errors = await mixedInGroups(
    seen,
    rows.map(({ row }) => row),
  );
  for (const { row, place } of rows) {
    const error = errors.get(row.id);
    if (error !== undefined) throw refused(error.message, { ...place, ...error.place });
  }
}

function refused(message: string, place: SourcePlace): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', `${whereOf(place)}: ${message}`, { place });
}
