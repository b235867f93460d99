import { seededRandom } from '../../support/seeded-random.ts';
import { headOfFamily } from '../../support/synthetic-pictures.ts';
import type { Asked } from '../questions.ts';
import { familiesFor } from './data.ts';
import { topOfLattice } from './lattice.ts';

/** A picture or edition that is asked about, ever another but the same in every run. */
type NextId = () => string;

const lineageDocument = `query ($of: ID!, $depth: Int) { lineage(of: $of, depth: $depth) {
  links {
    nodes {
      record { id label } depth handedness made { first last } recorded { first last }
      appearances { locator edition { id title } published { first last } }
    }
    steps { __typename ... on Copying { id handedness certainty copy { id } source { id } } }
  }
  contradictions { code message } cut
} }`;

/** Both ways: from the picture that all others of a family of 60 were copied from, six steps at most. */
export function lineageAsked(of: string, depth: number): Asked {
  return { query: lineageDocument, variables: { of, depth } };
}

const picturesDocument = `query ($of: ID!, $towards: Towards, $depth: Int) { lineage(of: $of, towards: $towards, depth: $depth) {
  links {
    nodes { record { id label } depth }
    steps { __typename ... on Copying { id handedness certainty copy { id } source { id } } }
  }
  cut
} }`;

/** The same without its dates. */
export function picturesAsked(of: string, depth: number): Asked {
  return { query: picturesDocument, variables: { of, depth } };
}

/** Down to the first layer: 3^n ways. */
export function latticeAsked(layers: number): Asked {
  return { query: picturesDocument, variables: { of: topOfLattice(layers), towards: 'SOURCES', depth: layers } };
}

/** An edition as a page shows it: work, imprints, datings, and its first plates with what each was copied from. */
export function recordPageAsked(id: string): Asked {
  return {
    query: `query ($id: ID!) { node(id: $id) { id ... on Edition {
      title imprint languages work { id label form }
      imprints: claims(kinds: [IMPRINT]) { nodes { id ... on Imprint { role place { id label } } } }
      datings: claims(kinds: [DATING]) { nodes { id ... on Dating { event date basis } } }
      plates: claims(kinds: [APPEARANCE], first: 20) { nodes { id ... on Appearance { presence number plate {
        id caption
        copyings: claims(kinds: [COPYING]) { nodes { id ... on Copying { handedness certainty copy { id } source { id label } } } }
      } } } } } } }`,
    variables: { id },
  };
}

export function headsOfFamilies(editions: number): NextId {
  const random = seededRandom(21);
  return () => headOfFamily(Math.floor(random() * familiesFor(editions)));
}

/** Pattern books with 16 prints, each after one or two of the levels above, and copied in turn. */
export function books(editions: number): NextId {
  const random = seededRandom(22);
  return () => `edition-pattern-book-${Math.floor(random() * familiesFor(editions))}-4-0`;
}
