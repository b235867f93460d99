import { readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { parseSync } from 'oxc-parser';

export interface Import {
  /** File that imports, from the root of the project. */
  readonly file: string;
  /** File imported, from the root of the project, or the name of a package. */
  readonly target: string;
  /** Only types are taken, so that nothing is loaded. */
  readonly typeOnly: boolean;
}

/** Every import of a file: static, re-exported and dynamic. */
export function readImports(file: string, text = readFileSync(file, 'utf8')): Import[] {
  const { module } = parseSync(file, text);
  const found = (specifier: string, typeOnly: boolean): Import => ({
    file,
    target: specifier.startsWith('.') ? posix.join(posix.dirname(file), specifier) : specifier,
    typeOnly,
  });
  return [
    ...module.staticImports.map(({ moduleRequest, entries }) =>
      found(moduleRequest.value, entries.length > 0 && entries.every(entry => entry.isType)),
    ),
    ...module.staticExports.flatMap(({ entries }) =>
      entries.flatMap(entry => (entry.moduleRequest === null ? [] : [found(entry.moduleRequest.value, entry.isType)])),
    ),
    ...module.dynamicImports.map(({ moduleRequest }) =>
      found(text.slice(moduleRequest.start + 1, moduleRequest.end - 1), false),
    ),
  ];
}
