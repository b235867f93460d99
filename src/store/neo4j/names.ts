import type { WalkStep } from '../../domain/descent/walk-steps.ts';
import type { KindName } from '../../domain/model/kinds.ts';
import { isRecordKind } from '../../domain/model/kinds.ts';
import { type LinkKind, linkKinds } from '../../domain/model/links.ts';

/**
 * How the graph is named in Neo4j. A record or claim is a node with the labels Row, Record or Claim, and its kind; what it
 * links to is a relationship named after kind and role. Derived properties begin with an underscore.
 */
export function labelsOf(kind: KindName): string {
  return `Row:${isRecordKind(kind) ? 'Record' : 'Claim'}:${kind}`;
}

/** Relationship from a row to what it links to now: `Imprint.place` is IMPRINT_PLACE. */
export function linkType({ kind, name }: Pick<LinkKind, 'kind' | 'name'>): string {
  return `${upperWords(kind)}_${upperWords(name)}`;
}

/** The relationships of all links, one way to write them. */
export const everyLinkType = [...new Set(linkKinds.map(linkType))].join('|');

/** Relationship to what a row linked to before, with `since` and `until`. */
export function pastLinkType(link: Pick<LinkKind, 'kind' | 'name'>): string {
  return `PAST_${linkType(link)}`;
}

/**
 * Derived relationship from copy to source, one for each claim that counts under the default basis, with its id as `claim`;
 * for a detail one each way between part and whole, with the id of the part as `part`.
 */
export function stepType(step: WalkStep): string {
  return `STEP_${upperWords(step)}`;
}

function upperWords(name: string): string {
  return name.replace(/(?<=[a-z])[A-Z]/g, letter => `_${letter}`).toUpperCase();
}
