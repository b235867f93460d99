import type { ReachAsked } from '../../../src/questions/questions.ts';
import type { Values } from '../../../src/store/neo4j/connection.ts';
import type { GraphqlAnswer, GraphqlClient } from '../graphql-client.ts';
import { type Asked, overHttp, reachQuestions, searchQuestions } from '../questions.ts';
import { bareCypher } from './bare-cypher.ts';
import { type BareDriver, searchValues } from './bare-driver.ts';
import { topOfLattice } from './lattice.ts';
import {
  latticeOfLayer,
  lineageByIdsOfLayer,
  lineageOfLayer,
  pictureAlone,
  recordPageOfLayer,
} from './layer-questions.ts';
import { books, headsOfFamilies, latticeAsked, lineageAsked, picturesAsked, recordPageAsked } from './our-questions.ts';

/**
 * Who is asked: our API on Neo4j, the driver alone, the general-purpose layer, the same for less (the ids of copyings alone,
 * over the derived relationship), and our API on a file.
 */
export const sideNames = ['ours', 'driver', 'layer', 'light', 'file'] as const;
export type SideName = (typeof sideNames)[number];

/** One question to all who can be asked it, the same about the same at each turn. */
export interface Question {
  readonly name: string;
  /** Turns in a round. */
  readonly turns: number;
  /** Kinds of records, as ids begin, of which each side must find the same; absent: only that it finds some. */
  readonly same?: string;
  /** Column of what the driver answers that names what it found; the whole row if absent. */
  readonly column?: number;
  readonly ask: Partial<Record<SideName, (turn: number) => Promise<unknown>>>;
}

export interface Clients {
  readonly ours: GraphqlClient;
  readonly file: GraphqlClient;
  readonly layer: GraphqlClient;
  readonly driver: BareDriver;
}

/** All must find the same pictures; the driver names them first. */
const pictures = { same: 'artwork|plate|motif', column: 0 } as const;

/** Questions that are made before, and asked in turn. */
const made = 60;

export async function questionsOf(editions: number, clients: Clients): Promise<readonly Question[]> {
  const [heads, pages] = [listOf(headsOfFamilies(editions)), listOf(books(editions))];
  return [
    { name: 'hello', turns: 6, ask: overBoth(clients, () => ({ query: '{__typename}' })) },
    lineageQuestion(clients, heads, 8),
    lineageQuestion(clients, heads, 2),
    picturesQuestion(clients, heads, 8),
    {
      name: 'record page',
      turns: 4,
      same: 'appearance|plate|copying',
      ask: {
        ...overBoth(clients, turn => recordPageAsked(at(pages, turn))),
        driver: turn => clients.driver.ask(bareCypher.recordPage, { id: at(pages, turn) }),
        layer: turn => answer(clients.layer, recordPageOfLayer(at(pages, turn))),
      },
    },
    await reachQuestion(clients),
    searchQuestion(clients),
    latticeQuestion(clients, 8),
    latticeQuestion(clients, 30),
  ];
}

function lineageQuestion(clients: Clients, heads: readonly string[], depth: number): Question {
  return {
    name: `lineage, depth ${depth}`,
    turns: 4,
    ...pictures,
    ask: {
      ...overBoth(clients, turn => lineageAsked(at(heads, turn), depth)),
      driver: turn => clients.driver.ask(bareCypher.lineage(depth), { id: at(heads, turn) }),
      layer: turn => answer(clients.layer, lineageOfLayer(at(heads, turn), depth)),
      light: turn => answer(clients.layer, lineageByIdsOfLayer(at(heads, turn), depth)),
    },
  };
}

function picturesQuestion(clients: Clients, heads: readonly string[], depth: number): Question {
  return {
    name: `lineage, depth ${depth}, without dates`,
    turns: 4,
    ...pictures,
    ask: {
      ...overBoth(clients, turn => picturesAsked(at(heads, turn), depth)),
      driver: turn => clients.driver.ask(bareCypher.pictures(depth), { id: at(heads, turn) }),
      layer: turn => answer(clients.layer, lineageOfLayer(at(heads, turn), depth, pictureAlone)),
      light: turn => answer(clients.layer, lineageByIdsOfLayer(at(heads, turn), depth, pictureAlone)),
    },
  };
}

async function reachQuestion(clients: Clients): Promise<Question> {
  const asked: readonly ReachAsked[] = listOf(reachQuestions());
  const windows: readonly Values[] = await clients.driver.windowsOf(asked);
  return {
    name: 'reach, first 50 with counts',
    turns: 4,
    ask: {
      ...overBoth(clients, turn => overHttp(at(asked, turn))),
      driver: turn => clients.driver.ask(bareCypher.reach, at(windows, turn)),
    },
  };
}

function searchQuestion(clients: Clients): Question {
  const asked: readonly Asked[] = listOf(searchQuestions());
  return {
    name: 'search, first 25',
    turns: 5,
    ask: {
      ...overBoth(clients, turn => at(asked, turn)),
      driver: turn =>
        clients.driver.ask(bareCypher.search, searchValues(String(at(asked, turn).variables!['text']), 25)),
    },
  };
}

/** The layer follows every way: its answer takes megabytes where there are 3^8, and cannot be had where there are 3^30. */
function latticeQuestion(clients: Clients, layers: number): Question {
  return {
    name: `lattice of ${layers} layers of 3`,
    turns: 2,
    ...pictures,
    ask: {
      ...overBoth(clients, () => latticeAsked(layers)),
      driver: () => clients.driver.ask(bareCypher.lattice(layers), { id: topOfLattice(layers) }),
      ...(layers > 8 ? {} : { layer: () => answer(clients.layer, latticeOfLayer(layers)) }),
    },
  };
}

function overBoth({ ours, file }: Clients, next: (turn: number) => Asked): Pick<Question['ask'], 'ours' | 'file'> {
  return { ours: turn => answer(ours, next(turn)), file: turn => answer(file, next(turn)) };
}

async function answer(client: GraphqlClient, { query, variables }: Asked): Promise<GraphqlAnswer> {
  const found = await client.ask(query, variables);
  if (found.errors !== undefined) throw new Error(`expected an answer, came ${JSON.stringify(found.errors)}: ${query}`);
  return found;
}

function listOf<T>(next: () => T): readonly T[] {
  return Array.from({ length: made }, next);
}

function at<T>(list: readonly T[], turn: number): T {
  return list[turn % list.length]!;
}
