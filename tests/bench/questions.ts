import type { ReachAsked } from '../../src/questions/questions.ts';
import type { EditionFilter } from '../../src/store/graph-store.ts';
import { seededRandom } from '../support/seeded-random.ts';

/** The questions of the benchmarks, ever others but the same in every run; about a store of synthetic editions. */
export interface Asked {
  readonly query: string;
  readonly variables?: Readonly<Record<string, unknown>>;
}

export const hello = (): Asked => ({ query: '{__typename}' });

export function nodeQuestions(editions: number): () => Asked {
  const random = seededRandom(2);
  return () => ({
    query: 'query ($id: ID!) { node(id: $id) { id ... on Edition { title work { id form } } } }',
    variables: { id: `edition-synthetic-${Math.floor(random() * editions)}` },
  });
}

export function historyQuestions(editions: number): () => Asked {
  const random = seededRandom(3);
  return () => ({
    query: 'query ($id: ID!) { history(of: $id) { nodes { what changeSet { number who } } } }',
    variables: { id: `edition-synthetic-${Math.floor(random() * editions)}` },
  });
}

const words = ['flowers of Saxony', 'ruins and trees', 'picturesque views', 'costumes of the Levant', 'rare shells br'];

export function searchQuestions(): () => Asked {
  let asked = 0;
  return () => ({
    query: 'query ($text: String!) { search(text: $text, first: 25) { cut edges { match node { id label } } } }',
    variables: { text: words[asked++ % words.length] },
  });
}

const towns = ['Meissen', 'London', 'Paris', 'Birmingham', 'Stockholm'];

/** The first 50 with counts. */
export function reachQuestions(): () => ReachAsked {
  const random = seededRandom(4);
  return () => ({
    at: { placeName: towns[Math.floor(random() * towns.length)]! },
    by: String(1720 + Math.floor(random() * 160)),
    page: { first: 50 },
  });
}

/** The first 50 with counts of those that pass a filter: large ones, and small ones of a work and of a subject. */
export function filteredQuestions(): () => ReachAsked {
  const next = reachQuestions();
  const filters: readonly EditionFilter[] = [
    { illustrated: true },
    { language: 'ita' },
    { form: 'ANNUAL', illustrated: true },
    { work: 'work-synthetic-0' },
    { subject: '25F3' },
  ];
  let asked = 0;
  return () => ({ ...next(), filter: filters[asked++ % filters.length]! });
}

export function overHttp({ at, by, page }: ReachAsked): Asked {
  return {
    query: `query ($at: WhoOrWhere, $by: EDTF, $first: Int) { reach(at: $at, by: $by, first: $first) {
      counts { inEveryCase inSomeCases inNoCase contradictory }
      editions { nodes { verdict margin { every some } edition { id title } } pageInfo { hasNextPage endCursor } } } }`,
    variables: { at, by, first: page.first },
  };
}
