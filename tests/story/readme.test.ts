import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { takeDemo } from '../../src/cli/demo.ts';
import { reachText } from '../../src/cli/reach-text.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { memoryStore } from '../support/memory-store.ts';
import { testWorld } from '../support/test-world.ts';

const readme = readFileSync(resolve(import.meta.dirname, '../../README.md'), 'utf8');

test('the answer in the README is the one that the command gives', async () => {
  const store = memoryStore();
  const questions = askStore(store);
  await takeDemo({ world: testWorld() }, { store, questions });
  const answer = await questions.reach({ piece: 'piece-shore-dish', page: { first: 7 } });
  const block = readme.slice(readme.indexOf('<!-- answer -->') + 15, readme.indexOf('<!-- /answer -->'));
  expect(block).toBe(`\n\n\`\`\`text\n${await reachText(answer, store)}\`\`\`\n\n`);
});
