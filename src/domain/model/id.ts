import { PlatestemmaError } from '../../errors.ts';
import { claimKindNames, type KindName, recordKindNames } from './kinds.ts';

/** Crockford base 32: no I, L, O, U, so that an id can be read aloud. https://www.crockford.com/base32.html */
const alphabet = '0123456789abcdefghjkmnpqrstvwxyz';
/** Value of each character of the alphabet, by its code. */
const valueOfCode = Uint8Array.from({ length: 128 }, (_, code) =>
  Math.max(0, alphabet.indexOf(String.fromCharCode(code))),
);
/** Two characters for ten bits. */
const pairs = [...alphabet].flatMap(first => [...alphabet].map(second => first + second));
const made = new RegExp(`^[${alphabet}]{13}$`);
const byHand = /^[a-z0-9]+(?:-[a-z0-9]+)+$/;

const kindOfPrefix = new Map<string, KindName>(
  [...recordKindNames, ...claimKindNames].map(kind => [kind.toLowerCase(), kind]),
);

/**
 * A new id: the kind in lower case, a hyphen, 12 characters from `random` and a check character.
 * @param random fills a given number of bytes; 12 are asked for, of which the low five bits count
 */
export function makeId(kind: KindName, random: (bytes: number) => Uint8Array): string {
  const bytes = random(12);
  let body = '';
  for (let i = 0; i < 12; i += 2) body += pairs[((bytes[i]! & 31) << 5) | (bytes[i + 1]! & 31)]!;
  return `${kind.toLowerCase()}-${body}${checkCharacter(body)}`;
}

/**
 * Random bytes whose first two are the same each time: many ids made from them together lie close in an index, which
 * then has a small part of its pages to write. Ten bits fewer tell them apart: fifty are left.
 */
export function alikeAtFirst(random: (bytes: number) => Uint8Array): (bytes: number) => Uint8Array {
  const [first = 0, second = 0] = random(2);
  return bytes => {
    const filled = random(bytes);
    filled[0] = first;
    filled[1] = second;
    return filled;
  };
}

/** The kind an id names by its prefix, or undefined if it has none. Does not look at the rest. */
export function kindOfId(id: string): KindName | undefined {
  const hyphen = id.indexOf('-');
  return hyphen < 0 ? undefined : kindOfPrefix.get(id.slice(0, hyphen));
}

/**
 * Checks the form of an id: one made by this program (13 characters, the last a check character), or one given by
 * hand: words of small letters and digits with at least one hyphen among them.
 * @throws ID_MISTYPED if the check character does not fit, INPUT_INVALID if it is no id at all
 */
export function checkId(id: string): KindName {
  const kind = kindOfId(id);
  const rest = kind === undefined ? '' : id.slice(kind.length + 1);
  if (kind !== undefined && made.test(rest)) {
    const expected = checkCharacter(rest.slice(0, 12));
    if (rest[12] !== expected)
      throw new PlatestemmaError('ID_MISTYPED', `"${id}" is mistyped: its last character does not fit the others`);
    return kind;
  }
  if (kind !== undefined && byHand.test(rest)) return kind;
  throw new PlatestemmaError(
    'INPUT_INVALID',
    `expected an id such as "plate-7h3k9q2m4xtdp", or one given by hand such as "plate-dog-at-gate" (kind, then words with a hyphen among them), came "${id}"`,
  );
}

/** Luhn mod N over the 32 characters: finds every single wrong character and nearly every swap of neighbours. ISO/IEC 7812-1 annex B, generalised. */
function checkCharacter(body: string): string {
  let factor = 2;
  let sum = 0;
  for (let i = body.length - 1; i >= 0; i--) {
    const addend = factor * valueOfCode[body.charCodeAt(i)]!;
    sum += Math.floor(addend / 32) + (addend % 32);
    factor = factor === 2 ? 1 : 2;
  }
  return alphabet[(32 - (sum % 32)) % 32]!;
}
