import { oneLine } from '../domain/text/one-line.ts';
import type { CliContext, Desk } from './context.ts';
import type { CommonFlags } from './flags.ts';

/** Runs a command with an open store, and closes it whatever happens. */
export async function withDesk(
  context: CliContext,
  flags: CommonFlags,
  run: (desk: Desk) => Promise<void>,
  options: { readonly create?: boolean } = {},
): Promise<void> {
  const desk = await context.openDesk(flags.store, options);
  try {
    await run(desk);
  } finally {
    await desk.store.close();
  }
}

/** What records say may hold control characters, which a terminal would obey: they are printed as JSON escapes them. */
export function printText(context: CliContext, text: string): void {
  context.process.stdout.write(text.split('\n').map(oneLine).join('\n'));
}

export function printJson(context: CliContext, value: unknown): void {
  context.process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}
