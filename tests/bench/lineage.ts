/**
 * Lineages of 60 pictures in stores of 10,000 and 100,000 editions: the same document answered from the store and from
 * memory, that is with every answer of the store remembered; sides interleaved. `cpu` is the mean time of all threads,
 * which other work on the machine disturbs less. Prints a table and writes tests/bench/results/lineage.json. `node tests/bench/lineage.ts`, with the sizes as arguments for others.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createApi } from '../../src/api/create-api.ts';
import { openDesk } from '../../src/compose.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { familySize, headOfFamily, writeSyntheticFamilies } from '../support/synthetic-pictures.ts';
import { round, timingOf } from './percentile.ts';
import { writeResult } from './result.ts';
import { syntheticStore } from './synthetic-store.ts';

const document = `query ($of: ID!) { lineage(of: $of) {
  links {
    nodes {
      record { id label } depth handedness made { first last } recorded { first last }
      appearances { locator edition { id title } published { first last } }
    }
    steps { __typename ... on Copying { id manner handedness } }
  }
  earliest { id } latest { id } contradictions { code message } missingLinks { code message claim { id } } cut
  grounds { basis conventions { key version } }
} }`;

const asked = 400;
const sizes = process.argv.length > 2 ? process.argv.slice(2).map(Number) : [10_000, 100_000];
const folder = mkdtempSync(join(tmpdir(), 'platestemma-bench-'));

try {
  const milliseconds: Record<string, unknown> = {};
  for (const editions of sizes) Object.assign(milliseconds, await measured(editions));
  console.table(milliseconds);
  writeResult('lineage', { pictures: familySize, milliseconds });
} finally {
  rmSync(folder, { recursive: true, force: true });
}

async function measured(editions: number): Promise<Record<string, unknown>> {
  const file = join(folder, `${editions}.store`);
  await syntheticStore(file, editions);
  const { store } = await openDesk(file, { store: file, who: 'a bench', questionLimit: 10_000 });
  const families = editions / 100;
  await writeSyntheticFamilies(store, families);
  const kept = remembering(store);
  const ask = { fromStore: asker(store), fromMemory: asker(kept) };
  const taken: Record<keyof typeof ask, number[]> = { fromStore: [], fromMemory: [] };
  const cpu: Record<keyof typeof ask, number> = { fromStore: 0, fromMemory: 0 };
  // The first round fills what is remembered, and warms up.
  for (let n = 0; n < asked * 1.5; n++) {
    const of = headOfFamily((n * 37) % families);
    await kept.fill(() => ask.fromMemory(of));
    for (const side of n % 2 === 0 ? (['fromStore', 'fromMemory'] as const) : (['fromMemory', 'fromStore'] as const)) {
      const before = process.cpuUsage();
      const took = await ask[side](of);
      const { user, system } = process.cpuUsage(before);
      if (n < asked / 2) continue;
      taken[side].push(took);
      cpu[side] += (user + system) / 1000 / asked;
    }
  }
  await store.close();
  const [fromStore, fromMemory] = [timingOf(taken.fromStore), timingOf(taken.fromMemory)];
  return {
    [`from the store, ${editions} editions`]: {
      ...{ ...fromStore, cpu: round(cpu.fromStore) },
      ...{ toMemory: round(fromStore.p50 / fromMemory.p50), cpuToMemory: round(cpu.fromStore / cpu.fromMemory) },
    },
    [`from memory, ${editions} editions`]: { ...fromMemory, cpu: round(cpu.fromMemory) },
  };
}

function asker(store: GraphStore): (of: string) => Promise<number> {
  const api = createApi({ store, questions: askStore(store) });
  return async of => {
    const body = JSON.stringify({ query: document, variables: { of } });
    const headers = { 'content-type': 'application/json', accept: 'application/graphql-response+json' };
    const request = new Request('http://localhost/graphql', { method: 'POST', headers, body });
    const begun = performance.now();
    const text = await (await api.fetch(request)).text();
    const took = performance.now() - begun;
    if (text.includes('"errors"') || !text.includes('"nodes"')) throw new Error(text.slice(0, 500));
    return took;
  };
}

/** A store that answers what it was asked before without being asked again; `fill` lets what is new through. */
function remembering(store: GraphStore): GraphStore & { fill(call: () => Promise<unknown>): Promise<void> } {
  const known = new Map<string, unknown>();
  let filling = false;
  return new Proxy(store as GraphStore & { fill(call: () => Promise<unknown>): Promise<void> }, {
    get(target, name) {
      if (name === 'fill')
        return async (call: () => Promise<unknown>) => {
          filling = true;
          await call();
          filling = false;
        };
      const member: unknown = Reflect.get(target, name);
      if (typeof member !== 'function') return member;
      return async (...args: readonly unknown[]) => {
        const key = `${String(name)} ${JSON.stringify(args)}`;
        if (!known.has(key)) {
          if (!filling) throw new Error(`not remembered: ${key.slice(0, 200)}`);
          known.set(key, await member.apply(target, args));
        }
        return known.get(key);
      };
    },
  });
}
