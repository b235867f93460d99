import type { DateArcs } from './date-arcs.ts';

/** Variables in groups that arcs join in both directions, each group after all from which arcs lead to it. */
export interface StrongComponents {
  readonly count: number;
  /** Variables in the order of their groups. */
  readonly variables: Int32Array;
  /** Place in `variables` at which a group begins; one more entry ends the last. */
  readonly start: Int32Array;
  /** Group of each variable. */
  readonly of: Int32Array;
}

/**
 * Strongly connected components in topological order. Tarjan, "Depth-first search and linear graph algorithms" (SIAM
 * Journal on Computing 1, 1972), without recursion; linear.
 */
export function strongComponents({ variables: size, to, outOf, outOfStart }: DateArcs): StrongComponents {
  const seen = new Int32Array(size);
  const low = new Int32Array(size);
  const next = outOfStart.slice(0, size);
  const component = new Int32Array(size).fill(-1);
  const open: number[] = [];
  const path: number[] = [];
  const found: number[] = [];
  const sizes: number[] = [];
  let clock = 0;

  const enter = (v: number) => {
    clock += 1;
    seen[v] = clock;
    low[v] = clock;
    open.push(v);
    path.push(v);
  };
  const leave = (v: number) => {
    path.pop();
    const parent = path.at(-1);
    if (parent !== undefined) low[parent] = Math.min(low[parent]!, low[v]!);
    if (low[v] === seen[v]) close(v);
  };
  const close = (v: number) => {
    const before = found.length;
    let member: number;
    do {
      member = open.pop()!;
      component[member] = sizes.length;
      found.push(member);
    } while (member !== v);
    sizes.push(found.length - before);
  };

  for (let root = 0; root < size; root += 1) {
    if (seen[root] !== 0) continue;
    enter(root);
    while (path.length > 0) {
      const v = path.at(-1)!;
      const at = next[v]!;
      if (at === outOfStart[v + 1]) {
        leave(v);
        continue;
      }
      next[v] = at + 1;
      const w = to[outOf[at]!]!;
      if (seen[w] === 0) enter(w);
      else if (component[w] === -1) low[v] = Math.min(low[v]!, seen[w]!);
    }
  }
  return inOrder(size, found, sizes, component);
}

/** The same groups for arcs that are turned round. */
export function componentsAgainst({ count, variables, start, of }: StrongComponents): StrongComponents {
  const end = variables.length;
  return {
    count,
    variables: variables.toReversed(),
    start: start.toReversed().map(at => end - at),
    of: of.map(component => count - 1 - component),
  };
}

/** Components are found last first. */
function inOrder(
  size: number,
  found: readonly number[],
  sizes: readonly number[],
  component: Int32Array,
): StrongComponents {
  const count = sizes.length;
  const variables = new Int32Array(size);
  for (let at = 0; at < size; at += 1) variables[at] = found[size - 1 - at]!;
  const start = new Int32Array(count + 1);
  for (let c = 0; c < count; c += 1) start[c + 1] = start[c]! + sizes[count - 1 - c]!;
  const of = new Int32Array(size);
  for (let v = 0; v < size; v += 1) of[v] = count - 1 - component[v]!;
  return { count, variables, start, of };
}
