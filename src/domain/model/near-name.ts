import { editDistance } from '../text/edit-distance.ts';

/** The name most like what was typed, if any is like enough: for "did you mean". At most a third of it may differ. */
export function nearName(typed: string, names: readonly string[]): string | undefined {
  const wanted = typed.toLowerCase();
  let best: string | undefined;
  let least = Math.max(1, Math.floor(typed.length / 3)) + 1;
  for (const name of names) {
    const distance = editDistance(wanted, name.toLowerCase(), least);
    if (distance < least) [best, least] = [name, distance];
  }
  return best;
}
