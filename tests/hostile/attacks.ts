/** Text of a list in an object in a list, too deep to be written by what writes JSON. */
const deepText = (levels: number) => `${'[{"in":'.repeat(levels)}1${'}]'.repeat(levels)}`;
const times = (count: number, piece: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => piece(i)).join(' ');
const nested = (levels: number, inner: string): string => `${'within { '.repeat(levels)}${inner}${' }'.repeat(levels)}`;
const node = 'node(id: "place-amsterdam-city")';

/** Queries that are made to cost more than they are worth. */
const queries: Readonly<Record<string, { readonly query: string; readonly variables?: object }>> = {
  'a thousand levels': { query: `{ ${node} { ... on Place { ${nested(900, 'id')} } } }` },
  'a thousand lists in a list': { query: `{ nodes(ids: ${'['.repeat(900)}${']'.repeat(900)}) { id } }` },
  'a thousand objects in an object': {
    query: `{ reach(at: ${'{place:'.repeat(600)}1${'}'.repeat(600)}, by: "1766") { counts { inNoCase } } }`,
  },
  'six hundred fields of one name that must be compared': { query: `{ ${times(600, () => 'works { __typename }')} }` },
  'fields of one name in fragments of fragments': {
    query: `{ works { ...a0 ...a1 } } ${times(120, i => `fragment a${i} on WorkConnection { totalCount ...a${i + 1} ...a${i + 2} }`)} fragment a120 on WorkConnection { totalCount } fragment a121 on WorkConnection { totalCount }`,
  },
  'fragments that go round': {
    query: `{ ${node} { ...a } } fragment a on Place { within { ...b } } fragment b on Place { within { ...a } }`,
  },
  'a fragment in itself': { query: `{ ${node} { ...a } } fragment a on Node { ...a }` },
  'a hundred fragments that nobody uses': {
    query: `{ __typename } ${times(100, i => `fragment u${i} on Work { id }`)}`,
  },
  'a hundred unknown fields': { query: `{ ${times(300, i => `nope${i}`)} }` },
  'a hundred variables that nobody uses': { query: `query(${times(300, i => `$v${i}: ID`)}) { __typename }` },
  'five hundred operations': { query: times(400, i => `query q${i} { __typename }`) },
  'five hundred directives': { query: `{ __typename ${times(300, () => '@skip(if: false)')} }` },
  'the schema of the schema of the schema': {
    query: `{ __schema { types { fields { type { fields { type { fields { type { fields { name } } } } } } } } } }`,
  },
  'thirty pages of two hundred': { query: `{ ${times(30, i => `a${i}: works(first: 200) { nodes { id label } }`)} }` },
  'a page in a page in a page': {
    query:
      '{ works(first: 200) { nodes { editions(first: 200) { nodes { exemplars(first: 200) { nodes { id } } } } } } }',
  },
  'a page of so many as a variable says': {
    query: 'query($n: Int) { works(first: $n) { nodes { editions(first: $n) { nodes { id } } } } }',
    variables: { n: 2 ** 31 - 1 },
  },
  'ten thousand ids': {
    query: 'query($ids: [ID!]!) { nodes(ids: $ids) { id } }',
    variables: { ids: Array.from({ length: 10_000 }, (_, i) => `plate-no-${i}`) },
  },
  'a long comment': { query: `{ __typename } #${'x'.repeat(900_000)}` },
  'a long name': { query: `{ ${'x'.repeat(900_000)} }` },
  'a long text': { query: `{ node(id: "${'x'.repeat(900_000)}") { id } }` },
  'a long number': { query: `{ works(first: ${'9'.repeat(900_000)}) { nodes { id } } }` },
  'a block of text without end': { query: `{ node(id: """${'\\"""'.repeat(100_000)}` },
  'a text of quotes': { query: `{ node(id: "${'\\u0022'.repeat(100_000)}") { id } }` },
  'a hundred thousand commas': { query: `{ ${','.repeat(900_000)} __typename }` },
  'a subscription': { query: 'subscription { works { nodes { id } } }' },
  'an upload': { query: 'query($f: Upload!) { node(id: $f) { id } }', variables: { f: null } },
  'a search for every letter': {
    query: '{ search(text: "a b c d e f g h i j k l m n o p q r s t u v w x y z") { edges { node { id } } } }',
  },
  'a search for twenty thousand words': {
    query: 'query($t: String!) { search(text: $t) { edges { node { id } } } }',
    variables: { t: 'ab '.repeat(20_000) },
  },
  'a search for one word of a hundred thousand accents': {
    query: 'query($t: String!) { search(text: $t) { edges { node { id } } } }',
    variables: { t: `a${'\u0301'.repeat(100_000)}` },
  },
};

/** Bodies of requests. */
export const attacks: Readonly<Record<string, string>> = {
  ...Object.fromEntries(Object.entries(queries).map(([name, query]) => [name, JSON.stringify(query)])),
  'a variable of five thousand levels': `{"query":"query($id: ID!) { node(id: $id) { id } }","variables":{"id":${deepText(5_000)}}}`,
  'a text that is a hundred thousand levels': `{"query":"query($t: String!) { search(text: $t) { cut } }","variables":{"t":${deepText(100_000)}}}`,
  'a date of a hundred thousand levels': `{"query":"query($t: EDTF) { reach(at: {placeName: \\"London\\"}, by: $t) { counts { inNoCase } } }","variables":{"t":${deepText(100_000)}}}`,
  'one of a hundred thousand levels': `{"query":"query($t: WhoOrWhere!) { reach(at: $t, by: \\"1766\\") { counts { inNoCase } } }","variables":{"t":${deepText(100_000)}}}`,
  'a hundred thousand levels that nobody asks for': `{"query":"{ __typename }","variables":{"x":${deepText(100_000)}}}`,
  'a hundred thousand levels': deepText(60_000),
  'a hundred thousand beginnings': '['.repeat(900_000),
  'a hundred thousand names': `{${Array.from({ length: 60_000 }, (_, i) => `"a${i}":1`).join(',')}}`,
  'a name that every object has': '{"query":"{ __typename }","variables":{"__proto__":{"x":1},"constructor":1}}',
  'a name of the body that every object has': '{"query":"{ __typename }","__proto__":{"variables":{}}}',
  'the same name twice': '{"query":"{ nope }","query":"{ __typename }"}',
};
