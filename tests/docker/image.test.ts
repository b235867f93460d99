import { type ChildProcess, execFileSync, spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readCompose } from './compose-rules.ts';
import { type Entering, enterTree, joinTree, whyNoTree } from './enter-tree.ts';
import { type ImageTree, makeImageTree, volumeOf } from './image-tree.ts';

const project = resolve(import.meta.dirname, '../..');
const { server } = readCompose(readFileSync(join(project, 'docker-compose.yml'), 'utf8')).services;
const why = process.env['LONG_TESTS'] === '1' ? whyNoTree() : 'it is one of the long tests';

// No engine builds or runs anything here: see `makeImageTree` for what stands in for one.
describe.skipIf(why !== undefined)(
  `the image, made and run step by step${why === undefined ? '' : ` (skipped: ${why})`}`,
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'platestemma-image-'));
    const data = join(folder, 'volumes', 'data');
    let image: ImageTree;

    beforeAll(() => {
      image = makeImageTree(project, folder);
      execFileSync('mkdir', [join(folder, 'volumes')]);
      volumeOf(image.root, 'data', data);
    }, 300_000);
    afterAll(() => rmSync(folder, { recursive: true }));

    const as = (command: readonly string[], more: Partial<Entering> = {}): Entering => ({
      command,
      data,
      user: image.stage.one('USER').text,
      workdir: image.workdir,
      environment: image.environment,
      ...more,
    });
    const program = () => image.stage.one('ENTRYPOINT').words;
    const imageHealth = () => image.stage.one('HEALTHCHECK').words;

    test('holds what is built, and the packages of production alone', () => {
      expect(readdirSync(join(image.root, 'app')).sort()).toEqual(
        ['LICENSE', 'LICENSE-NOTES.md', 'demo-graph', 'dist', 'node_modules', 'package.json', 'schema'].sort(),
      );
      const { dependencies, devDependencies } = JSON.parse(
        readFileSync(join(project, 'package.json'), 'utf8'),
      ) as Record<'dependencies' | 'devDependencies', Record<string, string>>;
      const installed = (name: string) => existsSync(join(image.root, 'app/node_modules', name, 'package.json'));
      expect(Object.keys(dependencies).filter(name => !installed(name))).toEqual([]);
      expect(Object.keys(devDependencies).filter(installed)).toEqual([]);
    });

    describe('its tree', () => {
      const written = (more: Partial<Entering>) => {
        const script = `
        const { writeFileSync } = require('node:fs');
        const tried = path => { try { writeFileSync(path + '/probe', ''); return 'written'; } catch ({ code }) { return code; } };
        console.log(JSON.stringify(['/', '/app', '/app/dist', '/tmp', '/data'].map(tried)));`;
        return JSON.parse(
          execFileSync(...enterTree(image.root, as(['node', '-e', script], more)), { encoding: 'utf8' }),
        );
      };

      test('is written in /tmp and /data alone', () =>
        expect(written({})).toEqual(['EROFS', 'EROFS', 'EROFS', 'written', 'written']));

      test('belongs to another user, even where it could be written', () =>
        expect(written({ writable: true })).toEqual(['EACCES', 'EACCES', 'EACCES', 'written', 'written']));
    });

    test('takes records in', () => {
      const files = readdirSync(join(image.root, 'app/demo-graph')).filter(name => name.endsWith('.jsonl'));
      const command = [...program(), 'intake', 'graph', ...files.map(name => `/app/demo-graph/${name}`)];
      const { status, stderr } = spawnSync(...enterTree(image.root, as(command)), { encoding: 'utf8' });
      expect([status, stderr]).toEqual([0, expect.any(String)]);
    });

    test('is not healthy where nothing serves', () =>
      expect(spawnSync(...enterTree(image.root, as(imageHealth()))).status).toBe(1));

    test('serves, tells its health, draws, and stops when it is told to', async () => {
      const command = [...program(), ...image.stage.one('CMD').words];
      const serving = spawn(...enterTree(image.root, as(command)), { stdio: ['ignore', 'pipe', 'inherit'] });
      try {
        expect(await firstLine(serving)).toBe('Serving /data/graph.store at http://0.0.0.0:4000/graphql\n');
        const beside = (words: readonly string[]) =>
          spawnSync(...joinTree(serving.pid!, as(words)), { encoding: 'utf8' });
        expect(beside(imageHealth()).status).toBe(0);
        expect(beside(server!.healthcheck!.test.slice(1)).status).toBe(0);
        const drawing = `fetch('http://127.0.0.1:4000/draw/descent/work-shore-pleasures.png').then(async response =>
        console.log(response.status, response.headers.get('content-type'), (await response.arrayBuffer()).byteLength > 1000))`;
        expect(beside(['node', '-e', drawing]).stdout).toBe('200 image/png true\n');

        const told = performance.now();
        const ended = ending(serving);
        serving.kill(image.stage.one('STOPSIGNAL').text as NodeJS.Signals);
        expect(await ended).toEqual([0, null]);
        expect(performance.now() - told).toBeLessThan(seconds(server!.stop_grace_period!) * 1000);
      } finally {
        serving.kill('SIGKILL');
      }
    });
  },
);

function firstLine({ stdout }: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = '';
    stdout!.setEncoding('utf8').on('data', (piece: string) => {
      text += piece;
      if (text.includes('\n')) resolve(text.slice(0, text.indexOf('\n') + 1));
    });
    stdout!.once('end', () => reject(new Error(`expected a line, came ${JSON.stringify(text)}`)));
  });
}

function ending(child: ChildProcess): Promise<readonly [code: number | null, signal: NodeJS.Signals | null]> {
  return new Promise(resolve => child.once('exit', (code, signal) => resolve([code, signal])));
}

function seconds(duration: string): number {
  const [, number] = /^(\d+)s$/.exec(duration) ?? [];
  if (number === undefined) throw new Error(`expected whole seconds, came ${duration}`);
  return Number(number);
}
