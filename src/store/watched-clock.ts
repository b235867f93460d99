import type { GraphStore, WriteBatch } from './graph-store.ts';
import { writtenIds } from './written-ids.ts';

/** The clock by which a change set came stands before the moment of the last one. */
export interface ClockBehind {
  readonly clock: string;
  readonly last: string;
}

/** A store that tells when the clock of who writes stands before what is written already: the moments of change sets do not. */
export function watchedClock(store: GraphStore, tell: (behind: ClockBehind) => void): GraphStore {
  let last: string | undefined;
  const write = async (batch: WriteBatch): ReturnType<GraphStore['write']> => {
    last ??= await lastMoment(store);
    const clock = batch.changeSet.moment;
    if (clock >= last) last = clock;
    else if (writtenIds(batch).length > 0 && batch.keepsMoment !== true) tell({ clock, last });
    return store.write(batch);
  };
  return new Proxy(store, {
    get(target, name) {
      if (name === 'write') return write;
      const member: unknown = Reflect.get(target, name);
      return typeof member === 'function' ? member.bind(target) : member;
    },
  });
}

async function lastMoment(store: GraphStore): Promise<string> {
  const [last] = await store.changeSets([await store.lastChangeSet()]);
  return last?.moment ?? '';
}
