import type { Asked } from '../questions.ts';
import { topOfLattice } from './lattice.ts';

const dating = 'id event date basis';

/** What our lineage tells of a picture, as it is recorded: days are worked out by us alone. */
const picture = `id kind caption labels
  datings { ${dating} } pieces { id datings { ${dating} } }
  appearances { id presence number edition { id title datings { ${dating} } } }`;

/** A picture without its dates. */
export const pictureAlone = 'id kind caption labels';

/** Both ways, each level of the answer within the one before: this layer has no other way to follow a path. */
export function lineageOfLayer(of: string, depth: number, fields = picture): Asked {
  return {
    query: `query ($of: ID!) { pictures(where: { id: { eq: $of } }) { ${fields}
      ${nested('copiedFrom', 'source', fields, depth)} ${nested('copiedAs', 'copy', fields, depth)} } }`,
    variables: { of },
  };
}

/** The same pictures over the derived relationship, which says less of a copying: its id alone. */
export function lineageByIdsOfLayer(of: string, depth: number, fields = picture): Asked {
  return {
    query: `query ($of: ID!) { pictures(where: { id: { eq: $of } }) { ${fields}
      ${nestedIds('sources', fields, depth)} ${nestedIds('copies', fields, depth)} } }`,
    variables: { of },
  };
}

export function latticeOfLayer(layers: number): Asked {
  return {
    query: `query ($of: ID!) { pictures(where: { id: { eq: $of } }) { id caption ${nested('copiedFrom', 'source', 'id caption', layers)} } }`,
    variables: { of: topOfLattice(layers) },
  };
}

export function recordPageOfLayer(id: string): Asked {
  return {
    query: `query ($id: ID!) { editions(where: { id: { eq: $id } }) { id title imprint languages
      work { id labels form }
      imprints(sort: [{ id: ASC }]) { id role place { id labels } }
      datings(sort: [{ id: ASC }]) { ${dating} }
      appearances(limit: 20, sort: [{ id: ASC }]) { id presence number plate { id caption
        copiedFrom { id handedness certainty source { id caption labels } }
        copiedAs { id handedness certainty copy { id } } } } } }`,
    variables: { id },
  };
}

function nested(claims: string, other: string, fields: string, depth: number): string {
  if (depth === 0) return '';
  return `${claims} { id handedness certainty ${other} { ${fields} ${nested(claims, other, fields, depth - 1)} } }`;
}

function nestedIds(pictures: string, fields: string, depth: number): string {
  if (depth === 0) return '';
  return `${pictures}Connection { edges { properties { claim } node { ${fields} ${nestedIds(pictures, fields, depth - 1)} } } }`;
}
