import {
  buildSchema,
  type GraphQLField,
  type GraphQLNamedType,
  getNamedType,
  isEnumType,
  isInputObjectType,
  isInterfaceType,
  isIntrospectionType,
  isListType,
  isNonNullType,
  isObjectType,
  isSpecifiedScalarType,
  validateSchema,
} from 'graphql';
import { expect, test } from 'vitest';
import { makeSchema, sdlFiles } from '../../src/api/schema.ts';
import { claimKindNames, recordKindNames, recordKinds } from '../../src/domain/model/kinds.ts';
import { kindsSdl } from '../../src/domain/model/sdl.ts';
import { kindEnumValue } from '../../src/domain/model/sdl-names.ts';
import { answerFlags } from '../../src/domain/reach/answer-flag.ts';

const schema = makeSchema();
const types = Object.values(schema.getTypeMap()).filter(
  type => !isIntrospectionType(type) && !isSpecifiedScalarType(type),
);
const fielded = types.filter(type => isObjectType(type) || isInterfaceType(type));
const valuesOf = (name: string) => {
  const type = schema.getType(name);
  return isEnumType(type) ? type.getValues().map(value => value.name) : [];
};

/** Everything in the schema that may have a doc text, with its coordinate. */
function* described(type: GraphQLNamedType): Generator<[coordinate: string, doc: string | null | undefined]> {
  yield [type.name, type.description];
  if (isEnumType(type)) for (const value of type.getValues()) yield [`${type.name}.${value.name}`, value.description];
  if (isInputObjectType(type))
    for (const field of Object.values(type.getFields())) yield [`${type.name}.${field.name}`, field.description];
  if (isObjectType(type) || isInterfaceType(type)) {
    for (const field of Object.values(type.getFields())) {
      yield [`${type.name}.${field.name}`, field.description];
      for (const arg of field.args) yield [`${type.name}.${field.name}(${arg.name}:)`, arg.description];
    }
  }
}

const typeOf = (field: GraphQLField<unknown, unknown> | undefined) => String(field?.type);

test('the generated part is what the declarations say', () => {
  expect(sdlFiles(), 'run "npm run generate"').toContain(kindsSdl());
});

test('everything has a doc text, which is a sentence', () => {
  const silent = types.flatMap(type => [...described(type)].filter(([, doc]) => !/^\S.*[.`]$/s.test(doc ?? '')));
  expect(silent.map(([coordinate]) => coordinate)).toEqual([]);
});

test('names are those of GraphQL: types in PascalCase, fields and arguments in camelCase, enum values in capitals', () => {
  const odd = types
    .flatMap(type => [...described(type)].map(([coordinate]) => coordinate))
    .filter(name => !/^[A-Z][A-Za-z]*(\.([a-z][A-Za-z]*(\([a-z][A-Za-z]*:\))?|[A-Z][A-Z_]*))?$/.test(name));
  expect(odd).toEqual([]);
});

test('connections have the form of the Cursor Connections Specification', () => {
  const connections = fielded.filter(type => type.name.endsWith('Connection'));
  expect(connections.length).toBeGreaterThan(recordKindNames.length);
  for (const type of connections) {
    const fields = type.getFields();
    const edge = schema.getType(type.name.replace(/Connection$/, 'Edge'));
    expect(typeOf(fields['pageInfo'])).toBe('PageInfo!');
    expect(typeOf(fields['edges'])).toBe(`[${edge?.name}!]!`);
    if (!isObjectType(edge)) throw new Error(`${type.name} has no edge type`);
    expect(typeOf(edge.getFields()['cursor'])).toBe('String!');
    const node = edge.getFields()['node']!.type;
    expect(isListType(isNonNullType(node) ? node.ofType : node)).toBe(false);
  }
});

test('a field that gives a connection takes first and after', () => {
  const without = fielded.flatMap(type =>
    Object.values(type.getFields())
      .filter(field => getNamedType(field.type).name.endsWith('Connection'))
      .filter(field => !['first', 'after'].every(name => field.args.some(arg => arg.name === name)))
      .map(field => `${type.name}.${field.name}`),
  );
  // The rows of a reach are paged by the question itself, which counts over all of them.
  expect(without).toEqual(['Reach.editions']);
});

test('Node has one field, and every record and claim is a Node', () => {
  const node = schema.getType('Node');
  if (!isInterfaceType(node)) throw new Error('Node is no interface');
  expect(Object.values(node.getFields()).map(field => `${field.name}: ${field.type}`)).toEqual(['id: ID!']);
  const possible = schema.getPossibleTypes(node).map(type => type.name);
  expect(possible.toSorted()).toEqual([...recordKindNames, ...claimKindNames].toSorted());
});

test('pictures are the kinds that can be copied', () => {
  const picture = schema.getType('Picture');
  if (!isInterfaceType(picture)) throw new Error('Picture is no interface');
  expect(
    schema
      .getPossibleTypes(picture)
      .map(type => type.name)
      .toSorted(),
  ).toEqual(['Artwork', 'Design', 'Detail', 'Motif', 'Plate']);
});

test('every kind has its enum value, and every kind of record but conventions its list', () => {
  expect(valuesOf('RecordKind')).toEqual(recordKindNames.map(kindEnumValue));
  expect(valuesOf('ClaimKind')).toEqual(claimKindNames.map(kindEnumValue));
  const query = schema.getQueryType()!.getFields();
  for (const kind of recordKindNames) {
    const expected = kind === 'Convention' ? '[Convention!]!' : `${kind}Connection!`;
    expect(typeOf(query[recordKinds[kind].plural])).toBe(expected);
  }
});

test('flags of answers are those that the domain gives', () => {
  expect(valuesOf('AnswerFlag')).toEqual(Object.keys(answerFlags));
});

test('the texts are valid, which is not looked at when a server starts', () => {
  const checked = buildSchema(sdlFiles().join('\n'));
  expect(validateSchema(checked)).toEqual([]);
  expect(Object.keys(schema.getTypeMap()).toSorted()).toEqual(Object.keys(checked.getTypeMap()).toSorted());
});
