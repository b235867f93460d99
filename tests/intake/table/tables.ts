import type { AnyRow } from '../../../src/domain/model/row.ts';
import type { Bundle, Intention } from '../../../src/intake/intention.ts';
import { readMapping } from '../../../src/intake/table/read-mapping.ts';
import { tableIntentions } from '../../../src/intake/table/table-intentions.ts';
import type { TableMapping } from '../../../src/intake/table/table-mapping.ts';

/** A mapping of prints with number, title, engraver, date and book, with parts of it changed; checked as a file would be. */
export function mappingOf(changed: Readonly<Record<string, unknown>> = {}): TableMapping {
  return readMapping(JSON.stringify({ ...plain, ...changed }));
}

/** The least that a mapping of prints says. */
export const plain = {
  table: { form: 'delimited' },
  columns: ['number', 'title', 'engraver', 'date', 'book'],
  source: 'X',
  reference: { title: 'List of prints' },
  row: 'print',
  records: { print: { kind: 'Plate', key: 'number', fields: { caption: 'title' } } },
} as const;

export const header = 'number,title,engraver,date,book';

/** What the rows of a table come to. Lines are joined by line ends. */
export async function intentionsOf(
  mapping: TableMapping,
  lines: readonly string[] | string,
  more: { readonly skip?: number; readonly source?: string; readonly file?: string } = {},
): Promise<readonly Intention[]> {
  const text = typeof lines === 'string' ? lines : lines.join('\n');
  return all(tableIntentions(once(text), { mapping, ...more }));
}

/** The bundles of a table all of whose rows are taken. */
export async function bundlesOf(mapping: TableMapping, lines: readonly string[]): Promise<readonly Bundle[]> {
  const intentions = await intentionsOf(mapping, lines);
  return intentions.map(intention => {
    if (intention.outcome === 'refused') throw new Error(`refused: ${intention.problem.message}`);
    return intention;
  });
}

/** The bundle of a table of one row, written under the header of the plain mapping. */
export async function bundleOf(mapping: TableMapping, row: string): Promise<Bundle> {
  const [bundle] = await bundlesOf(mapping, mapping.table.form === 'json lines' ? [row] : [header, row]);
  return bundle!;
}

type Of<K extends AnyRow['kind']> = Extract<AnyRow, { kind: K }>;

/** Rows of a kind, in order, without the evidence of claims. */
export function rowsOf<K extends AnyRow['kind']>(bundle: Bundle, kind: K): Omit<Of<K>, 'evidence'>[] {
  return bundle.rows
    .map(({ row }) => row)
    .filter((row): row is Of<K> => row.kind === kind)
    .map(row => {
      const { evidence: _evidence, ...rest } = row as Of<K> & { evidence?: unknown };
      return rest as Omit<Of<K>, 'evidence'>;
    });
}

/** Key of each record, in order, the Reference of the table left out. */
export function keysOf(bundle: Bundle): string[] {
  return bundle.rows.flatMap(({ row, origin }) =>
    origin === undefined || row.kind === 'Reference' ? [] : [origin.key],
  );
}

/** Reasons and columns of what could not be read. */
export function remarksOf(bundle: Bundle): string[] {
  return bundle.remarks.map(({ message, place }) => `${place.field}: ${message}`);
}

/** Locators of the claims of a kind. */
export function locatorsOf(bundle: Bundle, kind: AnyRow['kind']): (string | undefined)[] {
  return [...bundle.rows, ...bundle.links].flatMap(({ row }) =>
    row.kind === kind && 'evidence' in row ? (row.evidence ?? []).map(({ locator }) => locator) : [],
  );
}

/** Everything that comes. */
export async function all<T>(items: AsyncIterable<T>): Promise<T[]> {
  const found: T[] = [];
  for await (const item of items) found.push(item);
  return found;
}

export async function* once<T>(...pieces: readonly T[]): AsyncGenerator<T> {
  yield* pieces;
}
