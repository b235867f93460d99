import type { CslNode } from 'citeproc';
import type { CslItem } from './csl-item.ts';

/** What a style does of itself, and what the item must say where it does not. */
export interface StyleHabits {
  /** Asks whether an edition is a number, and words it if so. */
  readonly numbersEditions: boolean;
  /** Asks whether a date of issue is uncertain, and marks it if so. */
  readonly marksUncertainty: boolean;
  /**
   * Whether it writes nothing of a variable of a part of a book. Chicago leaves the volume out where the book has an
   * author, and that author where the part has none; ISO 690 leaves the volume out always.
   */
  leavesOut(variable: PartVariable, item: CslItem): boolean;
  /** Whether it writes no month of what is in a serial without volume and issue: MHRA and ISO 690. */
  leavesOutMonth(): boolean;
  /** Finds out what the style leaves out of items like these. To be called before the engine is given them. */
  tryOut(items: Iterable<CslItem>): void;
}

const partVariables = ['volume', 'container-author'] as const;

type PartVariable = (typeof partVariables)[number];

/** @param write what the style writes of an item */
export function habitsOf(style: CslNode, write: (item: CslItem) => string): StyleHabits {
  const tried = new Map<string, boolean>();
  return {
    numbersEditions: asks(style, 'is-numeric', 'edition'),
    marksUncertainty: asks(style, 'is-uncertain-date', 'issued'),
    leavesOut: (variable, item) => tried.get(`${variable} ${shapeOf(item)}`) === true,
    leavesOutMonth: () => tried.get('month') === true,
    tryOut(items) {
      for (const item of items) {
        if (item.type === 'article-journal' && !tried.has('month'))
          tried.set('month', write(inSerial(3)) === write(inSerial(4)));
        for (const variable of partVariables) {
          const key = `${variable} ${shapeOf(item)}`;
          if (item.type !== 'chapter' || item[variable] === undefined || tried.has(key)) continue;
          tried.set(key, write(trial(item)) === write(trial({ ...item, [variable]: undefined })));
        }
      }
    },
  };
}

function asks(node: CslNode, condition: string, variable: string): boolean {
  if (node.attrs[condition]?.split(/\s+/).includes(variable)) return true;
  return node.children.some(child => typeof child !== 'string' && asks(child, condition, variable));
}

const samples = {
  author: [{ family: 'Maker' }],
  'container-author': [{ family: 'Writer' }],
  editor: [{ family: 'Editor' }],
  volume: '7',
} as const;

/** Items of one shape are treated alike. */
function shapeOf(item: CslItem): string {
  return Object.keys(samples)
    .filter(name => item[name as keyof typeof samples] !== undefined)
    .join(' ');
}

function trial(item: CslItem): CslItem {
  const shape = shapeOf(item);
  const given = Object.entries(samples).filter(([name]) => shape.split(' ').includes(name));
  const id = `trial of ${shape}`;
  const part = { id, type: 'chapter', title: 'Part', 'container-title': 'Whole', page: '1', custom: { id } };
  return { ...part, ...Object.fromEntries(given) };
}

function inSerial(month: number): CslItem {
  const id = `trial of month ${month}`;
  const issued = { 'date-parts': [[1800, month]] };
  return { id, type: 'article-journal', title: 'Part', 'container-title': 'Serial', page: '1', issued, custom: { id } };
}
