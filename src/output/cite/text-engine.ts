import CSL, { type CslNode, type Engine } from 'citeproc';
import { PlatestemmaError } from '../../errors.ts';
import { type BundledLocale, bundledLocales } from './bundled-styles.ts';
import type { ChosenStyle } from './choose-style.ts';
import type { CslItem } from './csl-item.ts';
import { packedLocale } from './csl-nodes.ts';
import { forEngine } from './for-engine.ts';
import { habitsOf, type StyleHabits } from './style-habits.ts';

/** An entry of a bibliography, or what stands in a note or in the text. */
export type TextForm = 'BIBLIOGRAPHY' | 'CITATION';

interface HeldEngine {
  readonly engine: Engine;
  readonly habits: StyleHabits;
  readonly form: TextForm;
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
  form: TextForm,
  items: ReadonlyMap<string, CslItem>,
  work: (engine: Engine) => T,
): T {
  const key = `${locale} ${form} ${style.key}`;
  try {
    const held = kept.get(key) ?? makeEngine(style.node(locale), locale, form);
    kept.delete(key);
    held.habits.tryOut(items.values());
    hold(held, items);
    const result = work(held.engine);
    keep(key, held);
    return result;
  } catch (cause) {
    const reason = cause instanceof Error ? cause.message : String(cause);
    throw new PlatestemmaError('INPUT_INVALID', `style: "${style.name}" cannot be used: ${reason}`, { cause });
  }
}

/** What the engine writes of the items that it holds: its bibliography, or its notes where it has none or is asked for them. */
export function writtenBy(
  engine: Engine,
  ids: readonly string[],
  form: TextForm,
): readonly { readonly id: string; readonly text: string }[] {
  const made = form === 'CITATION' ? false : engine.makeBibliography();
  if (made !== false) return made[0].entry_ids.map((entry, i) => ({ id: entry[0]!, text: made[1][i]! }));
  return ids.map(id => ({ id, text: citationOf(engine, id) }));
}

function citationOf(engine: Engine, id: string): string {
  return engine.previewCitationCluster({ citationItems: [{ id }], properties: { noteIndex: 1 } }, [], [], 'text');
}

function keep(key: string, held: HeldEngine): void {
  kept.set(key, held);
  if (kept.size > mostKept) kept.delete(kept.keys().next().value!);
}

function makeEngine(style: CslNode, locale: BundledLocale, form: TextForm): HeldEngine {
  // The engine warns on the standard output, which belongs to the citations.
  CSL.debug = () => undefined;
  const system = {
    retrieveLocale: (language: string) => packedLocale(bundledLocales.find(known => known === language) ?? 'en-US'),
    retrieveItem: (id: string) => forEngine(held.items.get(id)!, held.habits, locale),
  };
  const engine = new CSL.Engine(system, entriesInFull(style), locale, true);
  // A note is text: lines such as "publisher: X" in it set no variable.
  engine.opt.development_extensions['field_hack'] = false;
  engine.setOutputFormat('text');
  const held: HeldEngine = { engine, form, items: new Map(), habits: habitsOf(style, item => tryOne(held, item)) };
  return held;
}

function tryOne(held: HeldEngine, item: CslItem): string {
  hold(held, new Map([[item.id, item]]));
  return writtenBy(held.engine, [item.id], held.form)[0]?.text ?? '';
}

function hold(held: HeldEngine, items: ReadonlyMap<string, CslItem>): void {
  held.items = items;
  // An engine keeps what it has read of an id until the id leaves its list.
  held.engine.updateItems([]);
  held.engine.updateItems([...items.keys()]);
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
