import { type ImprintPlaceText, readImprintPlaces } from '../../domain/conventions/imprint-place-text.ts';
import { withoutFinalStop } from './text.ts';
import { leadingExtent, trailingDate } from './unstructured-imprint-ends.ts';

/** An imprint that a record gives as one string, taken apart. Words are as printed, without the marks between parts. */
export interface UnstructuredImprint {
  readonly extent?: string;
  /** In the order of the text; a name may stand with each of several places, a place without a name. */
  readonly pairs: readonly { readonly place?: ImprintPlaceText; readonly agent?: string }[];
  readonly date?: string;
}

/**
 * Takes apart a statement such as `pp. vi. 225. Whittaker & Co.; Ward & Lock: London, [1863.]`: extent, names with
 * their places, date. Both orders are read, names before the place (as older British catalogues have it) and place
 * before the names. Undefined if the text has neither extent nor date nor names with places, or if a part of it can be
 * taken in more than one way: then it is to be kept whole. Time grows linearly with the text, which is refused beyond
 * 1,000 characters.
 */
export function readUnstructuredImprint(text: string): UnstructuredImprint | undefined {
  if (text.length > longest) return undefined;
  const plain = closedUp(text.normalize('NFC').replace(/\s+/g, ' ').trim());
  const [undated, date] = trailingDate(plain);
  const [body, extent] = leadingExtent(undated);
  const items = itemsOf(body, extent !== undefined);
  const pairs = items === undefined ? undefined : pairsOf(items);
  if (pairs === undefined) return undefined;
  const named = pairs.some(pair => pair.place !== undefined) && pairs.some(pair => pair.agent !== undefined);
  if (extent === undefined && date === undefined && !named) return undefined;
  return { ...(extent === undefined ? {} : { extent }), pairs, ...(date === undefined ? {} : { date }) };
}

const longest = 1000;

/** A mark that stands inside a closing bracket goes behind it: `[London;]`, `[The Author:] London`. */
function closedUp(text: string): string {
  return text.replace(/([;,:]+)\]/g, ']$1').replace(/^\]\s*/, '');
}

type Item = { readonly before: ';' | ':' | '' } & (
  | { readonly places: readonly ImprintPlaceText[] }
  | { readonly agent: string }
);

/** Names and places in order; undefined if a lone text can be either. */
function itemsOf(body: string, afterExtent: boolean): Item[] | undefined {
  const items = pieces(body).flatMap(([before, words]) => classified(before, words));
  const [first, second] = items;
  if (items.length === 1 && first !== undefined && 'agent' in first) return loneItem(first.agent, body, afterExtent);
  // After an extent the place comes last: a town's name before a colon is a surname there (`Bradford: London`).
  if (afterExtent && first !== undefined && 'places' in first && second?.before === ':' && 'places' in second) {
    return [{ before: '', agent: pieces(body)[0]![1] }, ...items.slice(1)];
  }
  return items;
}

/** Parts between semicolons and colons, with the mark before each. */
function pieces(body: string): (readonly [before: ';' | ':' | '', words: string])[] {
  const parts: (readonly [before: ';' | ':' | '', words: string])[] = [];
  let before: ';' | ':' | '' = '';
  for (const part of body.split(/([;:])(?=\s|$)/)) {
    if (part === ';' || part === ':') before = part;
    else if (/[\p{L}\p{N}]/u.test(part)) parts.push([before, part.trim()]);
  }
  return parts;
}

function classified(before: Item['before'], words: string): Item[] {
  const places = readImprintPlaces(words);
  if (places.length > 0 && places.every(place => place.known)) return [{ before, places }];
  const plain = words.replace(/(?:,? etc\.)?[\s,;:]*$/, '');
  const comma = plain.lastIndexOf(',');
  const tail = comma < 0 ? [] : readImprintPlaces(plain.slice(comma + 1));
  const head = plain.slice(0, Math.max(0, comma));
  if (signsOfFirm.test(head) && tail.length > 0 && tail.every(place => place.known)) {
    return [
      { before, agent: agentOf(head) },
      { before: '', places: tail },
    ];
  }
  return [{ before, agent: agentOf(words) }];
}

const signsOfFirm =
  /&|\bCo\b|\bSons?\b|\bBro(?:s|thers)\b|\bPress\b|["“”]|\bOffice\b|\bSociety\b|^\W*(?:\p{Lu}\.\s*)+\p{Lu}\p{Ll}|\b(?:Heywood|Verlag|Imprenta|Imprimerie|Tip|Typ|Impr?)\b/u;

/** Alone after an extent, plain words in capitals are a town that the list lacks; before a colon they are a name. */
function loneItem(words: string, body: string, afterExtent: boolean): Item[] | undefined {
  if (/:\W*$/.test(body) || signsOfFirm.test(words)) return [{ before: '', agent: words }];
  const [place, ...others] = readImprintPlaces(words);
  const plain = /^\[?(?:\p{L}{1,2}\.? )?\p{Lu}[\p{L}'’-]+(?: \p{Lu}?[\p{L}'’-]+){0,2}\??\]?\W*$/u.test(words);
  return afterExtent && plain && place !== undefined && others.length === 0
    ? [{ before: '', places: [place] }]
    : undefined;
}

/** Brackets that lost their other half are left out, and the marks that led over to the next part. */
function agentOf(words: string): string {
  const trimmed = words.replace(/^[\s,;:.]+|[\s,;:]+$/g, '');
  const plain = /\betc\.$/.test(trimmed) ? trimmed : withoutFinalStop(trimmed);
  const halves = plain.split('[').length - plain.split(']').length;
  return halves === 0 ? plain : plain.replace(/[[\]]/g, '').trim();
}

type Pair = UnstructuredImprint['pairs'][number];

function pairsOf(items: readonly Item[]): Pair[] {
  const [first] = items;
  return first !== undefined && 'places' in first ? placesFirst(items) : namesFirst(items);
}

/** Each name goes with the places before it. */
function placesFirst(items: readonly Item[]): Pair[] {
  const pairs: Pair[] = [];
  let places: readonly ImprintPlaceText[] = [];
  let named = true;
  for (const item of items) {
    if ('agent' in item) {
      pairs.push(...paired(places, [item.agent]));
      named = true;
    } else {
      if (!named) pairs.push(...paired(places, []));
      places = item.places;
      named = false;
    }
  }
  return named ? pairs : [...pairs, ...paired(places, [])];
}

/** Each place goes with the names before it. */
function namesFirst(items: readonly Item[]): Pair[] {
  const pairs: Pair[] = [];
  let agents: string[] = [];
  let placed = false;
  for (const item of items) {
    if ('places' in item) pairs.push(...paired(item.places, agents));
    else agents = placed ? [item.agent] : [...agents, item.agent];
    placed = 'places' in item;
  }
  return placed ? pairs : [...pairs, ...agents.map(agent => ({ agent }))];
}

/** A place where only printing was done does not go with the publishers' names. */
function paired(places: readonly ImprintPlaceText[], agents: readonly string[]): Pair[] {
  const together = places.filter(place => place.role === undefined && agents.length > 0);
  return [
    ...agents.flatMap(agent => together.map(place => ({ place, agent }))),
    ...places.filter(place => !together.includes(place)).map(place => ({ place })),
  ];
}
