#!/usr/bin/env node
const [major] = process.versions.node.split('.');
if (Number(major) < 24) {
  process.stderr.write(`platestemma needs Node.js 24 or later; this is ${process.versions.node}.\n`);
  process.exit(2);
}
// Loaded only now: an older Node could not even read what follows.
if (process.argv[2] === 'intake') {
  const { startLean } = await import('./lean-process.ts');
  startLean();
}
const { runMain } = await import('./run-main.ts');
await runMain();

export {};
