import { readFileSync } from 'node:fs';
import { run } from '@stricli/core';
import { buildCli } from './cli/app.ts';
import { errorText, exitCode, exitCodeOfProcess } from './cli/exit.ts';
import { refusedOutput } from './cli/refused-output.ts';
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
    const told = refusedOutput(error, 'standard output');
    process.stderr.write(`${errorText(told)}\n`);
    process.exit(exitCode(told));
  });
  const args = process.argv.slice(2);
  await run(await buildCli(version, args[0]), args, composeCli(readConfig(process.env), stopped));
  process.exitCode = exitCodeOfProcess(process.exitCode);
}

const stopSignals = ['SIGINT', 'SIGTERM'] as const;

/** After the first signal the next has its usual meaning: it ends the process at once. */
function stopped(): Promise<void> {
  return new Promise(resolve => {
    const first = (): void => {
      for (const signal of stopSignals) process.off(signal, first);
      resolve();
    };
    for (const signal of stopSignals) process.on(signal, first);
  });
}
