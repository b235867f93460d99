import { type ClaimKindName, isClaimKind } from '../../domain/model/kinds.ts';
import { nearName } from '../../domain/model/near-name.ts';
import { checkFields } from './check-fields.ts';
import { namesOf, noEntry } from './check-names.ts';
import { checkCondition, checkName, checkText, checkValue, type MappingFault } from './check-value.ts';
import { rolesOf } from './mapped-fields.ts';
import type { ClaimEntry, LinkedRecord, TableMapping } from './table-mapping.ts';

/** The faults of a claim of a mapping. */
export function* checkClaim(claim: ClaimEntry, path: string, mapping: TableMapping): Iterable<MappingFault> {
  const { kind, each, note, said = [], fields = {} } = claim;
  if (!isClaimKind(kind)) return;
  const repeated = Object.values(claim.roles).filter(
    named => typeof named === 'string' && mapping.records[named]?.each !== undefined,
  );
  const outer = namesOf(mapping, repeated.length === 1);
  const names = namesOf(mapping, repeated.length + (each === undefined ? 0 : 1) === 1);
  if (each !== undefined) {
    yield* checkValue(each, `${path}.each`, outer);
    if (repeated.length > 0) yield { path: `${path}.each`, message: 'its roles name records that are several already' };
  }
  if (claim.if !== undefined) yield* checkCondition(claim.if, `${path}.if`, namesOf(mapping));
  if (note !== undefined) yield* checkValue(note, `${path}.note`, names);
  for (const [i, name] of said.entries()) yield* checkName(name, `${path}.said[${i}]`, names);
  yield* checkRoles(kind, claim, path, mapping);
  if (claim.imprint !== undefined) yield* checkImprint(claim, path, mapping);
  // No claim has a field that names a record.
  else yield* checkFields(kind, fields, path, names, () => []);
}

function* checkRoles(
  kind: ClaimKindName,
  { roles, imprint }: ClaimEntry,
  path: string,
  mapping: TableMapping,
): Iterable<MappingFault> {
  const declared = rolesOf(kind);
  let links = 0;
  for (const [name, named] of Object.entries(roles)) {
    const role = declared.get(name);
    const at = `${path}.roles.${name}`;
    if (role === undefined) yield { path: at, message: noRole(kind, name) };
    else if (typeof named !== 'string') {
      if (++links > 1) yield { path: at, message: 'expected at most one role of a record that may yet come' };
      yield* checkLink(named, at, mapping);
    } else yield* checkRole(named, role.to, at, mapping);
  }
  for (const [name, role] of declared) {
    if (role.required !== true || Object.hasOwn(roles, name)) continue;
    yield { path: `${path}.roles`, message: `expected "${name}", which ${kind} must have, came none` };
  }
  if (imprint !== undefined && links > 0) {
    yield { path: `${path}.roles`, message: 'an imprint that is read from words is one of an edition of this row' };
  }
}

function noRole(kind: ClaimKindName, name: string): string {
  const known = [...rolesOf(kind).keys()];
  const near = nearName(name, known);
  return `${kind} has no role "${name}" (${near === undefined ? `one of ${known.join(', ')}` : `did you mean "${near}"?`})`;
}

function* checkLink({ source, key }: LinkedRecord, path: string, mapping: TableMapping): Iterable<MappingFault> {
  const names = namesOf(mapping);
  if (source !== undefined) yield* checkText(source, `${path}.source`, names);
  yield* checkValue(key, `${path}.key`, { ...names, each: true });
}

function* checkRole(named: string, to: readonly string[], path: string, mapping: TableMapping): Iterable<MappingFault> {
  const kind = mapping.records[named]?.kind;
  if (kind === undefined) yield { path, message: noEntry(mapping, named) };
  else if (!to.includes(kind) && !to.includes('any record')) {
    yield { path, message: `expected ${to.join(' or ')}, came ${kind} "${named}"` };
  }
}

function* checkImprint(
  { kind, imprint, roles, fields }: ClaimEntry,
  path: string,
  mapping: TableMapping,
): Iterable<MappingFault> {
  if (kind !== 'Imprint')
    yield { path: `${path}.imprint`, message: `${kind} is not read from the words of an imprint` };
  const others = [...Object.keys(roles).filter(name => name !== 'edition'), ...Object.keys(fields ?? {})];
  if (others.length > 0) {
    yield {
      path: `${path}.imprint`,
      message: `expected no ${others.join(', ')} beside it: the words of the imprint give them`,
    };
  }
  for (const [name, value] of Object.entries(imprint ?? {})) {
    yield* checkValue(value, `${path}.imprint.${name}`, namesOf(mapping));
  }
}
