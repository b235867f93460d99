import type { DrawnNode } from '../drawing.ts';
import { measures } from '../measures.ts';
import { textWidth } from '../text-width.ts';
import { daysInWords } from '../words/days-in-words.ts';
import { wrapText } from '../wrap-text.ts';

interface NameLine {
  readonly text: string;
  readonly form: 'name' | 'small';
}

/** What stands at a mark, and where: below it on the right, or (where there are many) beside it in one line. */
export interface Name {
  readonly lines: readonly NameLine[];
  readonly width: number;
  readonly beside: boolean;
}

const few = 30;
const widest = { below: 170, beside: 230 } as const;

export function nameOf(node: DrawnNode, among: number): Name {
  const beside = among > few;
  const lines = beside ? [inOneLine(node)] : linesBelow(node);
  return { lines, width: Math.max(0, ...lines.map(({ text, form }) => textWidth(text, sizeOf(form)))), beside };
}

/** The name cut short, if need be, then how many it stands for and the days in full. */
function inOneLine({ lines: [name], days, count = 1 }: DrawnNode): NameLine {
  const end = `${count > 1 ? ` (${count})` : ''}, ${daysInWords(days)}`;
  const room = Math.max(60, widest.beside - textWidth(end, measures.nameSize));
  return { text: `${wrapText(name, measures.nameSize, room, 1)[0] ?? ''}${end}`, form: 'name' };
}

function linesBelow({ lines: [name, made, ...more], days, saysDays }: DrawnNode): NameLine[] {
  const about = [
    ...(made === undefined ? [] : [made]),
    ...(saysDays === true ? [] : [daysInWords(days)]),
    ...more,
  ].join(', ');
  return [...wrapped(name, 'name', widest.below, 2), ...wrapped(kept(about), 'small', widest.below, 4)];
}

/** How far a name, and the plates below it, reach below the level of the mark. */
export function nameDepth({ lines, beside }: Name, plates: number): number {
  const rows = lines.length - 1 + Math.ceil(plates / measures.platesInRow);
  return (beside ? 4 : measures.nameBase) + rows * measures.line + 5;
}

/** A number stays on the line of what it belongs to. */
function kept(text: string): string {
  return text.replace(/(not before|not after|[a-z]\.) (?=\d)/gu, words => words.replaceAll(' ', '\u00a0'));
}

/** As narrow as the number of lines allows, so that no word is left alone on the last. */
function wrapped(text: string, form: NameLine['form'], width: number, most: number): NameLine[] {
  const size = sizeOf(form);
  let lines = wrapText(text, size, width, most);
  const full = lines.join('').length;
  for (let narrower = width - 6; lines.length > 1; narrower -= 6) {
    const next = wrapText(text, size, narrower, most);
    if (next.length > lines.length || next.join('').length < full) break;
    lines = next;
  }
  return lines.map(line => ({ text: line, form }));
}

function sizeOf(form: NameLine['form']): number {
  return form === 'name' ? measures.nameSize : measures.smallSize;
}
