import { withArticle } from '../text/with-article.ts';
import type { ClaimKindName } from './kinds.ts';
import { linksOfKind } from './links.ts';
import type { AnyClaim, AnyRow } from './row.ts';

/** The group of alternatives of which a row is one; none for a record, and for a claim that is no longer said. */
export function groupOf(row: AnyRow): string | undefined {
  return 'alternativeTo' in row && row.standing !== 'WITHDRAWN' ? row.alternativeTo : undefined;
}

/** Roles that name what claims of these kinds are about, one as much as the other; of the other kinds it is the first role. */
const aboutBoth: Partial<Record<ClaimKindName, readonly string[]>> = {
  Access: ['who', 'what'],
  Comparison: ['picture', 'against'],
  Identity: ['one', 'other'],
  Opinion: ['claim'],
  Sequence: ['earlier', 'later'],
};

function aboutOf(claim: AnyClaim): readonly string[] {
  const roles = aboutBoth[claim.kind] ?? [linksOfKind(claim.kind)[0]!.name];
  return roles.flatMap(role => (claim as unknown as Readonly<Record<string, string | undefined>>)[role] ?? []);
}

/** Of a group of alternatives one is true: all of them are of one kind, about one thing, and datings of one event. */
export function areAlternatives(one: AnyClaim, other: AnyClaim): boolean {
  const isOfOneEvent = one.kind !== 'Dating' || other.kind !== 'Dating' || one.event === other.event;
  const about = aboutOf(other);
  return one.kind === other.kind && isOfOneEvent && aboutOf(one).some(id => about.includes(id));
}

/** What a claim is and what it is about, as words: `a Dating of "plate-dog", PUBLISHED`. */
export function matterWords(claim: AnyClaim): string {
  const about = aboutOf(claim).map(id => `"${id}"`);
  return `${withArticle(claim.kind)} of ${about.join(' and ')}${claim.kind === 'Dating' ? `, ${claim.event}` : ''}`;
}
