import { linksOfKind } from './links.ts';
import type { AnyClaim, AnyRow } from './row.ts';

/** The group of alternatives of which a row is one; none for a record, and for a claim that is no longer said. */
export function groupOf(row: AnyRow): string | undefined {
  return 'alternativeTo' in row && row.standing !== 'WITHDRAWN' ? row.alternativeTo : undefined;
}

/**
 * What a claim answers, in words: its kind, and what it is about, which is what its first role names. Of a group of alternatives one
 * is true, and so all of them answer the same.
 */
export function matterOf(claim: AnyClaim): string {
  const about = (claim as unknown as Readonly<Record<string, string>>)[linksOfKind(claim.kind)[0]!.name];
  return `${claim.kind} of "${about}"${claim.kind === 'Dating' ? `, ${claim.event}` : ''}`;
}
