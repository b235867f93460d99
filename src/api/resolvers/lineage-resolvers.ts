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
import { given } from './given.ts';
import { loadGrounds, loadLink, rememberRows } from './load.ts';

type LineageArgs = { readonly [K in keyof LineageAsked]?: LineageAsked[K] | null } & Pick<LineageAsked, 'of'>;

export async function lineage(_root: unknown, args: LineageArgs, context: ApiContext): Promise<Lineage> {
  const answer = await context.questions.lineage(given(args));
  rememberRows(answer.rows, context);
  return answer;
}

export const lineageResolvers = {
  Lineage: {
    picture: (answer: Lineage, _args: unknown, context: ApiContext) => loadLink(answer.of, context),
    links: ({ nodes, steps }: Lineage) => ({ nodes, steps }),
    earliest: ({ earliest }: Lineage, _args: unknown, context: ApiContext) => loadAll(earliest, context),
    latest: ({ latest }: Lineage, _args: unknown, context: ApiContext) => loadAll(latest, context),
  },
  LineageNode: {
    record: (node: LineageNode, _args: unknown, context: ApiContext) => loadLink(node.record, context),
  },
  LineageAppearance: {
    appearance: ({ claim }: LineageAppearance, _args: unknown, context: ApiContext) => loadLink(claim, context),
    edition: ({ edition }: LineageAppearance, _args: unknown, context: ApiContext) => loadLink(edition, context),
    locator: async ({ claim }: LineageAppearance, _args: unknown, context: ApiContext) => {
      const row = await loadLink(claim, context);
      return row?.kind === 'Appearance' ? appearanceLocator(row) : undefined;
    },
  },
  LineageLinks: {
    steps: ({ steps }: Pick<Lineage, 'steps'>, _args: unknown, context: ApiContext) =>
      steps.map(step => (step.kind === 'Detail' ? step : loadLink(step.by, context))),
  },
  LineageStep: {
    __resolveType: (step: AnyRow | LineageStepTaken) => (step.kind === 'Detail' ? 'DetailStep' : step.kind),
  },
  DetailStep: {
    detail: ({ copy }: LineageStepTaken, _args: unknown, context: ApiContext) => loadLink(copy, context),
    whole: ({ source }: LineageStepTaken, _args: unknown, context: ApiContext) => loadLink(source, context),
  },
  Contradiction: {
    involved: ({ involved }: Contradiction, _args: unknown, context: ApiContext) => loadGrounds(involved, context),
  },
  MissingLink: {
    claim: ({ claim }: { readonly claim: string }, _args: unknown, context: ApiContext) => loadLink(claim, context),
  },
};

function loadAll(ids: readonly string[], context: ApiContext): readonly Promise<AnyRow | null>[] {
  return ids.map(id => loadLink(id, context));
}
