import { type GraphQLOutputType, getNamedType, isInterfaceType, isObjectType } from 'graphql';
import { expect, test } from 'vitest';
import { type Api, createApi } from '../../src/api/create-api.ts';
import { makeSchema } from '../../src/api/schema.ts';
import { claimKindNames, type KindName, recordKindNames, recordKinds } from '../../src/domain/model/kinds.ts';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { kindEnumValue } from '../../src/domain/model/sdl-names.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { engines } from '../support/demo-store.ts';
import { enginesOfRun } from '../support/describe-on-engines.ts';
import { dice } from '../support/random-graph.ts';
import { randomRows } from '../support/random-rows.ts';
import { seedOfRun } from '../support/runs.ts';
import { copying, plate, thing } from '../support/store-rows.ts';
import { data } from './ask.ts';

async function apiOver(rows: readonly AnyRow[]): Promise<Api> {
  const store = await engines[enginesOfRun[0]!]();
  await writeRows(store, rows);
  return createApi({ store, questions: askStore(store), log: () => {} });
}

const schema = makeSchema();

/** All that a type has, without what its links lead to. */
function everything(type: GraphQLOutputType): string {
  const named = getNamedType(type);
  if (isInterfaceType(named)) return '{ ... on Node { id } }';
  if (!isObjectType(named)) return '';
  const fields = Object.values(named.getFields());
  if (fields.some(({ name }) => name === 'pageInfo')) return '{ edges { cursor } }';
  if (fields.some(({ name }) => name === 'id')) return '{ id }';
  return `{ ${fields.map(field => `${field.name} ${everything(field.type)}`).join(' ')} }`;
}

function queryOf(kind: KindName): string {
  const type = schema.getType(kind);
  if (!isObjectType(type)) throw new Error(`${kind} is no object type`);
  const fields = Object.values(type.getFields()).map(({ name, type: of, args }) => {
    const few = args.some(arg => arg.name === 'first') ? '(first: 2)' : '';
    return `${name}${few} ${everything(of)}`;
  });
  return `query ($id: ID!) { node(id: $id) { ... on ${kind} { ${fields.join(' ')} } } }`;
}

test('rows of every kind are told with all that they have', async () => {
  const seed = seedOfRun();
  const rows = randomRows(3, dice(seed));
  const api = await apiOver(rows);
  for (const row of rows) {
    const { node } = (await data(api, queryOf(row.kind), { id: row.id })) as { node: Record<string, unknown> };
    const told = Object.entries(row).filter(([name, value]) => typeof value !== 'object' && name in node);
    for (const [name, value] of told) {
      const of = node[name] as { readonly id: string } | string | number | boolean | null;
      expect(typeof of === 'object' && of !== null ? of.id : of, `${row.id}.${name}, seed ${seed}`).toEqual(value);
    }
  }
});

test('every kind of record is listed, and every kind of claim found by its name', async () => {
  const api = await apiOver(randomRows(1, dice(7)));
  const plurals = recordKindNames.filter(kind => kind !== 'Convention');
  const lists = plurals.map(kind => `${kind}: ${recordKinds[kind].plural} { nodes { id } }`);
  const found = (await data(api, `{ ${lists.join(' ')} }`)) as Record<string, { nodes: { id: string }[] }>;
  expect(plurals.map(kind => found[kind]!.nodes.map(({ id }) => id))).toEqual(
    plurals.map(kind => [`${kind.toLowerCase()}-any-0`]),
  );
  const claims = claimKindNames.map(
    kind => `${kind}: claims(kinds: [${kindEnumValue(kind)}], standing: null) { nodes { id } }`,
  );
  const said = (await data(api, `{ ${claims.join(' ')} }`)) as Record<string, { nodes: { id: string }[] }>;
  expect(claimKindNames.map(kind => said[kind]!.nodes.map(({ id }) => id))).toEqual(
    claimKindNames.map(kind => [`${kind.toLowerCase()}-any-0`]),
  );
});

test('a comparison is told with its features, the photographs it cites, and what others think of it', async () => {
  const api = await apiOver([
    plate('a'),
    plate('b'),
    { ...thing('Agent', 'ada'), labels: [{ text: 'Ada' }] },
    { id: 'feature-of-dog', kind: 'Feature', what: 'the dog at the gate', form: 'PECULIARITY' },
    { id: 'photograph-of-a', kind: 'Photograph', of: 'plate-of-a', view: 'whole' },
    {
      ...{ id: 'comparison-of-c', kind: 'Comparison', picture: 'plate-of-a', against: 'plate-of-b' },
      handedness: 'REVERSED',
      points: [{ feature: 'feature-of-dog', agreement: 'SHARED', x: 12.5, y: 40 }],
      evidence: [{ photograph: 'photograph-of-a', region: [{ x: 10, y: 20, width: 30, height: 40 }] }],
    },
    { id: 'opinion-of-ada', kind: 'Opinion', agent: 'agent-of-ada', claim: 'comparison-of-c', verdict: 'DOUBTS' },
    copying('c', 'plate-of-a', 'plate-of-b'),
  ]);
  const query = `{
    node(id: "comparison-of-c") {
      ... on Comparison {
        says
        points { feature { what form } agreement x y againstX }
        evidence { photograph { view of { id } } region { x width } }
        claims { nodes { id says } }
      }
    }
    plate: node(id: "plate-of-a") { ... on Plate { photographs { nodes { id } } claims { nodes { id } } } }
    copying: node(id: "copying-of-c") { ... on Copying { claims { nodes { id } } } }
    about: claims(about: "comparison-of-c") { nodes { id } }
  }`;
  expect(await data(api, query)).toEqual({
    node: {
      says: 'a was compared with b',
      points: [
        {
          feature: { what: 'the dog at the gate', form: 'PECULIARITY' },
          ...{ agreement: 'SHARED', x: 12.5, y: 40, againstX: null },
        },
      ],
      evidence: [{ photograph: { view: 'whole', of: { id: 'plate-of-a' } }, region: [{ x: 10, width: 30 }] }],
      claims: { nodes: [{ id: 'opinion-of-ada', says: 'Ada doubts comparison-of-c' }] },
    },
    plate: {
      photographs: { nodes: [{ id: 'photograph-of-a' }] },
      claims: { nodes: [{ id: 'comparison-of-c' }, { id: 'copying-of-c' }] },
    },
    copying: { claims: { nodes: [] } },
    about: { nodes: [{ id: 'opinion-of-ada' }] },
  });
});
