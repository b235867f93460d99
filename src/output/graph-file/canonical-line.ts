import { isRecordKind } from '../../domain/model/kinds.ts';
import { linksOfKind } from '../../domain/model/links.ts';
import type { AnyRow, Evidence } from '../../domain/model/row.ts';
import { graphLine } from './graph-line.ts';

/**
 * A row as one line that does not depend on the ids a run happened to give: records are named by their origin where
 * they have one, claims by their own content. Two graphs taken from the same sources have the same lines.
 * @param nameOf canonical name of a record or claim that the row names; its id where it has no other
 */
export function canonicalLine(row: AnyRow, nameOf: (id: string) => string): string {
  const renamed: Record<string, unknown> = { ...row, id: isRecordKind(row.kind) ? nameOf(row.id) : '' };
  for (const link of linksOfKind(row.kind)) {
    const value = renamed[link.name];
    if (typeof value === 'string') renamed[link.name] = nameOf(value);
  }
  if ('evidence' in row && row.evidence !== undefined) {
    renamed['evidence'] = row.evidence.map(evidence => renameEvidence(evidence, nameOf));
  }
  if ('alternativeTo' in row && row.alternativeTo !== undefined) renamed['alternativeTo'] = nameOf(row.alternativeTo);
  if ('supersededBy' in row && row.supersededBy !== undefined) renamed['supersededBy'] = nameOf(row.supersededBy);
  return graphLine(renamed as unknown as AnyRow);
}

/** Every id that a row names. */
export function namedIds(row: AnyRow): string[] {
  const values = row as unknown as Readonly<Record<string, unknown>>;
  const names = [...linksOfKind(row.kind).map(link => link.name), 'alternativeTo', 'supersededBy'];
  const ids = names.map(name => values[name]).filter(value => typeof value === 'string');
  const evidence = 'evidence' in row ? (row.evidence ?? []) : [];
  return [...ids, ...evidence.flatMap(e => [e.reference, e.record, e.claim].filter(id => id !== undefined))];
}

function renameEvidence(evidence: Evidence, nameOf: (id: string) => string): Evidence {
  const { reference, locator, record, mark, claim, words, note } = evidence;
  return {
    ...(reference === undefined ? {} : { reference: nameOf(reference) }),
    ...(locator === undefined ? {} : { locator }),
    ...(record === undefined ? {} : { record: nameOf(record) }),
    ...(mark === undefined ? {} : { mark }),
    ...(claim === undefined ? {} : { claim: nameOf(claim) }),
    ...(words === undefined ? {} : { words }),
    ...(note === undefined ? {} : { note }),
  };
}
