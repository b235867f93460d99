import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

/** What can be set from outside, read once. */
export interface Config {
  /** File of the store. */
  readonly store: string;
  /** Longest time a question may take, in milliseconds. */
  readonly questionLimit: number;
}

/** From the environment: PLATESTEMMA_STORE, PLATESTEMMA_QUESTION_LIMIT (milliseconds). */
export function readConfig(env: Readonly<Partial<Record<string, string>>>): Config {
  const limit = Number(env['PLATESTEMMA_QUESTION_LIMIT'] ?? 10_000);
  return Object.freeze({
    store: resolve(env['PLATESTEMMA_STORE'] ?? join(dataFolder(env), 'platestemma', 'graph.store')),
    questionLimit: Number.isFinite(limit) && limit > 0 ? limit : 10_000,
  });
}

/** Where the system keeps a user's data: XDG base directories, or what macOS and Windows have for it. */
function dataFolder(env: Readonly<Partial<Record<string, string>>>): string {
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Application Support');
  if (process.platform === 'win32') return env['LOCALAPPDATA'] ?? join(homedir(), 'AppData', 'Local');
  return env['XDG_DATA_HOME'] ?? join(homedir(), '.local', 'share');
}
