import { run } from '@stricli/core';
import { buildCli } from '../../src/cli/app.ts';
import type { CliContext } from '../../src/cli/context.ts';
import { exitCodeOfProcess } from '../../src/cli/exit.ts';
import { composeCli } from '../../src/compose.ts';
import { readConfig } from '../../src/config.ts';
import { testWorld } from './test-world.ts';

export interface CliRun {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in this process, as main.ts would, with the clock and the ids of a test world, and with what else is given. */
export async function runCli(
  args: readonly string[],
  stdin: string | Uint8Array = '',
  given: Partial<CliContext> = {},
): Promise<CliRun> {
  let out = '';
  let err = '';
  const fake: CliContext['process'] & { exitCode?: number | string | null } = {
    stdout: {
      write: text => {
        out += text;
      },
    },
    stderr: {
      write: text => {
        err += text;
      },
    },
    stdin: (async function* () {
      yield Buffer.from(stdin);
    })(),
  };
  const composed = composeCli(readConfig({}), async () => undefined);
  const partial = (): void => {
    fake.exitCode = 1;
  };
  await run(await buildCli('0.0.0', args[0]), args, {
    ...composed,
    process: fake,
    world: testWorld(),
    partial,
    ...given,
  });
  return { code: exitCodeOfProcess(fake.exitCode), out, err };
}

/** What a command writes as JSON, where it is done without fault. */
export async function jsonOf(args: readonly string[]): Promise<unknown> {
  const { code, out, err } = await runCli([...args, '--json']);
  if (code !== 0) throw new Error(`${args.join(' ')} ended with ${code}: ${err}`);
  return JSON.parse(out);
}
