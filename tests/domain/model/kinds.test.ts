import { expect, test } from 'vitest';
import type { Field, Kind, RecordKind, Role } from '../../../src/domain/model/declaration.ts';
import { claimKinds, type KindName, recordKindNames, recordKinds } from '../../../src/domain/model/kinds.ts';
import { itemLinksOfKind, linkKind, linkKinds } from '../../../src/domain/model/links.ts';
import { baseNames } from '../../../src/domain/model/row.ts';
import { inversesOf } from '../../../src/domain/model/sdl-inverse.ts';

const kinds: readonly Kind[] = [...Object.values(recordKinds), ...Object.values(claimKinds)];
const rolesOf = (kind: Kind) => (kind.type === 'claim' ? Object.keys(kind.roles) : []);
const ownNames = (kind: Kind) => [...rolesOf(kind), ...Object.keys(kind.fields)];

test('no field or role takes a name that all records or claims have', () => {
  const taken = kinds.flatMap(kind => ownNames(kind).filter(name => (baseNames as readonly string[]).includes(name)));
  expect(taken).toEqual([]);
});

test('a name stands once in a kind, as a field, a role or the other end of a link', () => {
  const twice = kinds.flatMap(kind => {
    const inverse = kind.type === 'record' ? inversesOf(kind.kind as keyof typeof recordKinds).map(i => i.name) : [];
    const names = [...ownNames(kind), ...inverse];
    return names.filter((name, i) => names.indexOf(name) !== i).map(name => `${kind.kind}.${name}`);
  });
  expect(twice).toEqual([]);
});

test('links name kinds that there are', () => {
  const known = [...recordKindNames, 'any record', 'any claim'] as readonly string[];
  expect(linkKinds.flatMap(link => link.to).filter(to => !known.includes(to))).toEqual([]);
});

test('codes of links are distinct', () => {
  expect(new Set(linkKinds.map(link => link.code)).size).toBe(linkKinds.length);
});

test('the sentence of a claim names roles and fields of its own', () => {
  const strange = Object.values(claimKinds).flatMap(kind =>
    [...kind.says.matchAll(/\{(\w+)\}/g)].map(match => match[1]!).filter(name => !ownNames(kind).includes(name)),
  );
  expect(strange).toEqual([]);
});

test('the field that names a record is a text of its kind', () => {
  for (const kind of kinds) {
    if (kind.type !== 'record' || kind.namedBy === undefined) continue;
    expect((kind.fields[kind.namedBy] as Field).type, kind.kind).toBe('text');
  }
});

test('every kind, field and role is explained in a sentence', () => {
  const docs = kinds.flatMap(kind => [
    kind.doc,
    ...Object.values<Field>(kind.fields).map(field => field.doc),
    ...(kind.type === 'claim' ? Object.values(kind.roles).map(role => role.doc) : []),
  ]);
  expect(docs.filter(doc => !/^\p{Lu}.*\.$/u.test(doc))).toEqual([]);
});

test('what is of the group and never of one notebook is what libraries describe, not what scholars find', () => {
  const shared = Object.values<RecordKind>(recordKinds).filter(kind => kind.shared === true);
  expect(shared.map(({ kind }) => kind)).toEqual([
    ...['Agent', 'Place', 'Workshop', 'Work', 'Edition', 'Exemplar', 'Plate', 'Matrix', 'State', 'Artwork'],
    ...['Reference', 'Convention', 'Design'],
  ]);
});

test('a kind or field that came later stands after those before it, so that codes stay', () => {
  const roles = kinds.map((kind): readonly Role[] => (kind.type === 'claim' ? Object.values(kind.roles) : []));
  const fields = kinds.map(kind => Object.values<Field>(kind.fields));
  for (const list of [Object.values<Kind>(recordKinds), Object.values<Kind>(claimKinds), ...roles, ...fields]) {
    const since = list.map(part => part.since ?? 1);
    expect(since).toEqual(since.toSorted((a, b) => a - b));
  }
});

test('links that stores had first keep their codes', () => {
  const code = (kind: KindName, name: string) => linkKind(kind, name)?.code;
  expect([
    code('Place', 'within'),
    code('Edition', 'work'),
    code('Motif', 'piece'),
    code('Imprint', 'agent'),
    code('Copying', 'source'),
    code('Identity', 'other'),
  ]).toEqual([1102, 1400, 2100, 5002, 5301, 6401]);
});

test('parts of items that name records are told', () => {
  expect(itemLinksOfKind('Comparison')).toEqual([{ field: 'points', part: 'feature', to: ['Feature'] }]);
  expect(itemLinksOfKind('Piece')).toEqual([]);
});
