import { hits, type RowProblem } from './row-problem.ts';

/** Less is better: a crossing weighs more than any length of uprights, which decides among equals. */
const crossingWeight = 1e6;

/**
 * Moves one node after the other to its best row among all others (sifting), until a round gains nothing or the exchanges
 * of neighbours allowed are used up. Never makes the order worse.
 * Method: Matuszewski, Schönfeld, Molitor, "Using sifting for k-layer straightline crossing minimization" (1999).
 * @param exchanges how many are allowed where each node has few lines, fewer where many; a count, not a time, so that the
 *   same drawing comes out everywhere
 */
export function siftRows(problem: RowProblem, first: readonly number[], exchanges: number): readonly number[] {
  const rows = new Rows(problem, first);
  const reach = Math.max(8, Math.floor(exchanges / (first.length * 12)));
  let left = exchanges / effort(problem);
  for (let gained = true; gained && left > 0; ) {
    gained = false;
    for (const node of first) {
      if (left <= 0) break;
      const { gain, exchanged } = rows.sift(node, reach);
      left -= exchanged;
      gained ||= gain > 0;
    }
  }
  return rows.order;
}

/** How much more work an exchange is than where each node has few lines: 1 or more. */
function effort({ strips, uprights }: RowProblem): number {
  const level = strips.reduce((sum, each) => sum + each.length, 0) / strips.length;
  const upright = uprights.reduce((sum, { members }) => sum + members.length, 0) / strips.length;
  return Math.max(1, (level * upright) / 25);
}

/** An order of rows that knows what exchanging two neighbours gains. */
class Rows {
  readonly order: number[];
  readonly #row: Int32Array;
  readonly #problem: RowProblem;
  readonly #uprightsOf: readonly (readonly number[])[];
  readonly #top: Int32Array;
  readonly #bottom: Int32Array;

  constructor(problem: RowProblem, order: readonly number[]) {
    this.#problem = problem;
    this.order = [...order];
    this.#row = new Int32Array(problem.strips.length);
    order.forEach((node, i) => {
      this.#row[node] = i;
    });
    this.#uprightsOf = uprightsOf(problem);
    const rows = problem.uprights.map(({ members }) => members.map(node => this.#row[node]!));
    this.#top = Int32Array.from(rows, each => Math.min(...each));
    this.#bottom = Int32Array.from(rows, each => Math.max(...each));
  }

  /** Tries the rows within reach, and leaves the node at the best. */
  sift(node: number, reach: number): { readonly gain: number; readonly exchanged: number } {
    const start = this.#row[node]!;
    const last = Math.min(this.order.length - 1, start + reach);
    const first = Math.max(0, start - reach);
    let [cost, least, best, exchanged] = [0, 0, start, 0];
    const walk = (to: number, note: boolean) => {
      for (let at = this.#row[node]!; at !== to; exchanged++) {
        const down = at < to;
        cost += this.#exchange(down ? at : at - 1);
        at += down ? 1 : -1;
        if (note && cost < least) [least, best] = [cost, at];
      }
    };
    walk(last, true);
    walk(first, true);
    walk(best, false);
    return { gain: -least, exchanged };
  }

  /**
   * Exchanges the nodes of a row and the next. Only uprights with an end at one of the two can cross more or less than
   * before, and one that joins both keeps its ends.
   * @returns what it costs
   */
  #exchange(i: number): number {
    const [a, b] = [this.order[i]!, this.order[i + 1]!];
    const [ofA, ofB] = [this.#uprightsOf[a]!, this.#uprightsOf[b]!];
    let cost = -this.#cost(ofA, ofB, i);
    this.order[i] = b;
    this.order[i + 1] = a;
    this.#row[a] = i + 1;
    this.#row[b] = i;
    for (const upright of ofA) if (!ofB.includes(upright)) this.#moveEnd(upright, i, i + 1);
    for (const upright of ofB) if (!ofA.includes(upright)) this.#moveEnd(upright, i + 1, i);
    cost += this.#cost(ofA, ofB, i);
    return cost;
  }

  #moveEnd(upright: number, from: number, to: number): void {
    if (this.#top[upright] === from) this.#top[upright] = to;
    if (this.#bottom[upright] === from) this.#bottom[upright] = to;
  }

  #cost(ofA: readonly number[], ofB: readonly number[], i: number): number {
    let cost = 0;
    for (const upright of ofA) cost += this.#costOf(upright, i);
    for (const upright of ofB) if (!ofA.includes(upright)) cost += this.#costOf(upright, i);
    return cost;
  }

  #costOf(upright: number, i: number): number {
    const [top, bottom] = [this.#top[upright]!, this.#bottom[upright]!];
    let crossings = 0;
    const { x, members } = this.#problem.uprights[upright]!;
    for (let row = Math.max(i, top + 1); row <= i + 1 && row < bottom; row++)
      crossings += hits(this.#problem.strips[this.order[row]!]!, members[0]!, x);
    return bottom - top + crossingWeight * crossings;
  }
}

/** Uprights of which each node is a member. */
function uprightsOf({ strips, uprights }: RowProblem): number[][] {
  const lists: number[][] = strips.map(() => []);
  uprights.forEach(({ members }, i) => {
    for (const node of new Set(members)) lists[node]!.push(i);
  });
  return lists;
}
