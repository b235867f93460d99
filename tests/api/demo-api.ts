import { type Api, type ApiOptions, createApi } from '../../src/api/create-api.ts';
import { takeDemo } from '../../src/cli/demo.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import type { Questions } from '../../src/questions/questions.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { engines } from '../support/demo-store.ts';
import { type Engine, enginesOfRun } from '../support/describe-on-engines.ts';
import { testWorld } from '../support/test-world.ts';

/** A call of the store: its method and what it was given. */
export interface StoreCall {
  readonly method: string;
  readonly args: readonly unknown[];
}

export interface DemoApi {
  readonly api: Api;
  readonly store: GraphStore;
  readonly questions: Questions;
  /** Calls of the store since the list was last emptied. */
  readonly calls: StoreCall[];
  readonly logged: Readonly<Record<string, unknown>>[];
}

/** The API over the demo world, on an engine of this run of tests (the first), with every call of the store written down. */
export async function demoApi(options: Partial<ApiOptions> = {}, name: Engine = enginesOfRun[0]!): Promise<DemoApi> {
  const engine = await engines[name]();
  await takeDemo(
    { world: testWorld() },
    { store: engine, questions: askStore(engine), commands: commandStore(engine, testWorld()) },
  );
  const calls: StoreCall[] = [];
  const logged: Readonly<Record<string, unknown>>[] = [];
  const store = recording(engine, calls);
  const questions = askStore(store);
  const commands = commandStore(store, testWorld(7));
  const api = createApi({ store, questions, commands, who: 'a tester', log: event => logged.push(event), ...options });
  return { api, store, questions, calls, logged };
}

function recording(store: GraphStore, calls: StoreCall[]): GraphStore {
  return new Proxy(store, {
    get(target, name) {
      const member: unknown = Reflect.get(target, name);
      if (typeof member !== 'function') return member;
      return (...args: readonly unknown[]) => {
        calls.push({ method: String(name), args });
        return member.apply(target, args);
      };
    },
  });
}
