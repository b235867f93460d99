import { isRecordKind } from '../../domain/model/kinds.ts';
import { itemLinksOfKind, linksOfKind } from '../../domain/model/links.ts';
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
  for (const { field, part } of itemLinksOfKind(row.kind)) {
    const items = renamed[field] as readonly Readonly<Record<string, unknown>>[] | undefined;
    if (items !== undefined) renamed[field] = items.map(item => renamePart(item, part, nameOf));
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
  const inItems = itemLinksOfKind(row.kind).flatMap(({ field, part }) =>
    ((values[field] ?? []) as readonly Readonly<Record<string, unknown>>[]).map(item => item[part]),
  );
  const evidence = 'evidence' in row ? (row.evidence ?? []) : [];
  const inEvidence = evidence.flatMap(e => [e.reference, e.record, e.claim, e.photograph]);
  return [...ids, ...[...inItems, ...inEvidence].filter(id => typeof id === 'string')];
}

function renamePart(
  item: Readonly<Record<string, unknown>>,
  part: string,
  nameOf: (id: string) => string,
): Readonly<Record<string, unknown>> {
  const id = item[part];
  return typeof id === 'string' ? { ...item, [part]: nameOf(id) } : item;
}

function renameEvidence(evidence: Evidence, nameOf: (id: string) => string): Evidence {
  const { reference, locator, record, mark, claim, words, note, photograph, region } = evidence;
  return {
    ...(reference === undefined ? {} : { reference: nameOf(reference) }),
    ...(locator === undefined ? {} : { locator }),
    ...(record === undefined ? {} : { record: nameOf(record) }),
    ...(mark === undefined ? {} : { mark }),
    ...(claim === undefined ? {} : { claim: nameOf(claim) }),
    ...(words === undefined ? {} : { words }),
    ...(note === undefined ? {} : { note }),
    ...(photograph === undefined ? {} : { photograph: nameOf(photograph) }),
    ...(region === undefined ? {} : { region }),
  };
}
