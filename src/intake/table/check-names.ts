import { nearName } from '../../domain/model/near-name.ts';
import type { KnownNames, MappingFault } from './check-value.ts';
import type { FieldEntry, TableMapping } from './table-mapping.ts';

/** What names mean in an entry of the mapping. */
export function namesOf({ columns, values, table }: TableMapping, each = false): KnownNames {
  return { columns, values: Object.keys(values ?? {}), each, byPath: table.form === 'json lines' };
}

/** The faults of a field that names a record: it must name one entry of a kind that may stand there. */
export function* checkParent(
  entry: FieldEntry,
  to: readonly string[],
  path: string,
  mapping: TableMapping,
): Iterable<MappingFault> {
  const parent = typeof entry === 'string' ? mapping.records[entry] : undefined;
  if (parent === undefined) yield { path, message: noEntry(mapping, entry) };
  else if (!to.includes(parent.kind))
    yield { path, message: `expected ${to.join(' or ')}, came ${parent.kind} "${entry}"` };
  else if (parent.each !== undefined) yield { path, message: `expected one record, but "${entry}" may be several` };
}

export function noEntry(mapping: TableMapping, named: unknown): string {
  const known = Object.keys(mapping.records);
  const near = typeof named === 'string' ? nearName(named, known) : undefined;
  const hint = near === undefined ? `one of ${known.join(', ')}` : `did you mean "${near}"?`;
  return `there is no entry ${JSON.stringify(named)} among the records (${hint})`;
}
