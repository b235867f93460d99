import { datesNetworkOf } from '../domain/descent/dates-network-of.ts';
import { type EditionInOrder, editionsInOrder } from '../domain/descent/editions-in-order.ts';
import { type PlateClaims, platesOfEditions } from '../domain/descent/editions-plates.ts';
import { lineageCircles } from '../domain/descent/lineage-circles.ts';
import { lineageGraph } from '../domain/descent/lineage-graph.ts';
import { caseLimits, solveDates } from '../domain/descent/solve-dates.ts';
import { deepestWalk } from '../domain/descent/walk-steps.ts';
import { type Basis, counts } from '../domain/model/counted.ts';
import type { ClaimKindName } from '../domain/model/kinds.ts';
import type { AnyClaim, ClaimOf, RecordOf } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import type { Descent, DescentEdition } from './descent-answer.ts';
import { type DescentFound, descentSurroundings } from './descent-surroundings.ts';
import { contradictionsIn, daysIn } from './lineage-dates.ts';
import { linkedGrounds } from './lineage-grounds.ts';
import { asRecorded, type Premises } from './premises.ts';
import { theRecord } from './the-record.ts';

/**
 * The editions of a work with all that they descend from and that descends from them, or those of one edition, in order
 * of descent; and of each plate whether it went along, was copied, or comes from the same printing surface.
 */
export async function descent(store: GraphStore, of: string, premises: Premises = asRecorded): Promise<Descent> {
  const { basis } = premises;
  const conventions = await conventionsInForce(store);
  const asked = await theRecord(store, of, ['Work', 'Edition']);
  const limit = conventions.get('limit.lineage');
  const ofWork = asked.kind === 'Work' ? await editionsOf(store, of) : [of];
  const walk = await store.walk({
    from: ofWork.slice(0, limit),
    steps: ['EditionDescent'],
    direction: 'BOTH',
    depth: deepestWalk,
    limit,
    basis,
  });
  const editions = walk.records as readonly RecordOf<'Edition'>[];
  const descents = ofKind(walk.claims, 'EditionDescent');
  const found = await descentSurroundings(store, editions, descents, basis);
  const network = datesNetworkOf(found, { conventions, basis });
  const dates = solveDates(network, caseLimits(conventions));
  const daysOf = daysIn(dates);
  const order = editionsInOrder(
    editions.map(edition => edition.id),
    descents,
    id => daysOf(id, 'published').linked.lo,
  );
  const plates = platesOfEditions(
    order.map(({ id }) => id),
    plateClaims(found, descents, basis),
  );
  const listed = order.map(({ id, depth }: EditionInOrder): DescentEdition => {
    const { linked: published, recorded, contradictory: datesContradict } = daysOf(id, 'published');
    return { edition: id, depth, published, recorded, datesContradict, plates: plates.get(id) ?? [] };
  });
  const ownClaims = listed.flatMap(edition => edition.plates.flatMap(({ by }) => by));
  return {
    of,
    editions: listed,
    steps: descents.map(claim => claim.id),
    contradictions: contradictionsIn(lineageCircles(lineageGraph(editions, descents).steps), dates),
    cut: walk.cut || ofWork.length > limit,
    grounds: linkedGrounds([...descents.map(claim => claim.id), ...ownClaims], ['limit.lineage'], {
      network,
      dates,
      conventions,
      premises,
    }),
    rows: [asked, ...found.records, ...found.claims],
  };
}

async function editionsOf(store: GraphStore, work: string): Promise<readonly string[]> {
  const [editions] = await store.linked([work], [{ kind: 'Edition', name: 'work' }]);
  return (editions ?? []).map(edition => edition.id);
}

function plateClaims(
  { claims }: DescentFound,
  descents: readonly ClaimOf<'EditionDescent'>[],
  basis: Basis,
): PlateClaims {
  const counted = claims.filter(claim => counts(claim, basis));
  return {
    descents,
    appearances: ofKind(counted, 'Appearance'),
    printings: ofKind(counted, 'PrintedFrom'),
    castings: ofKind(counted, 'Casting'),
    copyings: ofKind(counted, 'Copying'),
  };
}

function ofKind<K extends ClaimKindName>(claims: readonly AnyClaim[], kind: K): readonly ClaimOf<K>[] {
  return claims.filter((claim): claim is AnyClaim & ClaimOf<K> => claim.kind === kind);
}
