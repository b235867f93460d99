import { createReadStream } from 'node:fs';
import { mkdir, readdir, rm } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { invariant } from '../errors.ts';
import { readGraphFile } from '../intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../questions/apply-graph-file.ts';
import { emptyReport } from '../questions/intake-report.ts';
import type { CliContext, Desk } from './context.ts';

const demoFolder = resolve(import.meta.dirname, '../../demo-graph');

/** Where the demo world is kept: under the working folder. */
export function demoStore(): string {
  return resolve('.store', 'demo.store');
}

/** The demo world in a fresh store under `.store/` of the working folder: what was tried in it before is gone. */
export async function openDemo(context: CliContext): Promise<Desk> {
  const file = demoStore();
  await mkdir(dirname(file), { recursive: true });
  for (const suffix of ['', '-wal', '-shm']) await rm(file + suffix, { force: true });
  const desk = await context.openDesk(file, { create: true });
  await takeDemo(context, desk);
  return desk;
}

/** Takes the demo world's graph files into a store. */
export async function takeDemo(context: Pick<CliContext, 'world'>, desk: Desk): Promise<void> {
  const files = (await readdir(demoFolder)).filter(name => name.endsWith('.jsonl')).sort();
  const all = async function* (): AsyncGenerator<Uint8Array> {
    for (const file of files) yield* createReadStream(join(demoFolder, file));
  };
  const report = await applyGraphFile(desk.store, context.world, readGraphFile(all(), {}), emptyReport('demo'), {
    intake: 'demo',
    who: 'demo',
    why: 'the demo world',
  });
  invariant(report.refused === 0, `the demo world is taken whole: ${report.problems[0]?.message ?? ''}`);
}
