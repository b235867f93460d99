import { run, type StricliDynamicCommandContext } from '@stricli/core';
import { expect, test } from 'vitest';
import { buildCli } from '../../src/cli/app.ts';
import type { CliContext } from '../../src/cli/context.ts';
import { runCli } from '../support/run-cli.ts';

test('help names every command, in the order in which they are needed', async () => {
  const { code, out } = await runCli(['--help']);
  const named = out.slice(out.indexOf('COMMANDS')).matchAll(/^ {2}([a-z]+) {2,}/gm);
  expect(code).toBe(0);
  expect([...named].map(([, name]) => name)).toEqual([
    ...['serve', 'intake', 'record', 'undo', 'ask', 'find', 'cite', 'draw'],
    ...['export', 'transfer', 'backup', 'restore', 'conventions', 'check'],
  ]);
});

test.each([
  'serve',
  'intake',
  'record',
  'undo',
  'ask',
  'find',
  'cite',
  'draw',
  'export',
  'transfer',
  'backup',
  'restore',
  'check',
])('%s says the same whether the other commands are loaded beside it or not', async name => {
  const alone = await helpOf(name, name);
  expect(alone).toContain(`platestemma ${name}`);
  expect(alone).toBe(await helpOf(name, undefined));
});

async function helpOf(command: string, loaded: string | undefined): Promise<string> {
  let written = '';
  const write = (text: string): void => {
    written += text;
  };
  const context = { process: { stdout: { write }, stderr: { write } } };
  const cli = await buildCli('0.0.0', loaded);
  await run(cli, [command, '--help'], context as unknown as StricliDynamicCommandContext<CliContext>);
  return written;
}
