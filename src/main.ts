#!/usr/bin/env node
const [major] = process.versions.node.split('.');
if (Number(major) < 24) {
  process.stderr.write(`platestemma needs Node.js 24 or later; this is ${process.versions.node}.\n`);
  process.exit(2);
}
// Loaded only now: an older Node could not even read what follows.
const { heapFor, startLean } = await import('./lean-process.ts');
const megabytes = heapFor(process.argv.slice(2));
if (megabytes !== undefined) startLean(megabytes);
const { runMain } = await import('./run-main.ts');
await runMain();

export {};
