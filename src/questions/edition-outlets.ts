import { type Basis, counts } from '../domain/model/counted.ts';
import type { AnyClaim } from '../domain/model/row.ts';

/** A place from which an edition may have come, by the id of its place. */
export interface OutletOf {
  readonly kind: 'PUBLISHER' | 'BOOKSELLER';
  readonly place: string;
  readonly claim?: string;
}

/**
 * Where an edition was brought out, as its counted imprints say: places of publishers and printers, and places at which
 * a bookseller of the imprint had it. Distributors are none, nor are places known to be false. None: not known.
 */
export function outletsOf(claims: readonly AnyClaim[], basis: Basis): readonly OutletOf[] {
  return claims.flatMap(claim => {
    if (claim.kind !== 'Imprint' || !counts(claim, basis) || claim.place === undefined) return [];
    if (claim.role === 'DISTRIBUTOR' || claim.fictitious === true) return [];
    return [
      { kind: claim.role === 'BOOKSELLER' ? 'BOOKSELLER' : 'PUBLISHER', place: claim.place, claim: claim.id } as const,
    ];
  });
}

/** Outlets as one word, the same for editions that came from the same places: the stores group by it. */
export function profileOf(outlets: readonly OutletOf[]): string {
  const words = outlets.map(({ kind, place }) => `${kind === 'PUBLISHER' ? 'P' : 'B'}:${place}`);
  return [...new Set(words)].sort().join(' ');
}

/** Outlets of a profile, without the claims. */
export function outletsOfProfile(profile: string): readonly OutletOf[] {
  if (profile === '') return [];
  return profile
    .split(' ')
    .map(word => ({ kind: word.startsWith('P:') ? 'PUBLISHER' : 'BOOKSELLER', place: word.slice(2) }));
}
