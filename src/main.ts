#!/usr/bin/env node
const [major] = process.versions.node.split('.');
if (Number(major) < 24) {
  process.stderr.write(`platestemma needs Node.js 24 or later; this is ${process.versions.node}.\n`);
  process.exit(2);
}
// Loaded only now: an older Node could not even read what follows.
// Who copies a history holds whole change sets, of whatever size they are, and two stores.
const megabytes = { intake: 80, transfer: 512, backup: 512, restore: 512 }[process.argv[2] ?? ''];
if (megabytes !== undefined) {
  const { startLean } = await import('./lean-process.ts');
  startLean(megabytes);
}
const { runMain } = await import('./run-main.ts');
await runMain();

export {};
