import { execFileSync, type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdirSync, readFileSync } from 'node:fs';
import { basename, delimiter, dirname, join, resolve } from 'node:path';
import { letThrough } from './dockerfile-rules.ts';
import { enterTree, prepareTree } from './enter-tree.ts';
import { finalStage, readDockerfile, type Stage, type Step } from './read-dockerfile.ts';

/** What a Dockerfile makes, as a tree of files and how it is run. */
export interface ImageTree {
  readonly root: string;
  readonly stage: Stage;
  readonly workdir: string;
  readonly environment: Readonly<Record<string, string>>;
}

/**
 * Goes through a Dockerfile without an engine: a clean copy of what .dockerignore lets through, then COPY by copying and
 * RUN by the shell of this system. What FROM brings is this system's own, with this process's Node in place of the image's.
 */
export function makeImageTree(project: string, folder: string): ImageTree {
  const context = join(folder, 'context');
  for (const name of letThrough(readFileSync(join(project, '.dockerignore'), 'utf8'))) {
    cpSync(join(project, name), join(context, name), { recursive: true });
  }
  const stages = readDockerfile(readFileSync(join(project, 'Dockerfile'), 'utf8'));
  const roots = new Map<string | undefined, string>();
  for (const stage of stages) {
    const root = join(folder, `stage-${roots.size}`);
    prepareTree(root);
    roots.set(stage.name, root);
    takeSteps(stage, root, from => (from === undefined ? context : roots.get(from)!));
  }
  const stage = finalStage(stages);
  return {
    root: roots.get(stage.name)!,
    stage,
    workdir: stage.all('WORKDIR').at(-1)?.text ?? '/',
    environment: Object.fromEntries(stage.all('ENV').flatMap(step => step.words.map(word => pair(word)))),
  };
}

function takeSteps(stage: Stage, root: string, sourceOf: (from: string | undefined) => string): void {
  let workdir = '/';
  for (const step of stage.steps) {
    if (step.keyword === 'WORKDIR') {
      workdir = resolve(workdir, step.text);
      mkdirSync(join(root, workdir), { recursive: true });
    }
    if (step.keyword === 'COPY') copy(step, sourceOf(step.flags['from']), join(root, workdir));
    if (step.keyword === 'RUN') run(step, root, workdir);
  }
}

/** A folder's content goes to the target; a file into it, where the target ends in a slash. */
function copy({ words }: Step, source: string, workdir: string): void {
  const target = words.at(-1)!;
  for (const word of words.slice(0, -1)) {
    const to = join(workdir, target, target.endsWith('/') ? basename(word) : '');
    cpSync(join(source, word), to, { recursive: true, verbatimSymlinks: true });
  }
}

const asText = { encoding: 'utf8' } as const;

/** npm works in the tree from outside, where it finds its registry and its cache; all else is run with the tree as its root. */
function run({ text }: Step, root: string, workdir: string): void {
  if (!text.startsWith('npm ')) {
    succeed(spawnSync(...enterTree(root, { command: ['sh', '-euc', text], writable: true, workdir }), asText), text);
    return;
  }
  const places = (process.env['PATH'] ?? '').split(delimiter).filter(place => !place.endsWith('node_modules/.bin'));
  const env = { ...process.env, PATH: [dirname(process.execPath), ...places].join(delimiter), NODE_ENV: undefined };
  succeed(spawnSync('sh', ['-euc', text], { ...asText, cwd: join(root, workdir), env }), text);
}

function succeed({ status, stdout, stderr }: SpawnSyncReturns<string>, text: string): void {
  if (status !== 0) throw new Error(`${text} ended with ${status}:\n${stdout}${stderr}`);
}

function pair(word: string): readonly [string, string] {
  const at = word.indexOf('=');
  return [word.slice(0, at), word.slice(at + 1)];
}

/** A volume made of a folder of the tree, with its owner and mode, as an engine fills one that is new. */
export function volumeOf(root: string, path: string, volume: string): void {
  execFileSync('cp', ['-a', join(root, path), volume]);
  chmodSync(dirname(volume), 0o755);
}
