import { readFileSync } from 'node:fs';
import { run } from '@stricli/core';
import { buildCli } from './cli/app.ts';
import { exitCodeOfProcess } from './cli/exit.ts';
import { composeCli } from './compose.ts';
import { readConfig } from './config.ts';

/** The process: arguments in, one command run, exit code out; SIGINT and SIGTERM ask a server to stop. */
export async function runMain(): Promise<void> {
  const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as {
    version: string;
  };
  // A reader of our output may have gone (`| head`): that is no fault.
  process.stdout.on('error', error => {
    if ((error as NodeJS.ErrnoException).code === 'EPIPE') process.exit(0);
    throw error;
  });
  const args = process.argv.slice(2);
  await run(await buildCli(version, args[0]), args, composeCli(readConfig(process.env), stopped));
  process.exitCode = exitCodeOfProcess(process.exitCode);
}

function stopped(): Promise<void> {
  return new Promise(resolve => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
}
