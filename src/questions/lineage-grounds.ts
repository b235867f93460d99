import type { Conventions } from '../domain/conventions/conventions.ts';
import type { DatesNetwork, LinkedDates } from '../domain/descent/dates-network.ts';
import type { LineageOfWalk } from '../domain/descent/lineage-of-walk.ts';
import { kindOfId } from '../domain/model/id.ts';
import { isClaimKind } from '../domain/model/kinds.ts';
import { compareText } from '../domain/text/compare.ts';
import { type ConventionUse, defaultBasis, type Grounds, recordedClaimsCaution } from './grounds.ts';
import type { LineageAppearance } from './lineage-answer.ts';

const inexactCaution =
  'Not every combination of alternatives was tried: some days may be wider than the claims allow, never narrower.';
const moreContradictionsCaution = 'There are more contradictions of dates than are listed.';

/** What a lineage rests on: its steps, all that dates it, and where its plates appear. */
export function lineageGrounds(
  { steps, claims }: LineageOfWalk,
  network: DatesNetwork,
  dates: LinkedDates,
  appearances: ReadonlyMap<string, readonly LineageAppearance[]>,
  conventions: Conventions,
): Grounds {
  const by = new Set([
    ...claims.map(claim => claim.id),
    ...groundsOfNetwork(network),
    ...[...appearances.values()].flatMap(of => of.map(({ claim }) => claim)),
  ]);
  const limits = ['limit.lineage', 'limit.depth'];
  const comparesRegions = steps.some(({ onCopy, onSource }) => isPart(onCopy) || isPart(onSource));
  return {
    basis: defaultBasis,
    claims: [...by].filter(id => isClaimKind(kindOfId(id) ?? '')).sort(compareText),
    conventions: used(conventions, by, comparesRegions ? [...limits, 'part.overlap'] : limits),
    supposed: false,
    cautions: [
      recordedClaimsCaution,
      ...(dates.exact ? [] : [inexactCaution]),
      ...(dates.more ? [moreContradictionsCaution] : []),
    ],
  };
}

function* groundsOfNetwork({ bounds, links, choices }: DatesNetwork): Iterable<string> {
  const parts = [{ bounds, links }, ...choices.flatMap(choice => choice.options)];
  for (const part of parts) {
    for (const { by, earlyBy = [] } of part.bounds) yield* [...by, ...earlyBy];
    for (const { by } of part.links) yield* by;
  }
  for (const { options } of choices) for (const { claim } of options) yield claim;
}

function isPart(region: unknown): boolean {
  return typeof region === 'object';
}

function used(conventions: Conventions, by: ReadonlySet<string>, keys: readonly string[]): readonly ConventionUse[] {
  const named = conventions.all.filter(({ id, key }) => by.has(id) || keys.includes(key));
  return named.map(({ key }) => conventions.use(key));
}
