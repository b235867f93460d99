import { buildSchema, execute, isObjectType, parse, printSchema, validateSchema } from 'graphql';
import { expect, test } from 'vitest';
import { executableSchema } from '../../src/api/executable-schema.ts';
import { makeSchema, sdlFiles } from '../../src/api/schema.ts';

const first = 'extend type Query { "How many." many: Int! } scalar Tens';
const second = `"What is asked." type Query { tone: Tone, take(tone: Tone!): Int, each: Each, ten(of: Tens): Tens }
  enum Tone { LOUD SOFT } interface Each { id: ID! } type One implements Each { id: ID! }`;

const resolvers = {
  Query: {
    many: () => 3,
    tone: () => 'piano',
    take: (_root: unknown, { tone }: { tone: string }) => tone.length,
    each: () => ({ id: 'one' }),
    ten: (_root: unknown, { of }: { of: number }) => of,
  },
  Tone: { LOUD: 'forte', SOFT: 'piano' },
  Each: { __resolveType: () => 'One' },
  Tens: {
    coerceInputValue: (value: unknown) => Number(value) / 10,
    coerceOutputValue: (value: unknown) => Number(value) * 10,
  },
};

test('resolvers execute fields, abstract types, values of enums and scalars', async () => {
  const schema = executableSchema([first, second], resolvers);
  const document = parse('{ many tone take(tone: LOUD) each { __typename id } ten(of: 40) }');
  expect(JSON.parse(JSON.stringify(await execute({ schema, document })))).toEqual({
    data: { many: 3, tone: 'SOFT', take: 5, each: { __typename: 'One', id: 'one' }, ten: 40 },
  });
});

test('a type stands in one piece where it is first named, with its fields in the order of the texts', () => {
  const printed = printSchema(executableSchema([first, second], resolvers));
  expect(printed.slice(0, printed.indexOf('}') + 1)).toBe(`"""What is asked."""
type Query {
  """How many."""
  many: Int!
  tone: Tone
  take(tone: Tone!): Int
  each: Each
  ten(of: Tens): Tens
}`);
});

test.each([
  [{ Qery: {} }, 'resolvers name the type Qery, which the schema has'],
  [{ Query: { lots: () => 3 } }, 'resolvers name Query.lots, which the schema has'],
  [{ Tone: { SHRILL: 'shrill' } }, 'resolvers name Tone.SHRILL, which the schema has'],
  [{ Each: { id: () => 'one' } }, 'of Each the type is resolved, came id'],
])('resolvers of what the schema does not have break a promise: %o', (wrong, message) => {
  expect(() => executableSchema([first, second], wrong)).toThrow(
    expect.objectContaining({ code: 'BROKEN_PROMISE', message }),
  );
});

test('the texts of this program are valid, and say what the schema is', () => {
  const checked = buildSchema(sdlFiles().join('\n'));
  expect(validateSchema(checked)).toEqual([]);
  expect(namesIn(makeSchema())).toEqual(namesIn(checked));
});

function namesIn(schema: ReturnType<typeof makeSchema>): string[] {
  const types = Object.values(schema.getTypeMap());
  return types
    .flatMap(type =>
      isObjectType(type) ? Object.keys(type.getFields()).map(name => `${type.name}.${name}`) : type.name,
    )
    .toSorted();
}
