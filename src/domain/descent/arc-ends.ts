import type { CompiledChoice } from './course.ts';
import type { ArcEnds } from './date-arcs.ts';
import type { DateLink } from './dates-network.ts';

/** The arcs that links stand for, and those over which choices lead. */
export function arcEnds(
  links: readonly DateLink[],
  choices: readonly CompiledChoice[],
  number: (name: string) => number,
): ArcEnds {
  const between = choices.flatMap(({ head, options }) => options.flatMap(({ arcs }) => arcs.map(a => [a.from, head])));
  const writer = arcWriter(2 * links.length + between.length);
  for (let n = 0; n < links.length; n += 1) {
    const { from, to, least, most } = links[n]!;
    const [a, b] = [number(from), number(to)];
    if (least !== undefined) writer.add(a, b, least, 2 * n);
    if (most !== undefined) writer.add(b, a, 0 - most, 2 * n + 1);
  }
  for (const [from, head] of between) writer.add(from!, head!, -Infinity, -1);
  return writer.ends();
}

/** @param most arcs at most */
function arcWriter(most: number) {
  const [from, to, source] = [new Int32Array(most), new Int32Array(most), new Int32Array(most)];
  const weight = new Float64Array(most);
  let arc = 0;
  return {
    add(start: number, end: number, days: number, said: number) {
      from[arc] = start;
      to[arc] = end;
      weight[arc] = days;
      source[arc] = said;
      arc += 1;
    },
    ends: () => ({
      ...{ from: from.subarray(0, arc), to: to.subarray(0, arc) },
      ...{ weight: weight.subarray(0, arc), source: source.subarray(0, arc) },
    }),
  };
}
