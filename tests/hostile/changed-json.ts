import type { Chance } from './chance.ts';
import { hostileDates, hostileIds, hostileNumbers, hostileTexts, wrongValues } from './hostile-values.ts';

type Parent = Record<string, unknown> | unknown[];

/** A document with a few of its parts taken out, renamed, put elsewhere, or with something else in their place. */
export function changedJson(whole: unknown, chance: Chance): unknown {
  const root = { whole: structuredClone(whole) };
  for (let change = 1 + chance.below(3); change > 0; change--) changeOne(root, chance);
  return root.whole ?? null;
}

function changeOne(root: Parent, chance: Chance): void {
  const places = placesIn(root);
  if (places.length === 0) return;
  const [parent, key] = chance.pick(places);
  const holder = parent as Record<string, unknown>;
  const other = chance.pick(places);
  const ways: readonly (() => void)[] = [
    () => (holder[key] = anyValue(chance)),
    () => (holder[key] = anyValue(chance)),
    () => (holder[key] = structuredClone((other[0] as Record<string, unknown>)[other[1]])),
    () => (holder[key] = [holder[key]]),
    () => (holder[chance.pick(hostileTexts)] = holder[key]),
    () => delete holder[key],
  ];
  chance.pick(ways)();
}

function anyValue(chance: Chance): unknown {
  const value = chance.pick<unknown>([
    ...[...hostileTexts, ...hostileDates, ...hostileIds, ...hostileNumbers],
    ...[...wrongValues, ...wrongValues, true, null],
  ]);
  return structuredClone(value);
}

/** Where a value stands: what holds it, and under which key. */
function placesIn(value: unknown): [parent: Parent, key: string][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [
    [value as Parent, key] as [Parent, string],
    ...placesIn(inner),
  ]);
}
