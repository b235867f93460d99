import type { GraphQLResolveInfo } from 'graphql';
import type { PlateInEdition } from '../../domain/descent/editions-plates.ts';
import type { ApiContext } from '../context.ts';
import { graphOf } from '../graph.ts';
import { graphAsked, type WhatIfArgs } from './graph-asked.ts';
import { loadGrounds, type RowOf, rowsAtHand } from './load.ts';

/** The answer in the form of the schema. */
export async function descent(
  _root: unknown,
  { of, ...args }: { of: string } & WhatIfArgs,
  context: ApiContext,
  info: GraphQLResolveInfo,
): Promise<object> {
  const graph = await graphAsked(args, info, context);
  const answer = await graph.questions.descent(of);
  const row = rowsAtHand(answer.rows, graph);
  return {
    asked: () => row(answer.of),
    editions: answer.editions.map(edition => ({
      ...edition,
      edition: row(edition.edition),
      plates: () => edition.plates.map(plate => plateSource(plate, row)),
    })),
    steps: () => answer.steps.map(row),
    contradictions: answer.contradictions,
    cut: answer.cut,
    grounds: answer.grounds,
  };
}

export const descentResolvers = {
  DescentPlate: {
    restsOn: ({ by }: PlateInEdition, _args: unknown, context: ApiContext, info: GraphQLResolveInfo) =>
      loadGrounds(by, graphOf(info, context)),
  },
};

function plateSource({ plate, fate, from, by }: PlateInEdition, row: RowOf): object {
  return { plate: row(plate), fate, fromPlate: row(from?.plate), fromEdition: row(from?.edition), by };
}
