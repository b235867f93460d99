import { expect, test } from 'vitest';
import type { Field, Kind } from '../../../src/domain/model/declaration.ts';
import { claimKinds, recordKindNames, recordKinds } from '../../../src/domain/model/kinds.ts';
import { linkKinds } from '../../../src/domain/model/links.ts';
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
