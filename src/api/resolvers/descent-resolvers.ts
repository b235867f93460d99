import type { PlateInEdition } from '../../domain/descent/editions-plates.ts';
import type { ApiContext } from '../context.ts';
import { loadGrounds, type RowOf, rowsAtHand } from './load.ts';

/** The answer in the form of the schema. */
export async function descent(_root: unknown, { of }: { of: string }, context: ApiContext): Promise<object> {
  const answer = await context.questions.descent(of);
  const row = rowsAtHand(answer.rows, context);
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
    restsOn: ({ by }: PlateInEdition, _args: unknown, context: ApiContext) => loadGrounds(by, context),
  },
};

function plateSource({ plate, fate, from, by }: PlateInEdition, row: RowOf): object {
  return { plate: row(plate), fate, fromPlate: row(from?.plate), fromEdition: row(from?.edition), by };
}
