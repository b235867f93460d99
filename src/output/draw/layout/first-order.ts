import type { Lane } from './lines-between.ts';

/**
 * Groups of nodes that steps join, each with its nodes from top to bottom: every source stands among its copies, every
 * copy with its own copies hangs together, and further sources of a copy stand just above it. A group of one way down
 * (no copy with two sources) is drawn without crossings. Groups with the earliest node come first.
 * @param count of nodes, numbered in order of time
 */
export function firstOrder(count: number, lanes: readonly Lane[]): number[][] {
  const copies = neighbours(count, lanes, 'from', 'to');
  const sources = neighbours(count, lanes, 'to', 'from');
  const seen = new Set<number>();
  const groups: number[][] = [];
  for (let node = 0; node < count; node++) {
    if (!seen.has(node)) groups.push(inOrder(node, copies, sources, seen));
  }
  return groups;
}

function neighbours(count: number, lanes: readonly Lane[], at: 'from' | 'to', other: 'from' | 'to'): number[][] {
  const lists: number[][] = Array.from({ length: count }, () => []);
  for (const lane of lanes) lists[lane[at]]!.push(lane[other]);
  return lists.map(list => [...new Set(list)].sort((a, b) => a - b));
}

/** A visit in depth without recursion: a chain of thousands would be too deep. */
function inOrder(
  first: number,
  copies: readonly number[][],
  sources: readonly number[][],
  seen: Set<number>,
): number[] {
  const order: number[] = [];
  const todo: { readonly node: number; readonly open: boolean }[] = [{ node: first, open: true }];
  seen.add(first);
  for (let next = todo.pop(); next !== undefined; next = todo.pop()) {
    if (!next.open) {
      order.push(next.node);
      continue;
    }
    const take = (list: readonly number[]) => list.filter(each => !seen.has(each) && seen.add(each));
    const below = take(copies[next.node]!);
    const above = [...take(sources[next.node]!), ...below.splice(0, Math.floor(below.length / 2))];
    const opened = (list: readonly number[]) => list.map(node => ({ node, open: true }));
    todo.push(...opened(below).reverse(), { node: next.node, open: false }, ...opened(above).reverse());
  }
  return order;
}
