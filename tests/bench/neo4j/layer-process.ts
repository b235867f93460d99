import { execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/** The general-purpose layer, served in a process of its own. */
export interface LayerProcess {
  /** Address of its GraphQL endpoint. */
  readonly url: string;
  stop(): Promise<void>;
}

const given = join(import.meta.dirname, 'graphql-layer');
const installed = join(import.meta.dirname, '../../../.store/graphql-layer');

/** @param uri of the database, which asks for no password */
export async function startLayer(uri: string): Promise<LayerProcess> {
  install();
  const child = spawn(process.execPath, ['server.mjs', uri], { cwd: installed, stdio: ['ignore', 'pipe', 'inherit'] });
  process.once('exit', () => child.kill('SIGKILL'));
  const url = await new Promise<string>((resolve, reject) => {
    child.stdout.on('data', chunk => {
      const found = /at (http:\S+)/.exec(String(chunk));
      if (found !== null) resolve(found[1]!);
    });
    child.on('close', code => reject(new Error(`the layer ended with ${String(code)}`)));
  });
  return {
    url,
    stop: async () => {
      child.kill('SIGTERM');
      await once(child, 'close');
    },
  };
}

/** As its lockfile says, and again when that has changed: it needs another graphql than this project. */
function install(): void {
  const [wanted, found] = [given, installed].map(folder => join(folder, 'package-lock.json')) as [string, string];
  const isThere =
    existsSync(join(installed, 'node_modules')) &&
    existsSync(found) &&
    readFileSync(found, 'utf8') === readFileSync(wanted, 'utf8');
  mkdirSync(installed, { recursive: true });
  if (!isThere) rmSync(join(installed, 'node_modules'), { recursive: true, force: true });
  cpSync(given, installed, { recursive: true });
  if (!isThere) execFileSync('npm', ['ci', '--no-audit', '--no-fund', '--ignore-scripts'], { cwd: installed });
}
