import { existsSync } from 'node:fs';
import { buildCommand } from '@stricli/core';
import { PlatestemmaError } from '../errors.ts';
import { restoreJson, restoreText } from './backup-text.ts';
import type { CliContext } from './context.ts';
import { type CopiedHistory, copyIntoStore, refuseDifferences } from './copy-history.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { fileSource, type HistorySource } from './history-source.ts';
import { printJson, printText } from './with-desk.ts';
import { WrongUse } from './wrong-use.ts';

interface RestoreFlags extends CommonFlags {
  readonly replace?: boolean;
}

export const restore = buildCommand<RestoreFlags, [string], CliContext>({
  docs: {
    brief: 'Make a store of a backup',
    fullDescription: [
      'Make a store of a file that "backup" wrote: everything is as it was then, with its history. The file is read to its end',
      'first, so that a damaged one changes nothing; the store is read again at the end, counted and summed, sort by sort, and',
      'compared with the file. It stands under its name only when all agree.',
      '',
      'A store that holds something is never written over. With --replace one in a file makes way, and is kept beside it under',
      'the name that is told. While a server serves the file, or another command works on it, it is not replaced: stop that',
      'first. A database of a server must be empty; whoever serves it meanwhile sees the graph come, change set by change set,',
      'and a restore that was broken off goes on when it is started again.',
      '',
      '  platestemma restore graph-2026-02-01.jsonl.gz --store library.store',
      '  platestemma restore graph-2026-02-01.jsonl.gz --store library.store --replace',
      '  platestemma restore graph-2026-02-01.jsonl.gz --store neo4j://neo4j@127.0.0.1:7687',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [{ parse: String, brief: 'File that backup wrote', placeholder: 'file' }],
    },
    flags: {
      ...commonFlags,
      replace: {
        kind: 'boolean',
        optional: true,
        withNegated: false,
        brief: 'Put the backup in the place of a store that holds something, and keep that beside it',
      },
    },
  },
  async func(flags, file) {
    const started = performance.now();
    const target = this.storeFile(flags.store);
    if (target === undefined && flags.replace === true)
      throw new WrongUse('--replace is for a store in a file: empty the database of a server by its own means');
    const source = await fileSource(file);
    const done =
      target === undefined ? await intoServer(this, source, flags) : await intoPlace(this, source, target, flags);
    const store = this.storePath(flags.store);
    const report = { ...done, file, store, seconds: (performance.now() - started) / 1000 };
    if (flags.json === true) printJson(this, restoreJson(report));
    else printText(this, restoreText(report));
  },
});

interface Restored {
  readonly sums: CopiedHistory['to'];
  readonly kept: string | undefined;
}

async function intoServer(context: CliContext, source: HistorySource, { store }: RestoreFlags): Promise<Restored> {
  const { from, to } = await copyIntoStore(context, source, store);
  refuseDifferences(from, to);
  return { sums: to, kept: undefined };
}

/** Made beside the file, and put in its place when it is whole: whatever happens, what stands there is one or the other. */
async function intoPlace(
  context: CliContext,
  source: HistorySource,
  target: string,
  flags: RestoreFlags,
): Promise<Restored> {
  const endClaim = await context.claimServing(target);
  const made = `${target}.restoring`;
  try {
    const isHeld = await holdsSomething(context, target, flags.replace === true);
    await context.removeStore(made);
    const { from, to } = await copyIntoStore(context, source, made);
    refuseDifferences(from, to);
    const kept = isHeld ? freeName(`${target}.before-${context.world.now().replaceAll(/[:.]/g, '-')}`) : undefined;
    await context.replaceStore(made, target, kept);
    return { sums: to, kept };
  } finally {
    await context.removeStore(made);
    endClaim();
  }
}

function freeName(name: string): string {
  for (let n = 2, free = name; ; free = `${name}-${n++}`) if (!existsSync(free)) return free;
}

/**
 * Whether there is something in the place that is to be kept.
 * @param replaces it makes way, even what cannot be opened
 * @throws TARGET_NOT_EMPTY for what may not make way
 */
async function holdsSomething(context: CliContext, target: string, replaces: boolean): Promise<boolean> {
  if (!existsSync(target)) return false;
  const changeSets = await changeSetsIn(context, target).catch(error => {
    const isDamaged = error instanceof PlatestemmaError && ['STORE_NOT_OURS', 'STORE_NEWER'].includes(error.code);
    if (replaces && isDamaged) return undefined;
    throw error;
  });
  if (changeSets === 0) return false;
  if (replaces) return true;
  throw new PlatestemmaError(
    'TARGET_NOT_EMPTY',
    `expected no store at "${target}", or an empty one, came one with ${changeSets} change sets: --replace puts the backup in its place and keeps it beside`,
    { place: { file: target } },
  );
}

async function changeSetsIn(context: CliContext, target: string): Promise<number> {
  const { store } = await context.openDesk(target);
  try {
    return await store.lastChangeSet();
  } finally {
    await store.close();
  }
}
