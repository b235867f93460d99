import { linksOfKind } from '../domain/model/links.ts';
import type { AnyRow, Evidence } from '../domain/model/row.ts';

/** The row under its id, with names within its bundle (`@edition`) replaced by ids in every link and piece of evidence. */
export function resolveNames(row: AnyRow, ids: ReadonlyMap<string, string>): AnyRow {
  const resolved: Record<string, unknown> = { ...row, id: resolve(row.id, ids) };
  for (const link of linksOfKind(row.kind)) {
    const value = resolved[link.name];
    if (typeof value === 'string') resolved[link.name] = resolve(value, ids);
  }
  if ('evidence' in row && row.evidence !== undefined) {
    resolved['evidence'] = row.evidence.map(evidence => resolveEvidence(evidence, ids));
  }
  return resolved as unknown as AnyRow;
}

function resolveEvidence(evidence: Evidence, ids: ReadonlyMap<string, string>): Evidence {
  const { reference, record, claim, ...rest } = evidence;
  return {
    ...(reference === undefined ? {} : { reference: resolve(reference, ids) }),
    ...(record === undefined ? {} : { record: resolve(record, ids) }),
    ...(claim === undefined ? {} : { claim: resolve(claim, ids) }),
    ...rest,
  };
}

function resolve(name: string, ids: ReadonlyMap<string, string>): string {
  return name.startsWith('@') ? (ids.get(name) ?? name) : name;
}
