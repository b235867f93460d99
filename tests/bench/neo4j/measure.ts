import { round, type Timing, timingOf } from '../percentile.ts';
import { type Question, type SideName, sideNames } from './sides.ts';

type Timings = Partial<Record<SideName, Timing>>;

/** A question about a graph of so many editions. */
export interface Measured {
  readonly name: string;
  readonly editions: number;
  readonly timings: Timings;
}

const rounds = 20;

/** Rounds before those that count: servers, and ours too, compile what they are asked often, and run for longer than a measurement. */
const warmingUp = 25;

interface Sized {
  readonly editions: number;
  readonly question: Question;
  readonly taken: Map<SideName, readonly number[]>;
}

/** Asks every question of every size of all sides, interleaved: at each turn another side begins. */
export async function measure(bySize: ReadonlyMap<number, readonly Question[]>): Promise<readonly Measured[]> {
  const all = [...bySize].flatMap(([editions, questions]) =>
    questions.map((question): Sized => ({ editions, question, taken: new Map() })),
  );
  let turn = 0;
  for (let number = -warmingUp; number < rounds; number++) {
    for (const { question, taken } of all) {
      for (let time = 0; time < question.turns; time++, turn++) {
        for (let i = 0; i < sideNames.length; i++) {
          const side = sideNames[(turn + i) % sideNames.length]!;
          const ask = question.ask[side];
          if (ask === undefined) continue;
          const begun = performance.now();
          await ask(turn);
          const took = performance.now() - begun;
          if (number >= 0) taken.set(side, [...(taken.get(side) ?? []), took]);
        }
      }
    }
  }
  return all.map(({ editions, question, taken }) => ({
    name: question.name,
    editions,
    timings: Object.fromEntries([...taken].map(([side, times]) => [side, timingOf(times)])),
  }));
}

/**
 * Compares what the sides answer: our two engines the same bytes, the others the same records.
 * @throws where they do not
 */
export async function checkAgreement(question: Question, turns: number): Promise<void> {
  for (let turn = 0; turn < turns; turn++) {
    const [ours, file] = await Promise.all([question.ask.ours!(turn), question.ask.file!(turn)]);
    if (JSON.stringify(ours) !== JSON.stringify(file)) throw differing(question, 'file', turn);
    if (question.name === 'hello') continue;
    const wanted = idsIn(ours, question.same ?? '[a-z]+');
    for (const side of ['driver', 'layer', 'light'] as const) {
      const found = await question.ask[side]?.(turn);
      if (found === undefined) continue;
      const named = side === 'driver' && question.column !== undefined ? column(found, question.column) : found;
      const ids = idsIn(named, question.same ?? '[a-z]+');
      const isSame = question.same === undefined ? ids.length > 0 : ids.join() === wanted.join();
      if (!isSame) throw differing(question, side, turn);
    }
  }
}

/** Each once, in order. */
function idsIn(value: unknown, kinds: string): readonly string[] {
  const found = JSON.stringify(value).matchAll(new RegExp(`"((?:${kinds})-[^"]+)"`, 'g'));
  return [...new Set([...found].map(([, id]) => id!))].sort();
}

function column(rows: unknown, at: number): readonly unknown[] {
  return (rows as readonly (readonly unknown[])[]).map(row => row[at]);
}

function differing({ name }: Question, side: SideName, turn: number): Error {
  return new Error(`${name}, turn ${turn}: expected the same of all, ${side} answers something else`);
}

/** How many times as long ours takes as some others together; undefined where one was not asked. */
export function ratio(ours: Timing | undefined, ...others: readonly (Timing | undefined)[]): number | undefined {
  if (ours === undefined || others.some(other => other === undefined)) return undefined;
  return round(ours.p50 / others.reduce((sum, other) => sum + other!.p50, 0));
}
