import { countryCodeOf } from './country-codes-by-name.ts';
import { townsNamed } from './imprint-towns.ts';
import { withoutLeadingWords } from './leading-words.ts';
import { resolvePlaceName } from './resolve-place.ts';

/** One place as the words of an imprint name it. */
export interface ImprintPlaceText {
  /** Without brackets, doubts, qualifier and marks of punctuation. */
  readonly name: string;
  /** MARC country code that a qualifier gives (`[Mass.]`, `, N.Z.`), or that of the name itself if it is a country's. */
  readonly country?: string;
  /** In square brackets: not on the title page. */
  readonly supplied: boolean;
  /** With a question mark. */
  readonly uncertain: boolean;
  /** What was done there, where the words say other than published. */
  readonly role?: 'printer' | 'manufacturer';
  /** The list of imprint towns has the name, or it is the name of a country. */
  readonly known: boolean;
}

/**
 * The places that the words of MARC 260/264 $a name, in order. Empty where they say that there is none (`[S.l.]`,
 * `o. O.`) or give a date alone. Several places are parted at semicolons, commas and "and" only where each part is known;
 * what a correction (`[i.e. Halle]`) says goes before what it corrects; words that follow a known place after a semicolon and are none themselves are passed over; else the text stays whole.
 */
export function readImprintPlaces(text: string): ImprintPlaceText[] {
  const plain = balanced(corrected(text.normalize('NFC').replace(/\s+/g, ' ').trim()));
  if (plain.length > longest) return [{ name: plain, supplied: false, uncertain: false, known: false }];
  if (noPlace.test(plain) || !/\p{L}{2}/u.test(plain.replace(circa, ''))) return [];
  const parts = plain.split(/;\s*/).map(part => part.trim());
  const read = parts.filter(part => part !== '').map(readPart);
  const known = read.filter(places => places.every(place => place.known));
  return known.length > 0 ? known.flat() : [single(plain)];
}

/** A longer text names no place; it is left as it is. */
const longest = 500;
const noPlace =
  /^\W*(?:s\. ?l\.?(?: ?et a\.?)?|s\.? ?l\.? ?n\.? ?d\.?|sine loco|o\. ?o\.?|ohne ort|n\. ?p\.?|z\. ?pl\.|u\. ?o\.|b\. ?m\.|б\. ?м\.|(?:place of (?:publication|production|manufacture|distribution)|place) (?:not (?:identified|given|stated)|unknown)|no place|lieu (?:de publication )?(?:inconnu|non identifié))\W*$/iu;
const circa = /\b(?:c|ca|circa|an)\b\.?/gi;
const between = /\s(?:&|and|et|und|u\.|y|e|og|och|en|и)\s|\s[-–/]\s/u;

/** What a cataloguer says is meant takes the place of what was printed: `Lipsiae [i.e. Halle]`. */
function corrected(text: string): string {
  const meant = /\[(?:i\. ?e\.?|that is),? ([^\]]{1,100})\]?/i.exec(text)?.[1];
  return meant === undefined ? text : `[${meant}]`;
}

/** `[London;]` as `[London];`, `Amst[erdam` as `Amsterdam`. */
function balanced(text: string): string {
  return text.replace(/([;,:]+)\]/g, ']$1').replace(/(\p{L})\[(\p{Ll})/gu, '$1$2');
}

/** A part between semicolons: one place with its qualifier, or several. */
function readPart(part: string): ImprintPlaceText[] {
  const whole = single(part);
  if (whole.known) return [whole];
  const listed = joined(part.split(between)) ?? joined(part.split(/,\s*/));
  return listed ?? [whole];
}

/** Places of which each is known, a qualifier taken with the place before it; undefined if one is not. */
function joined(pieces: readonly string[]): ImprintPlaceText[] | undefined {
  const places: ImprintPlaceText[] = [];
  let words = '';
  for (const piece of pieces.filter(each => /\p{L}/u.test(each.replace(andOthers, '')))) {
    const both = words === '' ? undefined : single(`${words}, ${piece}`);
    if (both?.known === true) places.pop();
    const place = both?.known === true ? both : single(piece);
    if (!place.known) return undefined;
    places.push(place);
    words = piece;
  }
  return places.length < 2 ? undefined : places;
}

const printed = /[\s,]*\b(?:re-?)?printed\b(?: (?:in|at))?[\s,]*/iu;
const manufactured = /\bmanufactured (?:in|at)\b/iu;
const andOthers = /[\s,]*(?:&c|\[?\b(?:etc|usw|u\. ?a|and elsewhere)\b)\.?(?=[\s\]):;,]*$)/iu;
const qualified = /^(?<town>[^,[(]+?)\s*(?:,\s*[[(]?|[[(])(?<qualifier>[^[\]()]+?)[\])]*$/u;

function single(part: string): ImprintPlaceText {
  const words = part.replace(manufactured, ' ').replace(printed, ' ').replace(andOthers, '').trim();
  const marks = {
    supplied: /^\W*\[/u.test(part) || /^[^[]+\]\W*$/u.test(part),
    uncertain: words.includes('?'),
    ...(manufactured.test(part) ? { role: 'manufacturer' as const } : {}),
    ...(printed.test(part) ? { role: 'printer' as const } : {}),
  };
  const found = qualified.exec(words.replace(/^[\s,.:;[(]+|[\s,:;?]+$/gu, ''))?.groups;
  const town = bare(found?.['town'] ?? '');
  const country = found === undefined ? undefined : qualifierOf(town, found['qualifier']!);
  if (country !== undefined) return { name: town, country, ...marks, known: isTown(town) };
  const name = bare(words);
  if (isTown(name)) return { name, ...marks, known: true };
  const itself = countryCodeOf(name);
  return itself === undefined ? { name, ...marks, known: false } : { name, country: itself, ...marks, known: true };
}

/** A name that towns bear too (`New York`, `Norfolk`) is a qualifier only of a town that is known to lie there. */
function qualifierOf(town: string, qualifier: string): string | undefined {
  const country = countryCodeOf(qualifier);
  if (country === undefined || townsNamed(qualifier).length === 0) return country;
  const resolution = resolvePlaceName(town, { country });
  const liesThere = 'place' in resolution || (resolution.choices.length > 0 && resolution.contradicted === undefined);
  return liesThere ? country : undefined;
}

function isTown(name: string): boolean {
  return townsNamed(name).length > 0 || townsNamed(withoutLeadingWords(name)).length > 0;
}

/** Without brackets, question marks and the punctuation around; the full stop of an abbreviation (`a. M.`) stays. */
function bare(words: string): string {
  const plain = words
    .replace(/[[\]()?]/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,.:;=]+|[\s,:;=]+$/g, '');
  return /(?:^|\s)\p{L}{1,2}\.$|\..*\.$/u.test(plain) ? plain : plain.replace(/[\s,:;.]+$/, '');
}
