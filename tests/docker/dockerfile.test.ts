import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { dockerfileFaults, letThrough, sources } from './dockerfile-rules.ts';
import { finalStage, readDockerfile } from './read-dockerfile.ts';

const root = resolve(import.meta.dirname, '../..');
const text = readFileSync(join(root, 'Dockerfile'), 'utf8');
const ignored = readFileSync(join(root, '.dockerignore'), 'utf8');
const stages = readDockerfile(text);

describe('the Dockerfile', () => {
  test('has no fault', () => expect(dockerfileFaults(text)).toEqual([]));

  test.each([
    [':24.21.0-bookworm-slim AS', ':24 AS', 'an image names no exact release'],
    [':24.21.0-bookworm-slim AS', ':24.20.0-bookworm-slim AS', 'the stages have different Nodes'],
    ['npm ci ', 'npm install ', 'packages do not come from the lock file'],
    ['npm ci ', 'npm install ', 'packages are asked of the registry anew'],
    ['npm ci --ignore-scripts', 'npm ci', 'scripts of packages are run'],
    ['--omit=dev --ignore-scripts', '--omit=dev', 'scripts of packages are run'],
    ['npm prune --omit=dev ', 'npm prune ', 'packages of development stay'],
    ['RUN install', 'RUN npm run build; install', 'the final stage runs npm'],
    ['COPY src ./src', 'COPY . .', 'everything is copied'],
    ['COPY src ./src', 'ADD src ./src', 'something is fetched'],
    ['USER 1000:1000', 'USER root', 'it runs as root, or as a name'],
    ['USER 1000:1000', '', 'it runs as root, or as a name'],
    ['["node", "/app/dist/main.js"]', 'node /app/dist/main.js', 'a shell stands before the program'],
    ['["node", "/app/dist/main.js"]', '["npm", "start"]', 'a shell stands before the program'],
    ['CMD ["serve", "--host"', 'CMD [serve, "--host"', 'its arguments go through a shell'],
    ['CMD ["node", "-e"', 'CMD node ["-e"', 'its health is not asked'],
    ['STOPSIGNAL SIGTERM', 'STOPSIGNAL SIGKILL', 'it is not stopped by SIGTERM'],
    ['NODE_ENV=production', 'PLATESTEMMA_STORE_PASSWORD=open', 'a secret stands in it'],
  ])('%s as %s is a fault', (from, to, fault) => expect(dockerfileFaults(changed(from, to))).toContain(fault));

  test.each([
    ['WORKDIR /app', 'WORKDRI /app', 'Unknown instruction: WORKDRI'],
    ['--interval=30s', '--interval=soon', 'time: invalid duration soon'],
    ['EXPOSE 4000', 'EXPOSE http', 'Invalid containerPort: http'],
  ])('%s as %s is found by the linter', (from, to, message) =>
    expect(dockerfileFaults(changed(from, to))).toContainEqual(expect.stringMatching(`^line \\d+: ${message}$`)),
  );

  test('of one stage is a fault', () =>
    expect(dockerfileFaults(text.slice(text.lastIndexOf('FROM')))).toContain('it is built in one stage'));

  test('serves, tells and asks of one port', () => {
    const final = finalStage(stages);
    const [, port] = /--port (\d+)$/.exec(final.one('CMD').words.join(' '))!;
    expect(final.one('EXPOSE').words).toEqual([port]);
    expect(final.one('HEALTHCHECK').text).toContain(`http://127.0.0.1:${port}/health`);
  });
});

describe('.dockerignore', () => {
  test('lets through what is copied, which is there, and no more', () => {
    const copied = [...new Set(sources(stages))].sort();
    expect([...letThrough(ignored)].sort()).toEqual(copied);
    expect(copied.filter(name => !existsSync(join(root, name)))).toEqual([]);
  });

  test.each(['!src', 'node_modules', '*\n!src/**'])('that is %j is refused', other =>
    expect(() => letThrough(other)).toThrow('expected .dockerignore to be'),
  );
});

/** The Dockerfile with a fault in it. */
function changed(from: string, to: string): string {
  const faulty = text.replace(from, to);
  if (faulty === text) throw new Error(`the Dockerfile has no ${JSON.stringify(from)}`);
  return faulty;
}
