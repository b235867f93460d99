import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { makeExecutableSchema } from '@graphql-tools/schema';
import type { GraphQLScalarType, GraphQLSchema } from 'graphql';
import { claimKindNames, recordKindNames } from '../domain/model/kinds.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { kindEnumValue } from '../domain/model/sdl-names.ts';
import { actResolvers } from './resolvers/act-resolvers.ts';
import { conventionMutations, conventionResolvers } from './resolvers/convention-resolvers.ts';
import { descentResolvers } from './resolvers/descent-resolvers.ts';
import { kindResolvers } from './resolvers/kind-resolvers.ts';
import { lineageResolvers } from './resolvers/lineage-resolvers.ts';
import { mutationResolvers, problemResolvers } from './resolvers/mutation-resolvers.ts';
import { answerResolvers, queryResolvers } from './resolvers/query-resolvers.ts';
import { reachResolvers } from './resolvers/reach-resolvers.ts';
import { scalars } from './scalars/scalars.ts';

/** The schema of schema/graphql/ with its resolvers. That the texts are valid is shown by a test, not at every start. */
export function makeSchema(): GraphQLSchema {
  const ofKinds = kindResolvers();
  const byKind = { __resolveType: (row: AnyRow) => row.kind };
  return makeExecutableSchema({
    typeDefs: sdlFiles(),
    assumeValid: true,
    assumeValidSDL: true,
    noLocation: true,
    resolvers: {
      ...Object.fromEntries(Object.entries(scalars).map(([name, scalar]) => [name, coercions(scalar)])),
      ...ofKinds,
      Convention: { ...ofKinds['Convention'], ...conventionResolvers },
      ...answerResolvers,
      ...reachResolvers,
      ...lineageResolvers,
      ...descentResolvers,
      ...problemResolvers,
      Query: queryResolvers,
      Mutation: { ...mutationResolvers, ...conventionMutations, ...actResolvers },
      RecordKind: Object.fromEntries(recordKindNames.map(kind => [kindEnumValue(kind), kind])),
      ClaimKind: Object.fromEntries(claimKindNames.map(kind => [kindEnumValue(kind), kind])),
      DayBounds: {
        first: (range: { readonly lo?: number }) => range.lo ?? null,
        last: (range: { readonly hi?: number }) => range.hi ?? null,
      },
      Node: byKind,
      Record: byKind,
      Claim: byKind,
      Picture: byKind,
      Ground: byKind,
    },
  });
}

/** How a scalar is read and written, without its lack of a doc text: that stands in the schema files. */
function coercions(scalar: GraphQLScalarType): Partial<GraphQLScalarType> {
  const { serialize, parseValue, parseLiteral, coerceOutputValue, coerceInputValue } = scalar;
  return { serialize, parseValue, parseLiteral, coerceOutputValue, coerceInputValue };
}

/** Texts of the schema files, which stand beside `src` and `dist` alike. */
export function sdlFiles(): string[] {
  const folder = resolve(import.meta.dirname, '../../schema/graphql');
  const names = readdirSync(folder).filter(name => name.endsWith('.graphql'));
  return names.sort().map(name => readFileSync(join(folder, name), 'utf8'));
}
