import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackKeys } from '../domain/conventions/slack-of.ts';
import type { SlackName } from '../domain/dates/slacks-used.ts';
import { inTown, lagKeys } from '../domain/reach/lag-days.ts';
import { aheadKey, publishedClasses } from '../domain/reach/published-window.ts';
import { profileOutlets } from './profile-outlets.ts';
import type { TargetFound } from './reach-target.ts';
import type { JudgedWindows } from './reach-windows.ts';

/**
 * Keys of the conventions that counts of editions, and their order, rest on: of every edition that is counted those of its days
 * of publication, and of its ways to where the question is about.
 */
export function countedConventions(
  judged: readonly JudgedWindows[],
  found: TargetFound,
  conventions: Conventions,
): ReadonlySet<string> {
  const keys = new Set<string>();
  const grounds = judged.flatMap(each => each.grounds);
  for (const name of Object.keys(slackKeys) as SlackName[]) {
    if (sum(grounds.map(({ ofSlacks }) => ofSlacks.get(name) ?? 0)) > 0) keys.add(slackKeys[name]);
  }
  // Where what is asked about contradicts itself, nothing more is reckoned.
  if (judged.some(({ columns }) => columns === undefined)) return keys;
  for (const [at, kind] of publishedClasses.entries()) {
    if (kind !== 'OTHER' && sum(grounds.map(({ ofClasses }) => ofClasses[at]!)) > 0) keys.add(aheadKey(kind));
  }
  if (sum(grounds.map(({ withAccess }) => withAccess)) > 0) keys.add('route.sameTown');
  for (const list of listsOfWays(judged, found, conventions)) for (const key of list) keys.add(key);
  return keys;
}

type Lists = Set<readonly string[]>;

/** The last has all windows; those before it stand beside it, and take some of them away. */
function listsOfWays(judged: readonly JudgedWindows[], found: TargetFound, conventions: Conventions): Lists {
  const lists: Lists = new Set();
  const nets = judged.map(netOfKeys);
  const [all, netOfAll] = [judged.at(-1)!, nets.at(-1)!];
  judged.slice(0, -1).forEach((beside, i) => {
    takeAway(beside, nets[i]!, all, netOfAll);
  });
  judged.forEach((each, i) => {
    addLists(each, nets[i]!, found, conventions, lists);
  });
  return lists;
}

/** How many editions have each key, over all columns. */
function netOfKeys({ keys, grounds }: JudgedWindows): Float64Array {
  const net = new Float64Array(keys.profiles.length);
  for (const { keys: those, ofKeys } of grounds) {
    for (let i = 0; i < those.length; i++) net[those[i]!]! += ofKeys[i]!;
  }
  return net;
}

/** What comes to less than nothing beside all is taken from all. Few are. */
function takeAway(beside: JudgedWindows, net: Float64Array, all: JudgedWindows, netOfAll: Float64Array): void {
  const less = new Map<string, number>();
  net.forEach((count, key) => {
    if (count < 0) less.set(nameOfKey(beside, key), count);
  });
  if (less.size === 0) return;
  for (let key = 0; key < netOfAll.length; key++) netOfAll[key]! += less.get(nameOfKey(all, key)) ?? 0;
}

function nameOfKey({ groups, keys }: JudgedWindows, key: number): string {
  const { first, last } = keys.spans[keys.spanOf[key]!]!;
  return `${groups.profiles[keys.profiles[key]!]}\n${first} ${last}`;
}

function addLists(
  { groups, keys, named }: JudgedWindows,
  net: Float64Array,
  { target }: TargetFound,
  conventions: Conventions,
  lists: Lists,
): void {
  const { outlets, ofProfile } = profileOutlets(groups);
  const eras = 1 + Math.max(0, ...keys.spans.map(({ last }) => last));
  const touched = new Uint8Array(outlets.length * eras);
  for (let key = 0; key < net.length; key++) {
    if (net[key]! <= 0) continue;
    const { first, last } = keys.spans[keys.spanOf[key]!]!;
    for (const outlet of ofProfile[keys.profiles[key]!]!)
      touched.fill(1, outlet * eras + first, outlet * eras + last + 1);
  }
  for (const [number, { kind, place }] of outlets.entries()) {
    const located = named.places.get(place);
    const isTouched = touched.subarray(number * eras, (number + 1) * eras);
    if (located === undefined || !isTouched.includes(1)) continue;
    // A bookseller first has it himself.
    if (kind === 'BOOKSELLER') lists.add(inTown);
    for (const { place: to } of target.stays) {
      const keysIn = lagKeys(located, to, conventions);
      for (let era = 0; era < eras; era++) if (isTouched[era] === 1) lists.add(keysIn(era));
    }
  }
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((a, b) => a + b, 0);
}
