import type { PlateInEdition } from '../../domain/descent/editions-plates.ts';
import type { Descent, DescentEdition } from '../../questions/descent-answer.ts';
import type { ApiContext } from '../context.ts';
import { loadGrounds, loadLink, rememberRows } from './load.ts';

export async function descent(_root: unknown, { of }: { of: string }, context: ApiContext): Promise<Descent> {
  const answer = await context.questions.descent(of);
  rememberRows(answer.rows, context);
  return answer;
}

export const descentResolvers = {
  Descent: {
    asked: (answer: Descent, _args: unknown, context: ApiContext) => loadLink(answer.of, context),
    steps: ({ steps }: Descent, _args: unknown, context: ApiContext) => steps.map(id => loadLink(id, context)),
  },
  DescentEdition: {
    edition: ({ edition }: DescentEdition, _args: unknown, context: ApiContext) => loadLink(edition, context),
  },
  DescentPlate: {
    plate: ({ plate }: PlateInEdition, _args: unknown, context: ApiContext) => loadLink(plate, context),
    fromPlate: ({ from }: PlateInEdition, _args: unknown, context: ApiContext) => loadLink(from?.plate, context),
    fromEdition: ({ from }: PlateInEdition, _args: unknown, context: ApiContext) => loadLink(from?.edition, context),
    restsOn: ({ by }: PlateInEdition, _args: unknown, context: ApiContext) => loadGrounds(by, context),
  },
};
