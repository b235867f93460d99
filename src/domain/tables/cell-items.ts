import { PlatestemmaError } from '../../errors.ts';
import { pieces, type Separator, unwritten, written } from './cell-lists.ts';
import { scalarOf, scalarText } from './cell-scalars.ts';
import type { CellItems, CellPart } from './table-fields.ts';

type Item = Readonly<Record<string, unknown>>;

/**
 * Items as a cell has them: `part: value; part: value`, several with a bar between them. Places on a picture, which are
 * percents alone, are written as the IIIF Image API 3.0 (4.1) writes a region: `pct:` and the numbers.
 */
export function itemsText({ item }: CellItems, items: readonly Item[]): string {
  const text = isPercents(item) ? percentsText : itemText;
  return items.map(each => text(item, each)).join(' | ');
}

/** @throws INPUT_INVALID for what is no list of such items; whether they have what they must have is not looked at */
export function itemsOf({ item }: CellItems, text: string): readonly Item[] {
  const read = isPercents(item) ? percentsOf : itemOf;
  return pieces(text, '|').map(piece => read(item, piece));
}

type Parts = CellItems['item'];

function isPercents(item: Parts): boolean {
  return Object.values(item).every(part => part.type === 'number' && part.required === true);
}

function percentsText(item: Parts, values: Item): string {
  return `pct:${Object.keys(item)
    .map(name => values[name])
    .join(',')}`;
}

function percentsOf(item: Parts, text: string): Item {
  const names = Object.keys(item);
  const numbers = text.startsWith('pct:') ? text.slice(4).split(',') : [];
  if (numbers.length !== names.length) {
    const form = `pct:${names.join(',')}`;
    throw new PlatestemmaError('INPUT_INVALID', `expected places as "${form}" in percent, came "${text}"`);
  }
  return Object.fromEntries(names.map((name, i) => [name, scalarOf({ type: 'number' }, numbers[i]!)]));
}

function itemText(item: Parts, values: Item): string {
  return Object.entries(item)
    .flatMap(([name, part]) => (values[name] === undefined ? [] : [`${name}: ${partText(part, values[name])}`]))
    .join('; ');
}

const inItem: readonly Separator[] = ['|', ';'];
const inPart: readonly Separator[] = ['|', ';', ','];

function partText(part: CellPart, value: unknown): string {
  if (part.type === 'items') return (value as readonly Item[]).map(each => percentsText(part.item, each)).join(' ');
  if (!('many' in part && part.many)) return written(scalarText(part, value), inItem);
  return (value as readonly unknown[]).map(each => written(scalarText(part, each), inPart)).join(', ');
}

function itemOf(item: Parts, text: string): Item {
  const values: Record<string, unknown> = {};
  for (const piece of pieces(text, ';')) {
    const colon = piece.indexOf(':');
    const name = piece.slice(0, Math.max(colon, 0)).trim();
    const part = Object.hasOwn(item, name) ? item[name] : undefined;
    if (part === undefined) {
      const names = Object.keys(item).join(', ');
      throw new PlatestemmaError(
        'INPUT_INVALID',
        `expected parts as "name: value", each with one of the names ${names} and a ";" between them, came "${piece}"`,
      );
    }
    if (values[name] !== undefined)
      throw new PlatestemmaError('INPUT_INVALID', `expected the part "${name}" once, came "${text}"`);
    const value = partOf(part, piece.slice(colon + 1).trimStart());
    if (value !== undefined) values[name] = value;
  }
  return values;
}

function partOf(part: CellPart, text: string): unknown {
  if (text === '') return undefined;
  if (part.type === 'items') return pieces(text, ' ').map(piece => percentsOf(part.item, piece));
  if (!('many' in part && part.many)) return scalarOf(part, unwritten(text));
  return pieces(text, ',').map(piece => scalarOf(part, unwritten(piece)));
}
