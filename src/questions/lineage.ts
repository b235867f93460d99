import type { Conventions } from '../domain/conventions/conventions.ts';
import { datesNetworkOf } from '../domain/descent/dates-network-of.ts';
import { handednessLinksOf } from '../domain/descent/handedness-links-of.ts';
import { type CircleContradiction, lineageCircles } from '../domain/descent/lineage-circles.ts';
import { type LineageEnds, lineageEnds } from '../domain/descent/lineage-ends.ts';
import { missingLinks } from '../domain/descent/lineage-gaps.ts';
import { handednessFrom } from '../domain/descent/lineage-handedness.ts';
import { type LineageMember, type LineageOfWalk, lineageOfWalk } from '../domain/descent/lineage-of-walk.ts';
import { relateHandedness } from '../domain/descent/relate-handedness.ts';
import { caseLimits, solveDates } from '../domain/descent/solve-dates.ts';
import { type Basis, counts } from '../domain/model/counted.ts';
import { checkId } from '../domain/model/id.ts';
import type { AnyClaim, ClaimOf } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { Lineage, LineageAppearance, LineageAsked, LineageNode } from './lineage-answer.ts';
import { contradictionsIn, type DaysOf, daysIn } from './lineage-dates.ts';
import { linkedGrounds } from './lineage-grounds.ts';
import { lineageSurroundings, type Surroundings } from './lineage-surroundings.ts';
import { lineageWalk } from './lineage-walk.ts';
import { leastOnTheWay } from './lineage-ways.ts';
import { asRecorded, type Premises } from './premises.ts';
import { ofKinds } from './the-record.ts';

/** Kinds of records that a lineage can be asked of. */
const kinds = ['Artwork', 'Plate', 'Motif', 'Detail', 'Matrix', 'Design'] as const;

/**
 * Where a picture comes from, and what was made from it: the pictures and printing surfaces with their days as all linked
 * claims leave them and their handedness against the one asked about, what contradicts itself, and what is missing.
 */
export async function lineage(
  store: GraphStore,
  asked: LineageAsked,
  premises: Premises = asRecorded,
): Promise<Lineage> {
  const { of, towards = 'BOTH' } = asked;
  checkId(of);
  const { walk, conventions, depth } = await lineageWalk(store, of, towards, asked.depth, premises.basis);
  ofKinds(walk.records[0], of, kinds);
  const partOverlap = conventions.get('part.overlap');
  const found = lineageOfWalk(walk, of, towards, { depth, partOverlap });
  const members = found.members.map(({ record }) => record);
  const around = [...walk.records, ...walk.claims, ...walk.around.flat()];
  const surroundings = await lineageSurroundings(store, members, found.claims, around, premises.basis);
  const shape = shapeOf(found, of);
  const isDepthAsked = asked.depth !== undefined;
  return answer({ of, towards, isDepthAsked, found, shape, surroundings, conventions, premises });
}

type Shape = LineageEnds & { readonly circles: readonly CircleContradiction[] };

function shapeOf({ members, steps }: LineageOfWalk, of: string): Shape {
  const pictures = members.flatMap(({ record }) => (record.kind === 'Matrix' ? [] : [record.id]));
  return { circles: lineageCircles(steps), ...lineageEnds(pictures, steps, of) };
}

interface Gathered {
  readonly of: string;
  readonly towards: Lineage['towards'];
  readonly isDepthAsked: boolean;
  readonly found: LineageOfWalk;
  readonly shape: Shape;
  readonly surroundings: Surroundings;
  readonly conventions: Conventions;
  readonly premises: Premises;
}

function answer({ of, towards, isDepthAsked, found, shape, surroundings, conventions, premises }: Gathered): Lineage {
  const { members, steps, comparesRegions, cut } = found;
  const { basis } = premises;
  const linked = { records: [...surroundings.records.values()], claims: surroundings.claims };
  const onTheWay = leastOnTheWay(surroundings, conventions, basis);
  const network = datesNetworkOf(linked, { conventions, basis, leastOnTheWay: onTheWay });
  const dates = solveDates(network, caseLimits(conventions));
  const links = handednessLinksOf(linked, basis);
  const handedness = handednessFrom(of, links);
  const daysOf = daysIn(dates);
  const appearances = appearancesIn(surroundings, daysOf, basis);
  const { circles, earliest, latest } = shape;
  return {
    of,
    towards,
    nodes: members.map(({ record: { id }, depth, inPart, regionUnknown }: LineageMember): LineageNode => {
      const { linked: made, recorded, contradictory: datesContradict } = daysOf(id, 'made');
      return {
        record: id,
        depth,
        ...{ made, recorded, datesContradict },
        handedness: handedness.get(id) ?? 'UNKNOWN',
        ...{ inPart, regionUnknown },
        appearances: appearances.get(id) ?? [],
      };
    }),
    steps: steps.map(({ kind, by, copy, source }) => ({ kind, by, copy, source })),
    ...{ earliest, latest },
    contradictions: contradictionsIn(circles, dates, relateHandedness(links).contradictions),
    missingLinks: missingLinks(found.claims.filter(isCopying), { ...whereabouts(surroundings), basis }),
    cut,
    grounds: linkedGrounds(
      [
        ...found.claims.map(claim => claim.id),
        ...[...appearances.values()].flatMap(listed => listed.map(({ claim }) => claim)),
      ],
      ['limit.lineage', ...(isDepthAsked ? [] : ['limit.depth']), ...(comparesRegions ? ['part.overlap'] : [])],
      { network, dates, conventions, premises },
    ),
    rows: [...linked.records, ...linked.claims],
  };
}

/** Publications that each plate is in, as claims that count say. */
function appearancesIn(
  { claims }: Surroundings,
  daysOf: DaysOf,
  basis: Basis,
): ReadonlyMap<string, readonly LineageAppearance[]> {
  const present = claims.filter(
    (claim): claim is ClaimOf<'Appearance'> =>
      claim.kind === 'Appearance' && claim.presence === 'PRESENT' && counts(claim, basis),
  );
  const byPlate = Map.groupBy(present, claim => claim.plate);
  return new Map(
    [...byPlate].map(([plate, of]) => {
      const listed = of.map(({ id, edition }) => ({
        claim: id,
        edition,
        published: daysOf(edition, 'published').linked,
      }));
      return [plate, listed.sort(byDayAndId)];
    }),
  );
}

function byDayAndId(a: LineageAppearance, b: LineageAppearance): number {
  const [x, y] = [a.published.lo ?? Infinity, b.published.lo ?? Infinity];
  return x === y ? (a.edition + a.claim < b.edition + b.claim ? -1 : 1) : x - y;
}

function whereabouts({ records, claims }: Surroundings): Parameters<typeof missingLinks>[1] {
  return {
    records,
    appearances: claims.filter((claim): claim is ClaimOf<'Appearance'> => claim.kind === 'Appearance'),
    printings: claims.filter((claim): claim is ClaimOf<'PrintedFrom'> => claim.kind === 'PrintedFrom'),
  };
}

function isCopying(claim: AnyClaim): claim is ClaimOf<'Copying'> {
  return claim.kind === 'Copying';
}
