import type { AnyRow } from '../../../src/domain/model/row.ts';
import type { Lineage, LineageNode } from '../../../src/questions/lineage-answer.ts';
import type { Told } from './sentence.ts';

/** Where a picture comes from. */
export function sourcesOf({ questions }: Told, of: string, depth?: number): Promise<Lineage> {
  return questions.lineage({ of, towards: 'SOURCES', ...(depth === undefined ? {} : { depth }) });
}

export function nodeOf({ nodes }: Lineage, id: string): LineageNode | undefined {
  return nodes.find(({ record }) => record === id);
}

/** Days within which a record was made, as all linked claims leave them. */
export function madeOf(answer: Lineage, id: string): LineageNode['made'] | undefined {
  return nodeOf(answer, id)?.made;
}

export function rowOfKind<K extends AnyRow['kind']>(
  { rows }: { readonly rows: readonly AnyRow[] },
  kind: K,
  id: string,
): Extract<AnyRow, { kind: K }> | undefined {
  return rowsOfKind({ rows }, kind).find(row => row.id === id);
}

export function rowsOfKind<K extends AnyRow['kind']>(
  { rows }: { readonly rows: readonly AnyRow[] },
  kind: K,
): readonly Extract<AnyRow, { kind: K }>[] {
  return rows.filter((row): row is Extract<AnyRow, { kind: K }> => row.kind === kind);
}

/** Steps of copying, printing and casting as `copy < source`, in order of their claims. */
export function stepsOf({ steps }: Lineage): readonly string[] {
  return steps.map(({ copy, source }) => `${copy} < ${source}`);
}

/** Persons, firms and workshops to whom a record is attributed. */
export function makersOf(answer: Lineage, id: string): readonly string[] {
  return rowsOfKind(answer, 'Attribution').flatMap(({ record, agent }) => (record === id ? [agent] : []));
}

/** Where a plate is: editions with number or page. */
export function placesOf(answer: Lineage, plate: string): readonly (string | undefined)[][] {
  return (nodeOf(answer, plate)?.appearances ?? []).map(({ claim, edition }) => {
    const appearance = rowOfKind(answer, 'Appearance', claim);
    return [edition, appearance?.number ?? appearance?.page];
  });
}
