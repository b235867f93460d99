import { type ClaimKindName, isClaimKind } from '../../domain/model/kinds.ts';
import type { Origin } from '../../domain/model/row.ts';
import { invariant } from '../../errors.ts';
import { type FieldRemark, faultsOf } from './fill-field.ts';
import { fillFields } from './fill-fields.ts';
import { keptWords } from './imprint-words.ts';
import { neededParts } from './mapped-fields.ts';
import { eachScopes, type RecordInstance } from './record-instances.ts';
import type { RowScope } from './row-scope.ts';
import type { ClaimEntry } from './table-mapping.ts';
import { evaluate, type Got, holdsIn, joined, nothing, textOf } from './value.ts';

/** A claim that a row comes to. */
export interface ClaimPlan {
  readonly kind: ClaimKindName;
  readonly roles: Roles;
  /** A role that a record of a source takes which may not have come yet. */
  readonly link?: RoleLink;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly copyright?: string;
  /** Words of an imprint, to be taken apart. */
  readonly imprint?: ImprintWords;
  readonly note?: string;
  /** Columns that say it. */
  readonly said: readonly string[];
  readonly whole: readonly string[];
}

export type Roles = Readonly<Record<string, RecordInstance>>;

export interface RoleLink {
  readonly role: string;
  readonly target: Origin;
}

export interface ImprintWords {
  readonly place: Got;
  readonly agent: Got;
}

/** The records of a row that claims can name. */
export interface RowRecords {
  /** Name of the entry that the row is about. */
  readonly main: string;
  readonly source: string;
  /** Records of an entry; none where it came to none. */
  of(entry: string): readonly RecordInstance[];
}

/**
 * The claims that an entry comes to in a row: one for each combination of the records that its roles name. None where
 * its condition does not hold, where a role or field that the kind must have is empty, or where it would say nothing.
 * @param remarks what could not be read is added here, whether or not a claim is made
 */
export function planClaims(
  entry: ClaimEntry,
  scope: RowScope,
  records: RowRecords,
  remarks: FieldRemark[],
): readonly ClaimPlan[] {
  if (entry.if !== undefined && !holdsIn(entry.if, scope)) return [];
  return combinations(entry, records).flatMap(roles => {
    const each = Object.values(roles).find(record => record.each !== undefined)?.each;
    const outer = each === undefined ? scope : { ...scope, each };
    const { scopes, got } = eachScopes(entry.each, outer);
    remarks.push(...faultsOf(got));
    return scopes.flatMap(inner => planClaim(entry, inner, roles, got, records, remarks));
  });
}

function combinations({ roles }: ClaimEntry, records: RowRecords): readonly Roles[] {
  let all: readonly Roles[] = [{}];
  for (const [role, named] of Object.entries(roles)) {
    const found = typeof named === 'string' ? records.of(named) : [];
    if (found.length > 0) all = all.flatMap(before => found.map(record => ({ ...before, [role]: record })));
  }
  return all;
}

function planClaim(
  entry: ClaimEntry,
  scope: RowScope,
  roles: Roles,
  each: Got,
  records: RowRecords,
  remarks: FieldRemark[],
): readonly ClaimPlan[] {
  const { kind } = entry;
  invariant(isClaimKind(kind), 'a mapping that was read names kinds of claims');
  const filled = fillFields(kind, entry.fields ?? {}, scope);
  const { link, got: linked } = linkOf(entry, scope, records.source);
  const imprint = imprintOf(entry, scope);
  const note = entry.note === undefined ? nothing : evaluate(entry.note, scope);
  const words = imprint === undefined ? [] : [imprint.place, imprint.agent];
  remarks.push(...filled.remarks, ...[...words, linked, note].flatMap(faultsOf));
  const used = [...words, each, linked, filled].flatMap(got => got.used);
  const rule = kind === 'Imprint' ? roles['place']?.rule : undefined;
  const plan: ClaimPlan = {
    kind,
    roles,
    fields: { ...(rule === undefined ? {} : { rule }), ...filled.fields },
    ...(link === undefined ? {} : { link }),
    ...(filled.copyright === undefined ? {} : { copyright: filled.copyright }),
    ...(imprint === undefined ? {} : { imprint }),
    ...(note.pieces.length === 0 ? {} : { note: joined(note) }),
    said: entry.said ?? saidIn(used, roles, records),
    whole: [
      ...[filled, each, linked, note].flatMap(got => got.whole),
      ...(imprint === undefined ? [] : keptWords(imprint)),
    ],
  };
  return isComplete(plan) ? [plan] : [];
}

function linkOf(
  { roles }: ClaimEntry,
  scope: RowScope,
  source: string,
): { readonly link?: RoleLink; readonly got: Got } {
  for (const [role, named] of Object.entries(roles)) {
    if (typeof named === 'string') continue;
    const got = evaluate(named.key, scope);
    const givenBy = named.source === undefined ? source : textOf({ text: named.source }, scope);
    const target = { source: givenBy, key: joined(got) };
    return got.pieces.length === 0 ? { got } : { link: { role, target }, got };
  }
  return { got: nothing };
}

function imprintOf({ imprint }: ClaimEntry, scope: RowScope): ImprintWords | undefined {
  if (imprint === undefined) return undefined;
  const words = (value: typeof imprint.place): Got => (value === undefined ? nothing : evaluate(value, scope));
  return { place: words(imprint.place), agent: words(imprint.agent) };
}

/**
 * What says a claim: the columns of its values, and those by which the records are recognised that it names beside the
 * one that the row is about; else all that these, or the one that the row is about, are taken from.
 */
function saidIn(used: readonly string[], roles: Roles, records: RowRecords): readonly string[] {
  const [main] = records.of(records.main);
  const others = Object.values(roles).filter(record => record !== main);
  const key = new Set(main?.known);
  const columns = [...others.flatMap(record => record.known).filter(column => !key.has(column)), ...used];
  const among = others.length > 0 ? others : Object.values(roles);
  return [...new Set(columns.length > 0 ? columns : among.flatMap(record => record.used))];
}

/** Kinds that say nothing without one of these. */
const sayingNothing: Partial<Readonly<Record<ClaimKindName, readonly string[]>>> = {
  Dating: ['date', 'asWritten'],
  Imprint: ['place', 'agent'],
  Depiction: ['subject', 'iconclass', 'named'],
};

function isComplete({ kind, roles, fields, link, imprint }: ClaimPlan): boolean {
  const given = new Set([...Object.keys(roles), ...Object.keys(fields), ...(link === undefined ? [] : [link.role])]);
  const words = imprint === undefined ? 0 : imprint.place.pieces.length + imprint.agent.pieces.length;
  if (imprint !== undefined) return given.has('edition') && words > 0;
  const oneOf = sayingNothing[kind];
  return (
    neededParts(kind).every(name => given.has(name)) && (oneOf === undefined || oneOf.some(name => given.has(name)))
  );
}
