import type { Conventions } from '../domain/conventions/conventions.ts';
import { dateRules } from '../domain/descent/date-rules.ts';
import { datesNetworkOf } from '../domain/descent/dates-network-of.ts';
import { handednessLinksOf } from '../domain/descent/handedness-links-of.ts';
import { lineageCircles } from '../domain/descent/lineage-circles.ts';
import { lineageGraph } from '../domain/descent/lineage-graph.ts';
import { relateHandedness } from '../domain/descent/relate-handedness.ts';
import { caseLimits, solveDates } from '../domain/descent/solve-dates.ts';
import { claimStepNames } from '../domain/descent/walk-steps.ts';
import { counts, defaultBasis } from '../domain/model/counted.ts';
import { kindOfId } from '../domain/model/id.ts';
import { isRecordKind, type KindName } from '../domain/model/kinds.ts';
import { linkKinds, linksOfKind } from '../domain/model/links.ts';
import type { AnyClaim, AnyRow } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, Via, Walk } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { FoundRows } from './found-rows.ts';
import type { Contradiction } from './lineage-answer.ts';
import { contradictionsIn } from './lineage-dates.ts';
import { aroundPictures, lineageSurroundings } from './lineage-surroundings.ts';
import { leastOnTheWay } from './lineage-ways.ts';

/** Rows about which contradictions are looked for where many are written: of more nobody reads them. */
export const mostLookedAt = 500;

/**
 * Contradictions of circles, dates and handedness in which some rows take part, as the claims stand now under the default
 * basis: those that can be seen from what the rows name, over all that was copied from or printed from it, and two steps
 * around what dates it. Undefined where the store could not be asked for all of it in its time.
 */
export async function problemsOf(
  store: GraphStore,
  rows: readonly AnyRow[],
): Promise<readonly Contradiction[] | undefined> {
  try {
    return await contradictionsAround(store, rows);
  } catch (error) {
    // What was written is written: trouble of the store in looking around it must not say that it was not.
    if (error instanceof PlatestemmaError && error.code.startsWith('STORE_')) return undefined;
    throw error;
  }
}

async function contradictionsAround(store: GraphStore, rows: readonly AnyRow[]): Promise<readonly Contradiction[]> {
  const said = rows.filter(row => tellsOf.has(row.kind) && (isRecordKind(row.kind) || counts(row as AnyClaim)));
  if (said.length === 0) return [];
  const subjects = [...new Set(said.flatMap(row => [row.id, ...linkedIds(row)]))].filter(id => isSubject(id));
  const conventions = await conventionsInForce(store);
  const [walked, near] = await Promise.all([walkFrom(store, subjects, conventions), around(store, subjects)]);
  const { records, claims, around: rounds = [] } = walked;
  const all = [...records, ...claims, ...rounds.flat()];
  const surroundings = await lineageSurroundings(store, records, claims, all, defaultBasis);
  const known = new FoundRows([...near, ...surroundings.records.values(), ...surroundings.claims, ...rows]);
  const linked = { records: known.records(), claims: known.claims() };
  const onTheWay = leastOnTheWay(surroundings, conventions, defaultBasis);
  const network = datesNetworkOf(linked, { conventions, basis: defaultBasis, leastOnTheWay: onTheWay });
  const contradictions = contradictionsIn(
    lineageCircles(lineageGraph(records, claims).steps),
    solveDates(network, caseLimits(conventions)),
    relateHandedness(handednessLinksOf(linked, defaultBasis)).contradictions,
  );
  const written = new Set(rows.map(({ id }) => id));
  return contradictions.filter(({ involved }) => involved.some(id => written.has(id)));
}

/** Kinds that say something of dates, of handedness or of what follows what. */
const tellsOf: ReadonlySet<KindName> = new Set<KindName>([
  ...dateRules.map(rule => rule.of),
  ...claimStepNames,
  'Detail',
  'Comparison',
]);

/** What many rows name without being linked in time by it. */
const shared: ReadonlySet<KindName | undefined> = new Set<KindName>(['Place', 'Work', 'Reference', 'Convention']);

function isSubject(id: string): boolean {
  return !shared.has(kindOfId(id));
}

const datesOf: readonly Via[] = linkKinds.filter(({ kind, to }) => tellsOf.has(kind) && !to.every(isShared));

function isShared(kind: string): boolean {
  return shared.has(kind as KindName);
}

async function walkFrom(store: GraphStore, from: readonly string[], conventions: Conventions): Promise<Walk> {
  return store.walk({
    from,
    steps: [...claimStepNames, 'Detail'],
    direction: 'BOTH',
    depth: conventions.get('limit.depth'),
    limit: conventions.get('limit.lineage'),
    around: aroundPictures,
  });
}

/** What names some records, what that names, and the same of those. */
async function around(store: GraphStore, subjects: readonly string[]): Promise<readonly AnyRow[]> {
  const found = new FoundRows([]);
  let ids = subjects;
  for (let step = 0; step < 2 && ids.length > 0; step++) {
    const { own, rounds } = await store.surroundings(ids, { rounds: [datesOf] });
    const come = rounds.flat();
    found.take(come);
    const named = new Set([...own, ...come].flatMap(linkedIds));
    ids = come.flatMap(({ id }) => (isSubject(id) && named.has(id) ? [id] : []));
  }
  return found.rows();
}

function linkedIds(row: AnyRow): readonly string[] {
  const values = row as unknown as Readonly<Record<string, string | undefined>>;
  return linksOfKind(row.kind).flatMap(({ name }) => values[name] ?? []);
}
