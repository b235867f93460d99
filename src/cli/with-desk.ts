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

export function printJson(context: CliContext, value: unknown): void {
  context.process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}
