import type { MarcField } from './marc-record.ts';
import { relatorCode } from './relators.ts';
import { tidy, withoutEndMarks } from './text.ts';

export interface RoleRead {
  /** MARC relator code. */
  readonly role: string;
  readonly asWritten?: string;
  /** Subfields that say it. */
  readonly codes: string;
}

/** Relator codes for words that no list has, and for added entries without any. */
const otherRole = 'oth';
const contributor = 'ctb';

/**
 * Roles that a heading gives a name: each relator term and each $4 once. Without any, a main entry made the thing
 * (author of a text, composer, cartographer, artist) and an added entry contributed. Unknown words are kept under `oth`,
 * which MARC has for "a role that has no equivalent in the MARC list".
 * @param relator code of the subfield of relator terms
 */
export function rolesOf(
  field: MarcField,
  relator: string,
  leader: string,
): { readonly roles: readonly RoleRead[]; readonly unknown: readonly string[] } {
  const roles: RoleRead[] = [];
  const unknown: string[] = [];
  const coded = field.subfields.flatMap(([code, value]) => (code === '4' ? (relatorCode(value) ?? []) : []));
  for (const [code, value] of field.subfields) {
    if (code !== relator) continue;
    const asWritten = withoutEndMarks(tidy(value));
    if (asWritten === '') continue;
    if (isMainEntry(asWritten)) roles.push({ role: mainRole(leader), asWritten, codes: code });
    else {
      const role = relatorCode(asWritten) ?? (coded.length === 1 ? coded[0] : undefined);
      if (role === undefined) unknown.push(asWritten);
      if (roles.every(one => one.role !== role)) roles.push({ role: role ?? otherRole, asWritten, codes: code });
    }
  }
  for (const role of coded) if (roles.every(one => one.role !== role)) roles.push({ role, codes: '4' });
  if (roles.length === 0) roles.push({ role: field.tag.startsWith('1') ? mainRole(leader) : contributor, codes: '' });
  return { roles, unknown };
}

/** Some catalogues write the main entry as an uncontrolled name (720) and say so in $e. */
function isMainEntry(words: string): boolean {
  return words.toLowerCase() === 'main entry';
}

/** By type of record, leader/06. */
function mainRole(leader: string): string {
  switch (leader[6]) {
    case 'a':
    case 't':
      return 'aut';
    case 'c':
    case 'd':
    case 'j':
      return 'cmp';
    case 'e':
    case 'f':
      return 'ctg';
    case 'k':
      return 'art';
    default:
      return 'cre';
  }
}
