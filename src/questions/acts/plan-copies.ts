import type { Given } from '../../domain/acts/act.ts';
import type { copies } from '../../domain/acts/copies.ts';
import { kindOfId } from '../../domain/model/id.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import { howCopied, type Planned, saidOf } from './act-parts.ts';
import type { Draft } from './draft.ts';
import { chosen, type InSet, pick, platesIn } from './plates-in.ts';
import { refusal } from './refusal.ts';

type GivenCopies = Given<typeof copies.fields>;
type GivenPair = NonNullable<GivenCopies['pairs']>[number];

export async function planCopies(given: GivenCopies, draft: Draft): Promise<Planned> {
  const all = await setOf(draft.store, given.edition, given.copies, ['edition', 'copies']);
  const sources = await setOf(draft.store, given.from, given.sources, ['from', 'sources']);
  const except = chosen(all, given.except, 'except');
  const only = given.only === undefined ? new Set(all) : chosen(all, given.only, 'only');
  const taken = all.filter(copy => only.has(copy) && !except.has(copy));
  if (taken.length === 0)
    throw refusal('except', `expected at least one copy that is left, came all ${all.length} of them`);
  const pairs = pairsSaid(taken, sources, given);
  await refuseMissing(draft.store, pairs);
  const pairOf = pairing(all, sources, given);
  const copyings = taken.map(copy => {
    const { source = pairOf(copy)?.id, ...said } = pairs.get(copy) ?? {};
    if (source === undefined) throw withoutSource(copy);
    if (source === copy.id) throw refusal('sources', `expected another picture than the copy, came "${source}"`);
    return { copy: copy.id, source, ...howCopied(given), ...said };
  });
  const used = new Set(copyings.map(({ source }) => source));
  return {
    copyings: await draft.claims('Copying', copyings, saidOf(given)),
    notCopied: sources.flatMap(({ id }) => (used.has(id) ? [] : [id])),
  };
}

/** Plates of an edition, or the pictures of a list: one of the two is given. */
async function setOf(
  store: GraphStore,
  edition: string | undefined,
  list: readonly string[] | undefined,
  [name, listName]: readonly [string, string],
): Promise<readonly InSet[]> {
  if (edition !== undefined && list !== undefined)
    throw refusal(listName, `expected ${name} or ${listName}, came both`);
  if (edition === undefined) {
    const twice = list!.find((id, i) => list!.indexOf(id) !== i);
    if (twice !== undefined) throw refusal(listName, `expected each picture once, came "${twice}" twice`);
    return list!.map(id => ({ id }));
  }
  const plates = await platesIn(store, edition);
  if (plates.length > 0) return plates;
  throw refusal(name, `expected an edition whose plates are recorded, came "${edition}", which has none`);
}

async function refuseMissing(store: GraphStore, pairs: Pairs): Promise<void> {
  const named = [...pairs.values()].map(({ source }) => source).filter(id => id !== undefined);
  const rows = await store.rows(named);
  const missing = named.find((_, i) => rows[i] === undefined);
  if (missing !== undefined) throw refusal('pairs', `expected the id of what is there, came "${missing}"`, 'NOT_FOUND');
}

type Pairs = ReadonlyMap<InSet, Omit<GivenPair, 'copy'>>;

/** What is said of single copies, with the id of the source where one is named. */
function pairsSaid(taken: readonly InSet[], sources: readonly InSet[], { pairs = [] }: GivenCopies): Pairs {
  const said = new Map<InSet, Omit<GivenPair, 'copy'>>();
  for (const [i, { copy: word, source, ...how }] of pairs.entries()) {
    const copy = pick(taken, word, `pairs[${i}].copy`);
    if (said.has(copy)) throw refusal(`pairs[${i}].copy`, `expected each copy once, came "${word}" twice`);
    said.set(copy, source === undefined ? how : { ...how, source: sourceNamed(sources, source, i) });
  }
  return said;
}

/** A source may be a picture that is in neither set. */
function sourceNamed(sources: readonly InSet[], word: string, i: number): string {
  const same = sources.some(({ id, number }) => id === word || number === word);
  return !same && kindOfId(word) !== undefined ? word : pick(sources, word, `pairs[${i}].source`).id;
}

/** The source that stands in the place of a copy; undefined if none does. */
function pairing(
  all: readonly InSet[],
  sources: readonly InSet[],
  { pairing: how, edition, from, except, only }: GivenCopies,
): (copy: InSet) => InSet | undefined {
  const isNumbered = edition !== undefined && from !== undefined;
  if ((how ?? (isNumbered ? 'BY_NUMBER' : 'BY_ORDER')) === 'BY_ORDER') {
    if (all.length !== sources.length && except === undefined && only === undefined)
      throw refusal('pairing', `expected as many sources as copies, ${all.length}, came ${sources.length}`);
    return copy => sources[all.indexOf(copy)];
  }
  if (!isNumbered) throw refusal('pairing', 'expected two editions to pair their plates by number, came a list');
  return ({ number }) => {
    const same = number === undefined ? [] : sources.filter(source => source.number === number);
    if (same.length < 2) return same[0];
    const ids = same.map(({ id }) => id).join(' and ');
    throw refusal('pairs', `expected one source for number ${number}, came ${ids}: say in pairs which`);
  };
}

function withoutSource({ id, number }: InSet): Error {
  const copy = number === undefined ? id : `number ${number}, ${id}`;
  return refusal(
    'except',
    `expected a source for each copy, came none for ${copy}: except it, or name its source in pairs`,
  );
}
