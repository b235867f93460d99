import type { CslNode } from 'citeproc';
import { PlatestemmaError } from '../../errors.ts';
import { type BundledLocale, bundledLocales, bundledStyles, defaultStyle } from './bundled-styles.ts';
import { packedStyle } from './csl-nodes.ts';
import { parseCsl } from './csl-xml.ts';
import { nearNames } from './near-names.ts';

export interface ChosenStyle {
  /** Short name of a bundled style, or the identifier or title inside a user's own. */
  readonly name: string;
  /** Same key, same style. */
  readonly key: string;
  readonly node: (locale: BundledLocale) => CslNode;
  /** The language the style asks for where none is chosen. */
  readonly locale: string | undefined;
}

/**
 * A bundled style by its short name or CSL identifier, or a user's own as the text of a .csl file.
 * @throws INPUT_INVALID for an unknown name, with near names, or an unusable file
 */
export function chooseStyle(style: string = defaultStyle): ChosenStyle {
  if (
    style
      .trimStart()
      .replace(/^\uFEFF/, '')
      .startsWith('<')
  )
    return ownStyle(style);
  const wanted = style.trim().toLowerCase();
  const id = wanted.replace(/^https?:\/\/www\.zotero\.org\/styles\//, '').replace(/\.csl$/, '');
  const bundled = bundledStyles.find(known => known.name === id || known.id === id);
  if (bundled === undefined) throw unknownStyle(style);
  const node = (locale: BundledLocale) => packedStyle(bundled.inLanguage?.[languageOf(locale)] ?? bundled.id)!;
  return { name: bundled.name, key: bundled.name, node, locale: node('en-US').attrs['default-locale'] };
}

function ownStyle(xml: string): ChosenStyle {
  const node = parseCsl(xml);
  return { name: nameOf(node), key: xml, node: () => node, locale: node.attrs['default-locale'] };
}

function nameOf(style: CslNode): string {
  const info = style.children.find(child => typeof child !== 'string' && child.name === 'info');
  for (const wanted of ['title', 'id']) {
    for (const child of typeof info === 'object' ? info.children : []) {
      if (typeof child === 'string' || child.name !== wanted) continue;
      const text = child.children[0];
      if (typeof text === 'string' && text.trim() !== '') return text.trim();
    }
  }
  return 'own style';
}

function unknownStyle(style: string): PlatestemmaError {
  const names = bundledStyles.map(known => known.name);
  const near = nearNames(style, names);
  const hint = near.length > 0 ? `did you mean ${near.join(' or ')}?` : `known are ${names.join(', ')}`;
  const came = style.length > 60 ? `${style.slice(0, 60)}…` : style;
  return new PlatestemmaError(
    'INPUT_INVALID',
    `style: expected the name of a style or the text of a CSL file, came "${came}"; ${hint}`,
  );
}

/**
 * The bundled locale for a language tag: itself, else the first of its language; `en-US` where none is asked for.
 * @throws INPUT_INVALID for a language that is not bundled
 */
export function chooseLocale(locale: string | undefined, ofStyle: string | undefined): BundledLocale {
  if (locale === undefined || locale.trim() === '') return findLocale(ofStyle ?? 'en-US') ?? 'en-US';
  const found = findLocale(locale);
  if (found !== undefined) return found;
  throw new PlatestemmaError('INPUT_INVALID', `locale: expected one of ${bundledLocales.join(', ')}, came "${locale}"`);
}

function findLocale(locale: string): BundledLocale | undefined {
  const wanted = locale.trim().replace('_', '-').toLowerCase();
  return (
    bundledLocales.find(known => known.toLowerCase() === wanted) ??
    bundledLocales.find(known => languageOf(known) === languageOf(wanted))
  );
}

function languageOf(locale: string): string {
  return locale.split('-')[0]!;
}
