import type { ClaimOf } from '../../domain/model/row.ts';

export type ImprintRole = ClaimOf<'Imprint'>['role'];

/** Words that say which part the names after them took. */
export interface ImprintMarker {
  readonly words: RegExp;
  readonly roles: readonly ImprintRole[];
  /** The words belong to the name of the house: `Imprenta de Juan Oliveres`. */
  readonly ofName?: true;
}

export const PUBLISHER = ['PUBLISHER'] as const;
export const PRINTER = ['PRINTER'] as const;
const BOOKSELLER = ['BOOKSELLER'] as const;

/**
 * Common practice of reading imprints in English, French, German, Dutch, Scandinavian, Spanish, Portuguese, Italian and
 * Latin. Longer forms stand before the shorter ones that they contain.
 */
export const imprintMarkers: readonly ImprintMarker[] = [
  { words: /\bprinted,? (?:and|&) sold by/, roles: ['PRINTER', 'BOOKSELLER'] },
  {
    words: /\bprinted,? (?:and|&) published (?:by|for)|\bpublished (?:and|&) printed by/,
    roles: ['PRINTER', 'PUBLISHER'],
  },
  { words: /\b(?:printed for|published),? (?:and|&) sold by/, roles: ['PUBLISHER', 'BOOKSELLER'] },
  { words: /\b(?:re-?|im)?printed for|\bpublish(?:ed|'d)(?: for)?(?: by)?\b|\bpubd\.? by/, roles: PUBLISHER },
  { words: /\b(?:re-?|im)?printed (?:by|at)(?: the)?\b|\bprint'd by|\btypographed by/, roles: PRINTER },
  {
    words: /\b(?:and |to be )?sold (?:also )?(?:wholesale )?(?:by|at)\b|\bto be had (?:of|at)\b|\balso by\b/,
    roles: BOOKSELLER,
  },
  { words: /\bdistributed by|\bin [ck]ommission (?:bei|der)\b|\bin comm\. (?:bei|der)\b/, roles: ['DISTRIBUTOR'] },
  {
    words: /\b(?:et )?(?:se vend(?:ent)?|se trouve(?:nt)?|en vente)\b(?: à [\p{L} ]{2,30}?)?,? chez/u,
    roles: BOOKSELLER,
  },
  { words: /\bimprim[ée]+e?s? (?:par|chez)/, roles: PRINTER },
  { words: /\b(?:de l')?(?:imprimerie|impr\.|imp\.|typographie|typ\.) (?=\p{L})/u, roles: PRINTER, ofName: true },
  { words: /\bchez\b|\baux d[ée]pens d[e'’u]/, roles: PUBLISHER },
  { words: /\bgedruckt (?:u\.|und) (?:verlegt|zu finden) (?:bei|bey|von)/, roles: ['PRINTER', 'PUBLISHER'] },
  { words: /\bdruck (?:u\.|und|&) verlag (?:von|der|des)\b/, roles: ['PRINTER', 'PUBLISHER'] },
  {
    words: /\bgedruckt (?:bei|bey|durch|von|mit)\b|\bdruck (?:von|der|bei)\b|\bgedrukt (?:bij|by|door)\b/,
    roles: PRINTER,
  },
  {
    words: /\bzu finden (?:bei|bey|in)\b|\bzu haben (?:bei|bey|in)\b|\bte (?:koop|bekomen) (?:bij|by)\b/,
    roles: BOOKSELLER,
  },
  { words: /\bverlag von\b|^im verlag (?:bei|der)\b|^(?:bei|bey|bij|by)\b/, roles: PUBLISHER },
  { words: /\btryckt (?:hos|af|i)\b|\btrykt (?:hos|i|af)\b/, roles: PRINTER },
  { words: /\b(?:impreso|impresso|stampato) (?:por|per|na|en|da)\b/, roles: PRINTER },
  {
    words: /\b(?:imprenta|imprensa|tip(?:ograf[ií]a)?\.?|stamperia|nella stamperia|typographia|officina) (?=\p{L})/u,
    roles: PRINTER,
    ofName: true,
  },
  { words: /\bprostat(?:que|que venale|\s+venale)? apud\b|\bvenit apud\b/, roles: BOOKSELLER },
  { words: /\btypis\b|\bex officina\b|\bin officina\b|\bex typographia\b|\bexcudebat\b/, roles: PRINTER },
  { words: /\bapud\b|\b(?:impensis|sumptibus|sumtibus|sumptu)\b/, roles: PUBLISHER },
];
