import CSL, { type CslNode, type Engine } from 'citeproc';
import { PlatestemmaError } from '../../errors.ts';
import { type BundledLocale, bundledLocales } from './bundled-styles.ts';
import type { ChosenStyle } from './choose-style.ts';
import type { CslItem } from './csl-item.ts';
import { packedLocale } from './csl-nodes.ts';
import { forEngine, habitsOf } from './for-engine.ts';

/** An engine with the items it is working on; engines take longer to make than to use, so a few are kept. */
export interface TextEngine {
  readonly engine: Engine;
  items: ReadonlyMap<string, CslItem>;
}

const mostKept = 8;
const kept = new Map<string, TextEngine>();

/** The engine for a style and a locale; the least recently used of more than eight is let go. */
export function textEngine(style: ChosenStyle, locale: BundledLocale): TextEngine {
  const key = `${locale} ${style.key}`;
  const found = kept.get(key) ?? withReason(style, () => makeEngine(style.node(locale), locale));
  kept.delete(key);
  kept.set(key, found);
  if (kept.size > mostKept) kept.delete(kept.keys().next().value!);
  return found;
}

/** What the engine says of a style it cannot use, as an error of the caller. It throws texts as well as errors. */
export function withReason<T>(style: ChosenStyle, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new PlatestemmaError('INPUT_INVALID', `style: "${style.name}" cannot be used: ${reason}`, { cause });
  }
}

function makeEngine(style: CslNode, locale: BundledLocale): TextEngine {
  // The engine warns on the standard output, which belongs to the citations.
  CSL.debug = () => undefined;
  const habits = habitsOf(style);
  const held: { items: ReadonlyMap<string, CslItem> } = { items: new Map() };
  const system = {
    retrieveLocale: (language: string) => packedLocale(bundledLocales.find(known => known === language) ?? 'en-US'),
    retrieveItem: (id: string) => forEngine(held.items.get(id)!, habits),
  };
  const engine = new CSL.Engine(system, entriesInFull(style), locale, true);
  // A note is text: lines such as "publisher: X" in it set no variable.
  engine.opt.development_extensions['field_hack'] = false;
  engine.setOutputFormat('text');
  return Object.assign(held, { engine });
}

/** Each entry must stand on its own: no dash in the place of a repeated author. */
function entriesInFull(style: CslNode): CslNode {
  return {
    ...style,
    children: style.children.map(child => {
      if (typeof child === 'string' || child.name !== 'bibliography') return child;
      const { 'subsequent-author-substitute': _, ...attrs } = child.attrs;
      return { ...child, attrs };
    }),
  };
}
