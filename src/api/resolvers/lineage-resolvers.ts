import type { GraphQLResolveInfo } from 'graphql';
import { appearanceLocator } from '../../domain/model/appearance-locator.ts';
import type { AnyRow } from '../../domain/model/row.ts';
import type {
  Contradiction,
  Lineage,
  LineageAppearance,
  LineageAsked,
  LineageNode,
  LineageStepTaken,
} from '../../questions/lineage-answer.ts';
import type { ApiContext } from '../context.ts';
import { graphOf } from '../graph.ts';
import { given } from './given.ts';
import { graphAsked, type WhatIfArgs } from './graph-asked.ts';
import { loadGrounds, type RowOf, rowsAtHand } from './load.ts';

type LineageArgs = { readonly [K in keyof LineageAsked]?: LineageAsked[K] | null } & Pick<LineageAsked, 'of'>;

/** The answer in the form of the schema. Rows that it brings along are given as they are: thousands of promises cost time. */
export async function lineage(
  _root: unknown,
  { basis, suppose, without, asOf, ...args }: LineageArgs & WhatIfArgs,
  context: ApiContext,
  info: GraphQLResolveInfo,
): Promise<object> {
  const graph = await graphAsked({ basis, suppose, without, asOf }, info, context);
  const answer = await graph.questions.lineage(given(args));
  const row = rowsAtHand(answer.rows, graph);
  return {
    picture: () => row(answer.of),
    links: { nodes: () => answer.nodes.map(node => nodeSource(node, row)), steps: () => stepSources(answer, row) },
    earliest: () => answer.earliest.map(row),
    latest: () => answer.latest.map(row),
    contradictions: answer.contradictions,
    missingLinks: answer.missingLinks.map(link => ({ ...link, claim: () => row(link.claim) })),
    cut: answer.cut,
    grounds: answer.grounds,
  };
}

export const lineageResolvers = {
  LineageStep: {
    __resolveType: (step: AnyRow | { readonly kind: 'DetailStep' }) => step.kind,
  },
  Contradiction: {
    involved: ({ involved }: Contradiction, _args: unknown, context: ApiContext, info: GraphQLResolveInfo) =>
      loadGrounds(involved, graphOf(info, context)),
  },
};

function nodeSource(node: LineageNode, row: RowOf): object {
  return {
    ...node,
    record: row(node.record),
    appearances: () => node.appearances.map(each => appearanceSource(each, row)),
  };
}

function appearanceSource({ claim, edition, published }: LineageAppearance, row: RowOf): object {
  const appearance = row(claim);
  const isHere = !(appearance instanceof Promise) && appearance?.kind === 'Appearance';
  return {
    appearance,
    edition: row(edition),
    published,
    locator: isHere ? appearanceLocator(appearance) : null,
  };
}

function stepSources({ steps }: Lineage, row: RowOf): readonly unknown[] {
  return steps.map(step => (step.kind === 'Detail' ? detailStep(step, row) : row(step.by)));
}

function detailStep({ copy, source }: LineageStepTaken, row: RowOf): object {
  return { kind: 'DetailStep', detail: row(copy), whole: row(source) };
}
