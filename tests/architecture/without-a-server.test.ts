import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';

/** Whoever has neither Docker nor Java gets green tests, with the reason why some were left out. */
test('where no Neo4j server can be had, what needs one is skipped, and nothing fails', async () => {
  const vitest = new URL('../../node_modules/vitest/vitest.mjs', import.meta.url).pathname;
  const given = ['run', '--project', 'neo4j', '--no-isolate', '--reporter', 'default'];
  const { HOME, OUTSIDE_DATA } = process.env;
  const env = { HOME, OUTSIDE_DATA, PATH: '/nowhere', DOCKER_HOST: 'tcp://127.0.0.1:9', NO_COLOR: '1' };
  const { stdout, stderr } = await promisify(execFile)(process.execPath, [vitest, ...given], { env });
  expect(stdout + stderr).toContain('Tests with Neo4j are skipped: NEO4J_TEST_URI is not set; Docker does not answer;');
  expect(stdout).toMatch(/Tests +\d+ passed \| \d{3} skipped/);
}, 120_000);
