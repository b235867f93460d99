import { type ImprintMarker, type ImprintRole, imprintMarkers, PRINTER, PUBLISHER } from './imprint-markers.ts';
import { tidy, withoutEndMarks, withoutFinalStop } from './text.ts';

/** One part that an imprint says was taken; without a name where it names nobody ("for the Author"). */
export interface ImprintPart {
  readonly role: ImprintRole;
  readonly name?: string;
}

/**
 * Reads the words of a publisher's subfield (MARC 260/264 $b): who published, printed and sold. Without words that say
 * otherwise a name is the publisher's. At least one part comes out of any text.
 */
export function imprintParts(text: string): ImprintPart[] {
  const plain = withoutEndMarks(tidy(text).replace(/[[\]]/g, ''));
  if (plain.length > longest) return [{ role: 'PUBLISHER', name: plain }];
  const parts: ImprintPart[] = [];
  let roles: readonly ImprintRole[] = ['PUBLISHER'];
  let from = 0;
  for (const { index, length, marker } of markersIn(plain)) {
    addNames(plain.slice(from, index), roles, from > 0, parts);
    roles = marker.roles;
    from = marker.ofName === true ? index : index + length;
  }
  addNames(plain.slice(from), roles, true, parts);
  return parts.length === 0 ? [{ role: roles[0]! }] : parts;
}

const longest = 1000;
const allMarkers = new RegExp(imprintMarkers.map(marker => `(${marker.words.source})`).join('|'), 'giu');
/** After "printed by A" a "for B", after "printed for B" a "by A", and "For B" at the start. */
const swap = /\b(for|by)\b(?= )/gi;

interface Found {
  readonly index: number;
  readonly length: number;
  readonly marker: ImprintMarker;
}

function markersIn(text: string): Found[] {
  const found: Found[] = [];
  for (const match of text.matchAll(allMarkers)) {
    const marker = imprintMarkers[match.slice(1).findIndex(group => group !== undefined)]!;
    const last = found.at(-1);
    // Words of a house's name ("Imprenta de la Librería") begin a name once, not again within it.
    if (marker.ofName === true && last !== undefined && last.index + last.length >= match.index - 12) continue;
    found.push({ index: match.index, length: match[0].length, marker });
  }
  if (/^for\b/i.test(text)) found.unshift({ index: 0, length: 3, marker: { words: swap, roles: PUBLISHER } });
  return found.flatMap((one, i) => withSwap(text, one, found[i + 1]?.index ?? text.length));
}

function withSwap(text: string, found: Found, end: number): Found[] {
  const role = found.marker.roles.length === 1 ? found.marker.roles[0] : undefined;
  if (role !== 'PRINTER' && role !== 'PUBLISHER') return [found];
  const start = found.index + found.length;
  for (const match of text.slice(start, end).matchAll(swap)) {
    const other = match[1]!.toLowerCase() === 'for' ? PUBLISHER : PRINTER;
    if (other[0] === role || match.index === 0) continue;
    return [found, { index: start + match.index, length: match[0].length, marker: { words: swap, roles: other } }];
  }
  return [found];
}

const trade: readonly (readonly [RegExp, ImprintRole])[] = [
  [
    /, ?(?:steam |general )?(?:printers?|impr(?:imeur)?s?\.?|drucker|buchdrucker|boktryckare|bogtrykker|impresor|tipografo)(?=,|$)/iu,
    'PRINTER',
  ],
  [/, ?(?:booksellers?|libraires?|buchh[äa]ndler|sortiment)(?=,|$)/iu, 'BOOKSELLER'],
  [/, ?(?:publishers?|[ée]diteurs?|verleger|editores?)(?=,|$)/iu, 'PUBLISHER'],
];

function addNames(text: string, roles: readonly ImprintRole[], nobodyCounts: boolean, parts: ImprintPart[]): void {
  for (const piece of text.split(/;|&c\.?(?=$|[,;])/)) {
    const [name, ownRole] = nameOf(piece);
    if (name === '') continue;
    const said = ownRole === undefined ? roles : [ownRole];
    if (nobody.test(name)) {
      if (nobodyCounts) for (const role of said) parts.push({ role });
    } else for (const role of said) parts.push({ role, name });
  }
}

/** Words that stand where a name would but name nobody who could be found again. */
const nobody =
  /^(?:(?:the|l'|le|la|el|los|der|dem|den|die|des|o|os|gli|de) ?)?(?:authors?|editors?|proprietors?|booksellers?|class|society|publishers?|translators?|compilers?|subscribers?|union|family|members?|trade|auteurs?|autor|verfassers?|herausgebers?|selbstverlag(?: des (?:verfassers|herausgebers))?|autore)$|^(?:for )?(?:private|gratuitous) (?:circulation|distribution|use)(?: only)?$|^privately(?: printed)?$|^private(?:ly)? print(?:ed|ing)$|^printed$|^s\. ?n\.?$|^(?:publisher|printer|distributor|manufacturer)s? not identified$|^all (?:the )?(?:other )?booksellers.*$|^(?:by )?the booksellers.*$|^\.*$|^ohne verlag$|^o\. ?v\.?$/iu;

const omission = /\s*\.\.\.+|…/g;
const leading =
  /^(?:(?:[:,.&]|(?:and|et|und|also)\b|(?:en la|en|na|nella|in der|aus der|de|(?:de |à )?l')$|(?:de |à )?l'(?=imp))\s*)+/iu;
const trailing = /[\s,:]+(?:and|et|und|&)?$/iu;
const others = /,? (?:etc|and others|et al|u\. ?a|(?:and )?(?:by )?all (?:the )?(?:other )?booksellers.*)\.?$/iu;
const endPoints = /[\s,:;/]+$/;

function nameOf(piece: string): [name: string, role: ImprintRole | undefined] {
  let name = piece.replace(omission, '').trim().replace(leading, '').replace(trailing, '');
  name = name.replace(others, '').replace(endPoints, '');
  if (nobody.test(name)) return [name, undefined];
  for (const [words, role] of trade) {
    if (words.test(name)) return [withoutFinalStop(name.replace(words, '').trim()), role];
  }
  return [withoutFinalStop(name), undefined];
}
