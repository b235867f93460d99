import { randomBytes } from 'node:crypto';
import { logToStderr } from './api/log.ts';
import type { CliContext, Desk } from './cli/context.ts';
import type { Config } from './config.ts';
import { askStore } from './questions/ask-store.ts';
import { commandStore } from './questions/command-store.ts';
import type { World } from './questions/ports.ts';
import { checkedGraphStore } from './store/checked-graph-store.ts';
import type { GraphStore } from './store/graph-store.ts';
import { isServerAddress, readAddress } from './store/neo4j/address.ts';
import { makeFolderOf } from './store/sqlite/folder.ts';
import { openSqliteStore } from './store/sqlite/open.ts';
import { removeStore, replaceStore } from './store/sqlite/replace-store.ts';
import { claimServing } from './store/sqlite/serve-lock.ts';
import { watchedClock } from './store/watched-clock.ts';

/** The world as it is: the system's clock, and its source of randomness, read in stretches since a call costs as much as a hundred ids. */
export function systemWorld(): World {
  let pool = new Uint8Array();
  let used = 0;
  return {
    now: () => new Date().toISOString(),
    random: bytes => {
      if (pool.length - used < bytes) {
        pool = randomBytes(Math.max(bytes, 12 * 1024));
        used = 0;
      }
      used += bytes;
      return pool.subarray(used - bytes, used);
    },
  };
}

/** Opens a store, in a file or kept by a server, with all that can be asked of it. */
export async function openDesk(
  name: string,
  config: Config,
  options: { readonly create?: boolean } = {},
  world = systemWorld(),
): Promise<Desk> {
  const engine = await openStore(name, config, options.create === true);
  const store = checkedGraphStore(
    watchedClock(engine, behind => logToStderr({ level: 'warn', event: 'clock-behind', ...behind })),
  );
  return { store, questions: askStore(store), commands: commandStore(store, world) };
}

async function openStore(name: string, config: Config, create: boolean): Promise<GraphStore> {
  const { questionLimit } = config;
  if (isServerAddress(name)) {
    // Loaded for a server alone: the driver takes as long to load as all else together.
    const { openNeo4jStore } = await import('./store/neo4j/open.ts');
    return openNeo4jStore(name, { create, questionLimit, password: config.storePassword });
  }
  if (create) await makeFolderOf(name);
  return openSqliteStore(name, { create, questionLimit });
}

/** Any number of processes may serve what a server keeps; a file has one. */
async function claim(name: string): Promise<() => void> {
  if (isServerAddress(name)) return () => undefined;
  await makeFolderOf(name);
  return claimServing(name);
}

/** What the command line needs of the world. */
export function composeCli(config: Config, stopped: () => Promise<void>): CliContext {
  const world = systemWorld();
  return {
    process,
    world,
    who: config.who,
    claimServing: name => claim(name ?? config.store),
    storeFile: (name = config.store) => (isServerAddress(name) ? undefined : name),
    removeStore,
    replaceStore,
    storePath: (name = config.store) => (isServerAddress(name) ? readAddress(name).server : name),
    openDesk: (name, options) => openDesk(name ?? config.store, config, options, world),
    serve: async (desk, options) => {
      // Loaded by who serves alone: it is a third of the program.
      const [{ createApi }, { serve }] = await Promise.all([import('./api/create-api.ts'), import('./api/serve.ts')]);
      return serve(createApi({ ...desk, who: config.who, limits: { time: config.questionLimit } }), options);
    },
    partial: () => {
      process.exitCode = 1;
    },
    stopped,
  };
}
