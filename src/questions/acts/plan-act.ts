import type { Given } from '../../domain/acts/act.ts';
import type { ActName, acts } from '../../domain/acts/acts.ts';
import type { Planned } from './act-parts.ts';
import type { Draft } from './draft.ts';
import { planCopies } from './plan-copies.ts';
import { planLooking } from './plan-looking.ts';
import { planOpinion } from './plan-opinion.ts';
import { planPhotographs } from './plan-photographs.ts';
import { planPiece } from './plan-piece.ts';
import { planPlates } from './plan-plates.ts';
import { planPrint } from './plan-print.ts';
import { planSamePlates } from './plan-same-plates.ts';

type Plans = { readonly [N in ActName]: (given: Given<(typeof acts)[N]['fields']>, draft: Draft) => Promise<Planned> };

const plans: Plans = {
  recordPiece: planPiece,
  recordPrint: planPrint,
  recordPlates: planPlates,
  recordSamePlates: planSamePlates,
  recordCopies: planCopies,
  recordLooking: planLooking,
  recordOpinion: planOpinion,
  recordPhotographs: planPhotographs,
};

/**
 * Drafts what an act writes, of what has been checked by its declaration.
 * @throws what an act refuses, with the field of the act as place
 */
export function planAct(act: ActName, given: Readonly<Record<string, unknown>>, draft: Draft): Promise<Planned> {
  return plans[act](given as never, draft);
}
