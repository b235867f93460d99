import { conventionId } from '../../src/domain/conventions/convention-use.ts';
import type { Certainty } from '../../src/domain/model/counted.ts';
import { type KindName, type RecordKindName, recordKindNames } from '../../src/domain/model/kinds.ts';
import type { AnyClaim, AnyRow, ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import type { AskedQuestions, ReachAsked, ReachPosition } from '../../src/questions/questions.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { type Dice, randomDate, randomEdition, randomEditions, randomPlaces } from './random-graph.ts';
import { type RandomLinks, randomRow } from './random-rows.ts';
import { testWorld } from './test-world.ts';

/** How many records of each kind there are, beside works, editions and places. */
const several: Partial<Record<KindName, number>> = { Plate: 5, Motif: 2, Matrix: 2, Detail: 2, Piece: 2, Agent: 2 };
const own: readonly RecordKindName[] = ['Work', 'Edition', 'Place', 'Convention'];
const records: ReadonlyMap<KindName, number> = new Map(
  recordKindNames
    .filter(kind => !own.includes(kind))
    .map(kind => [kind, several[kind] ?? (kind === 'Alternatives' ? 3 : kind === 'Reference' ? 2 : 1)]),
);

/** Claims that say something of these, the commonest more often. */
const claims: readonly KindName[] = [
  ...(['Copying', 'Copying', 'Copying', 'PrintedFrom', 'PrintedFrom', 'Casting', 'EditionDescent'] as const),
  ...(['EditionDescent', 'Appearance', 'Appearance', 'Dating', 'Dating', 'Dating', 'Imprint', 'Imprint'] as const),
  ...(['Sequence', 'Attribution', 'MadeAt', 'Stay', 'Stay', 'Access', 'Depiction', 'Depiction', 'Comparison'] as const),
  ...(['Follows', 'PartOf', 'Custody'] as const),
];

const editionCount = 5;
const works = ['work-of-one', 'work-of-two', 'work-of-three'];

/** Rows of a random world, which name only each other and `randomPlaces`. */
const links = (roll: Dice): RandomLinks => ({
  idOf: kind => {
    if (kind === 'Edition') return `edition-of-${roll.below(editionCount)}`;
    if (kind === 'Work') return roll.pick(works);
    if (kind === 'Place') return roll.pick(randomPlaces).id;
    const count = records.get(kind);
    if (count !== undefined) return `${kind.toLowerCase()}-any-${roll.below(count)}`;
    return kind === 'Convention' ? 'plate-any-0' : 'copying-any-0';
  },
});

const saidBy = ['Ada', 'Bo', undefined];
const rules = ['a year', 'of a list', undefined];
const subjects = ['25F3', '25F', '46C2'];

/** A claim of the world: any that is said of its records, dated and placed as those of `randomEditions` are. */
export function randomClaim(id: number | string, roll: Dice, kind: KindName = roll.pick(claims)): AnyClaim {
  const row = randomRow(kind, `${kind.toLowerCase()}-any-${id}`, links(roll), roll) as AnyClaim;
  const { standing: _s, withdrawnBecause: _w, stance: _t, certainty: _c, evidence: _e, ...said } = row;
  const by = roll.pick(saidBy);
  const rule = roll.pick(rules);
  const evidence = roll.chance(0.5) ? evidenceOf(roll) : undefined;
  return {
    ...said,
    ...(kind === 'Dating' ? { date: randomDate(roll), ...published(roll) } : {}),
    ...(kind === 'Depiction' ? { iconclass: roll.pick(subjects) } : {}),
    ...(roll.chance(0.1) ? { standing: 'WITHDRAWN' } : {}),
    ...(roll.chance(0.2) ? { stance: roll.pick(['WEIGHED', 'REJECTED']) } : {}),
    ...(roll.chance(0.4) ? { certainty: roll.pick(certainties) } : {}),
    ...(roll.chance(0.3) ? alternatives[kind] : {}),
    ...(evidence === undefined ? {} : { evidence }),
    ...(by === undefined ? {} : { by }),
    ...((kind === 'Dating' || kind === 'Imprint') && rule !== undefined ? { rule } : {}),
  } as AnyClaim;
}

/** Groups of alternatives, each of claims of one kind about one thing. */
const alternatives: Partial<Record<KindName, object>> = {
  Copying: { copy: 'plate-any-0', alternativeTo: 'alternatives-any-0' },
  Dating: { of: 'edition-of-0', event: 'PUBLISHED', alternativeTo: 'alternatives-any-1' },
  Stay: { who: 'agent-any-0', alternativeTo: 'alternatives-any-2' },
};

/** Half of all datings say when an edition came out. */
function published(roll: Dice): Partial<ClaimOf<'Dating'>> {
  return roll.chance(0.5) ? { of: `edition-of-${roll.below(editionCount)}`, event: 'PUBLISHED' } : {};
}

export const certainties: readonly Certainty[] = ['CERTAIN', 'PROBABLE', 'POSSIBLE', 'DOUBTFUL'];

function evidenceOf(roll: Dice): ClaimOf<'Copying'>['evidence'] {
  const cited = () => ({ reference: `reference-any-${roll.below(2)}` });
  return roll.pick([[cited()], [cited(), cited()], [cited(), { words: 'a letter' }], [{ note: 'seen' }]]);
}

/** A record of the world, by a name of its own. */
export function randomRecord(kind: KindName, name: string, roll: Dice): AnyRow {
  return randomRow(kind, `${kind.toLowerCase()}-${name}`, links(roll), roll);
}

/** The first rows: every record, and some claims. */
export function firstRows(roll: Dice): readonly AnyRow[] {
  const all = [...records].flatMap(([kind, count]) =>
    Array.from({ length: count }, (_, i) => randomRecord(kind, `any-${i}`, roll)),
  );
  const said = Array.from({ length: 4 + roll.below(30) }, (_, i) => randomClaim(i, roll));
  return distinct([
    ...randomPlaces,
    ...randomEditions(editionCount, roll),
    ...all,
    randomClaim(0, roll, 'Copying'),
    ...said,
  ]);
}

/** What is written next: claims and records anew or otherwise, and now and then a convention. */
export function nextRows(roll: Dice): readonly AnyRow[] {
  const said = Array.from({ length: 1 + roll.below(4) }, () => randomClaim(roll.below(40), roll));
  return distinct([
    ...(roll.chance(0.4) ? randomEdition(roll.below(editionCount), roll) : []),
    ...(roll.chance(0.2) ? [randomRecord(roll.pick(['Plate', 'Detail', 'Motif']), `any-${roll.below(2)}`, roll)] : []),
    ...(roll.chance(0.2) ? [randomConvention(roll)] : []),
    ...said,
  ]);
}

const conventions = {
  decoratedWithin: (roll: Dice) => 1 + roll.below(9),
  'limit.lineage': (roll: Dice) => 1 + roll.below(6),
  'limit.depth': (roll: Dice) => roll.below(3),
  'date.slack.year': (roll: Dice) => roll.below(9),
  imprintAhead: (roll: Dice) => 100 * roll.below(9),
  'route.of-chance': (roll: Dice) => {
    const [from, to] = ['enk', 'gw'].map(code => ({ name: code, codes: [code] }));
    return { from, to, bothWays: true, years: [null, null], least: roll.below(90), most: 90 + roll.below(900) };
  },
} as const;

/** One of those that answers rest on. */
export function randomConvention(roll: Dice): RecordOf<'Convention'> {
  const key = roll.pick(Object.keys(conventions) as readonly (keyof typeof conventions)[]);
  const value = conventions[key](roll);
  return { id: conventionId(key), kind: 'Convention', key, value, source: 'a tester', version: 2 + roll.below(9) };
}

/** Of rows of one id the last. */
export function distinct(rows: readonly AnyRow[]): readonly AnyRow[] {
  return [...new Map(rows.map(row => [row.id, row])).values()];
}

/** Writes changes one after the other, each as one change set. */
export async function writeAll(store: GraphStore, changes: readonly (readonly AnyRow[])[]): Promise<void> {
  const world = testWorld();
  for (const rows of changes) {
    const there = await store.rows(rows.map(({ id }) => id));
    const added = new Set(rows.filter((_, i) => there[i] === undefined).map(({ id }) => id));
    const changeSet = { moment: world.now(), who: 'a tester', why: 'chance' };
    await applyChanges(store, { rows, added, mayReturn: true, changeSet });
  }
}

export interface AnyQuestion {
  readonly says: string;
  ask(questions: AskedQuestions, store: GraphStore): Promise<unknown>;
}

/** Ids of pictures and surfaces of the world. */
export const pictures = ['plate-any-0', 'plate-any-1', 'motif-any-0', 'detail-any-0', 'matrix-any-0'];

/** Questions about lineages, descents and reach. @param more ids of pictures and editions that may not be there */
export function randomQuestions(count: number, roll: Dice, more: readonly string[] = []): readonly AnyQuestion[] {
  const asked = [...pictures, 'artwork-any-0', ...more];
  const editions = ['edition-of-0', 'edition-of-1', ...works, ...more.filter(id => id.startsWith('edition-'))];
  return Array.from({ length: count }, () => {
    const kind = roll.below(5);
    if (kind < 2) {
      const towards = roll.pick(['SOURCES', 'COPIES', 'BOTH'] as const);
      const depth = roll.pick([{}, {}, { depth: 0 }, { depth: 1 }, { depth: 2 }]);
      const of = roll.pick(asked.filter(id => !id.startsWith('edition-')));
      return told('lineage', { of, towards, ...depth }, (questions, asked) => questions.lineage(asked));
    }
    if (kind === 2) return told('descent', roll.pick(editions), (questions, of) => questions.descent(of));
    return told('reach', randomReach(roll), reachInPages);
  });
}

export function told<A>(
  name: string,
  asked: A,
  ask: (questions: AskedQuestions, asked: A, store: GraphStore) => Promise<unknown>,
): AnyQuestion {
  return { says: `${name} ${JSON.stringify(asked)}`, ask: (questions, store) => ask(questions, asked, store) };
}

function randomReach(roll: Dice): ReachAsked {
  const piece = roll.pick(['piece-any-0', 'piece-any-1', 'motif-any-0']);
  const at = roll.pick<ReachAsked['at']>([
    { place: roll.pick(randomPlaces.slice(0, 5)).id },
    { workshop: 'workshop-any-0' },
    { agent: 'agent-any-0' },
  ]);
  const whenAndWhere: Pick<ReachAsked, 'at' | 'by' | 'piece'> = roll.chance(0.7)
    ? { at: at!, by: randomDate(roll) }
    : { piece, ...(roll.chance(0.5) ? { at: at! } : {}) };
  const filter = roll.pick<ReachAsked['filter']>([
    undefined,
    undefined,
    { illustrated: roll.chance(0.5) },
    { form: 'ANNUAL' },
    { work: roll.pick(works) },
    { place: roll.pick(randomPlaces).id },
    { subject: roll.pick(subjects) },
    { subject: '25', place: 'place-of-london' },
  ]);
  return {
    ...whenAndWhere,
    ...(filter === undefined ? {} : { filter }),
    order: roll.pick(['ROOM', 'DATE', 'TITLE']),
    tallies: true,
    page: { first: 1 + roll.below(4) },
  };
}

/** All pages of a reach. */
async function reachInPages(questions: AskedQuestions, asked: ReachAsked): Promise<unknown> {
  const pages: unknown[] = [];
  for (let after: ReachPosition | undefined; ; ) {
    const page = await questions.reach({ ...asked, page: { ...asked.page, after } });
    pages.push(page);
    if (!page.rows.more) return pages;
    after = page.rows.items.at(-1)!.position;
  }
}

/** A graph that is asked. */
export interface AskedOf {
  readonly questions: AskedQuestions;
  readonly store: GraphStore;
}

/** The answer as text, or what was thrown; without what tells how the graph was taken. */
export async function answerText({ questions, store }: AskedOf, question: AnyQuestion): Promise<string> {
  try {
    return JSON.stringify(await question.ask(questions, store), withoutPremises);
  } catch (error) {
    const { code, message } = error as { readonly code?: string; readonly message: string };
    if (code === undefined || code === 'BROKEN_PROMISE') throw error;
    return `${code}: ${message}`;
  }
}

function withoutPremises(name: string, value: unknown): unknown {
  if (['since', 'until', 'premises', 'supposed', 'asOf'].includes(name)) return undefined;
  return name === 'flags' && Array.isArray(value) ? value.filter(flag => flag !== 'SUPPOSED') : value;
}
