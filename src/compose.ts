import { randomBytes } from 'node:crypto';
import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { CliContext, Desk } from './cli/context.ts';
import type { Config } from './config.ts';
import { askStore } from './questions/ask-store.ts';
import type { World } from './questions/ports.ts';
import { checkedGraphStore } from './store/checked-graph-store.ts';
import { openSqliteStore } from './store/sqlite/open.ts';
import { claimServing } from './store/sqlite/serve-lock.ts';

/** The world as it is: the system's clock, and its source of randomness, read in stretches since a call costs as much as a hundred ids. */
export function systemWorld(): World {
  let pool = new Uint8Array();
  return {
    now: () => new Date().toISOString(),
    random: bytes => {
      if (pool.length < bytes) pool = randomBytes(12 * 1024);
      const taken = pool.subarray(0, bytes);
      pool = pool.subarray(bytes);
      return taken;
    },
  };
}

/** Opens a store in a file with all that can be asked of it. */
export async function openDesk(
  file: string,
  config: Config,
  options: { readonly create?: boolean } = {},
): Promise<Desk> {
  if (options.create === true) await mkdir(dirname(file), { recursive: true });
  const store = checkedGraphStore(
    await openSqliteStore(file, { create: options.create === true, questionLimit: config.questionLimit }),
  );
  return { store, questions: askStore(store) };
}

/** What the command line needs of the world. */
export function composeCli(config: Config, stopped: () => Promise<void>): CliContext {
  return {
    process,
    world: systemWorld(),
    claimServing: async file => {
      await mkdir(dirname(file ?? config.store), { recursive: true });
      return claimServing(file ?? config.store);
    },
    storePath: file => file ?? config.store,
    openDesk: (file, options) => openDesk(file ?? config.store, config, options),
    serve: async (desk, options) => {
      // Loaded by who serves alone: it is a third of the program.
      const [{ createApi }, { serve }] = await Promise.all([import('./api/create-api.ts'), import('./api/serve.ts')]);
      return serve(createApi({ ...desk, limits: { time: config.questionLimit } }), options);
    },
    partial: () => {
      process.exitCode = 1;
    },
    stopped,
  };
}
