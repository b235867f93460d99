import { PlatestemmaError } from '../../errors.ts';
import type { GraphStore } from '../../store/graph-store.ts';

/** A store of which some reads are answered otherwise, and which is not written to. */
export function overStore(base: GraphStore, reads: Partial<Omit<GraphStore, 'write'>>): GraphStore {
  return new Proxy(base, {
    get(target, name: keyof GraphStore) {
      if (name === 'write') return refuse;
      const own = reads[name];
      if (own !== undefined) return own;
      const member: unknown = target[name];
      return typeof member === 'function' ? member.bind(target) : member;
    },
  });
}

async function refuse(): Promise<never> {
  throw new PlatestemmaError('BROKEN_PROMISE', 'a graph that is taken otherwise than it is recorded is not written to');
}
