import { readdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';
import { markedTable } from './marked-table.ts';
import { type Import, readImports } from './read-imports.ts';

/** The rules as DEVELOPERS.md has them: for each part of src, what it may import. */
const rules = new Map(
  markedTable('imports').flatMap(([from, targets]) =>
    from!.split(', ').map(part => [part, targets!.split(', ').map(target => target.trim())] as const),
  ),
);

/** Files directly in src compose the others; `errors` stands below all. */
const topFiles = ['main', 'run-main', 'lean-process', 'compose', 'config', 'generate'].map(name => `src/${name}.ts`);

const ports = ['src/store/graph-store.ts', 'src/store/surroundings.ts', 'src/questions/ports.ts'];

function partOf(file: string): string {
  if (file === 'src/errors.ts') return 'errors';
  return topFiles.includes(file) ? 'compose' : (file.split('/')[1] ?? file);
}

/** Whether a word of the rules allows an import. */
function allows(word: string, { file, target, typeOnly }: Import): boolean {
  if (word === 'everything') return true;
  if (word === 'the ports') return ports.includes(target);
  if (word === 'the same engine') return engineOf(target) === undefined || engineOf(target) === engineOf(file);
  const typed = /^(.*) types$/.exec(word);
  if (typed !== null) return typeOnly && typed[1]!.split(' and ').includes(partOf(target));
  return word === partOf(target);
}

/** A part is whole in itself; only the store is several, one an engine. */
function withinItself({ file, target }: Import): boolean {
  return partOf(file) === partOf(target) && partOf(file) !== 'store';
}

/** Folder of an engine in src/store; undefined for what engines share. Other parts are no engine. */
function engineOf(file: string): string | undefined {
  const [, part, folder, name] = file.split('/');
  if (part !== 'store') return 'none';
  return name === undefined ? undefined : folder;
}

/** Imports that the rules do not allow, as lines to read. */
function breaches(imports: readonly Import[]): string[] {
  return imports
    .filter(({ target }) => target.startsWith('src/'))
    .filter(each => !withinItself(each))
    .filter(each => !(rules.get(partOf(each.file)) ?? []).some(word => allows(word, each)))
    .map(({ file, target }) => `${file} imports ${target}`);
}

const root = resolve(import.meta.dirname, '../..');
const files = readdirSync(resolve(root, 'src'), { recursive: true, encoding: 'utf8' })
  .filter(file => file.endsWith('.ts'))
  .map(file => `src/${file}`)
  .sort();
const imports = files.flatMap(file => readImports(file));

describe('who may import whom', () => {
  test('every part of src has a rule', () => {
    const parts = new Set(files.map(partOf));
    expect([...parts].filter(part => part !== 'errors' && !rules.has(part))).toEqual([]);
  });

  test('no import breaks a rule', () => {
    expect(breaches(imports)).toEqual([]);
  });

  test('errors stand on nothing', () => {
    expect(imports.filter(({ file }) => file === 'src/errors.ts')).toEqual([]);
  });

  test('the domain does no input or output: it loads no package but the schema checker', () => {
    const packages = imports.filter(({ file, target }) => partOf(file) === 'domain' && !target.startsWith('src/'));
    expect(packages.map(({ file, target }) => `${file}: ${target}`)).toEqual([
      'src/domain/model/check-row-message.ts: typebox/error',
      'src/domain/model/form-check.ts: typebox/schema',
    ]);
  });

  test('imports between files have their extension', () => {
    expect(imports.filter(({ target }) => target.startsWith('src/') && !/\.(ts|json)$/.test(target))).toEqual([]);
  });
});

describe('a breach is found', () => {
  const found = (file: string, text: string) => breaches(readImports(file, text));

  test.each([
    [
      'a static import',
      'src/domain/model/id.ts',
      "import { x } from '../../store/graph-store.ts';",
      'src/store/graph-store.ts',
    ],
    ['a type', 'src/domain/model/id.ts', "import type { X } from '../../api/x.ts';", 'src/api/x.ts'],
    ['a re-export', 'src/store/sqlite/x.ts', "export { x } from '../../questions/x.ts';", 'src/questions/x.ts'],
    ['a dynamic import', 'src/output/cite/x.ts', "await import('../../intake/x.ts');", 'src/intake/x.ts'],
    ['one engine by another', 'src/store/neo4j/x.ts', "import { x } from '../sqlite/x.ts';", 'src/store/sqlite/x.ts'],
    [
      'an engine by the API',
      'src/api/x.ts',
      "import { x } from '../store/sqlite/open.ts';",
      'src/store/sqlite/open.ts',
    ],
    ['a value where types are allowed', 'src/questions/x.ts', "import { x } from '../intake/x.ts';", 'src/intake/x.ts'],
  ])('%s', (_what, file, text, target) => {
    expect(found(file, text)).toEqual([`${file} imports ${target}`]);
  });

  test('what is allowed is none', () => {
    expect(found('src/questions/x.ts', "import type { X } from '../intake/x.ts';")).toEqual([]);
    expect(found('src/store/sqlite/x.ts', "import { x } from '../graph-store.ts'; import './y.ts';")).toEqual([]);
    expect(found('src/api/x.ts', "import type { GraphStore } from '../store/graph-store.ts';")).toEqual([]);
  });
});
