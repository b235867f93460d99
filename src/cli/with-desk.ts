import { oneLine } from '../domain/text/one-line.ts';
import type { GivenGraph } from '../questions/questions.ts';
import type { CliContext, Desk } from './context.ts';
import type { CommonFlags } from './flags.ts';
import { type WhatIfFlags, whatIfOf } from './what-if-flags.ts';

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

/** Runs a command with an open store, on the graph that its flags ask about. */
export async function withGraph(
  context: CliContext,
  flags: CommonFlags & WhatIfFlags,
  run: (graph: GivenGraph) => Promise<void>,
): Promise<void> {
  // Before a store is opened for it.
  const whatIf = await whatIfOf(flags);
  await withDesk(context, flags, async desk => run(await desk.questions.given(whatIf)));
}

/** What records say may hold control characters, which a terminal would obey: they are printed as JSON escapes them. */
export function printText(context: CliContext, text: string): void {
  context.process.stdout.write(text.split('\n').map(oneLine).join('\n'));
}

export function printJson(context: CliContext, value: unknown): void {
  context.process.stdout.write(`${JSON.stringify(value, null, 2)}\n`);
}
