import type { HandednessLink } from './handedness-link.ts';

/** Against the record asked about; CONTRADICTORY: one way says SAME and another REVERSED. */
export type HandednessFromHere = 'SAME' | 'REVERSED' | 'UNKNOWN' | 'CONTRADICTORY';

/**
 * How each record stands to one of them by all links of known handedness: what `relateHandedness` says of each pair, for
 * all at once. A record that no such link leads to is not in the answer.
 */
export function handednessFrom(
  start: string,
  links: readonly HandednessLink[],
): ReadonlyMap<string, HandednessFromHere> {
  const around = new Map<string, { readonly to: string; readonly reversed: boolean }[]>();
  const add = (from: string, to: string, reversed: boolean) => {
    const known = around.get(from);
    if (known === undefined) around.set(from, [{ to, reversed }]);
    else known.push({ to, reversed });
  };
  for (const { one, other, reversed } of links) {
    if (reversed === undefined) continue;
    add(one, other, reversed);
    add(other, one, reversed);
  }
  const [same, mirrored] = [new Set([start]), new Set<string>()];
  const queue: { readonly record: string; readonly reversed: boolean }[] = [{ record: start, reversed: false }];
  for (const { record, reversed } of queue) {
    for (const link of around.get(record) ?? []) {
      const turned = reversed !== link.reversed;
      const reached = turned ? mirrored : same;
      if (reached.has(link.to)) continue;
      reached.add(link.to);
      queue.push({ record: link.to, reversed: turned });
    }
  }
  return new Map([...same, ...mirrored].map(id => [id, said(same.has(id), mirrored.has(id))]));
}

function said(same: boolean, mirrored: boolean): HandednessFromHere {
  if (same && mirrored) return 'CONTRADICTORY';
  return same ? 'SAME' : 'REVERSED';
}
