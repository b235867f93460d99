import CSL, { type CslNode, type Engine } from 'citeproc';
import { PlatestemmaError } from '../../errors.ts';
import { type BundledLocale, bundledLocales } from './bundled-styles.ts';
import type { ChosenStyle } from './choose-style.ts';
import type { CslItem } from './csl-item.ts';
import { packedLocale } from './csl-nodes.ts';
import { forEngine, habitsOf } from './for-engine.ts';

interface HeldEngine {
  readonly engine: Engine;
  items: ReadonlyMap<string, CslItem>;
}

/** Engines take longer to make than to use. */
const mostKept = 8;
const kept = new Map<string, HeldEngine>();

/**
 * Does work with the engine of a style and a locale that holds these items and no others. The least recently used of
 * more than eight engines is let go, and so is one that failed.
 * @throws INPUT_INVALID with the engine's reason if it cannot use the style
 */
export function withEngine<T>(
  style: ChosenStyle,
  locale: BundledLocale,
  items: ReadonlyMap<string, CslItem>,
  work: (engine: Engine) => T,
): T {
  const key = `${locale} ${style.key}`;
  try {
    const held = kept.get(key) ?? makeEngine(style.node(locale), locale);
    kept.delete(key);
    held.items = items;
    // An engine keeps what it has read of an id until the id leaves its list.
    held.engine.updateItems([]);
    held.engine.updateItems([...items.keys()]);
    const result = work(held.engine);
    keep(key, held);
    return result;
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new PlatestemmaError('INPUT_INVALID', `style: "${style.name}" cannot be used: ${reason}`, { cause });
  }
}

function keep(key: string, held: HeldEngine): void {
  kept.set(key, held);
  if (kept.size > mostKept) kept.delete(kept.keys().next().value!);
}

function makeEngine(style: CslNode, locale: BundledLocale): HeldEngine {
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
