import { textWidth } from './text-width.ts';

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A text in lines of a width, at most so many; what does not fit is cut at the end with an ellipsis. */
export function wrapText(text: string, size: number, width: number, most: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of wordsOf(text, size, width)) {
    const longer = line === '' ? word.text : line + (word.joined ? '' : ' ') + word.text;
    if (line === '' || textWidth(longer, size) <= width) {
      line = longer;
      continue;
    }
    if (lines.length === most - 1) return [...lines, cut(longer, size, width)];
    lines.push(line);
    line = word.text;
  }
  return line === '' ? lines : [...lines, line];
}

/** No more of a text is looked at: no drawing has room for it. */
const longest = 1000;

interface Word {
  readonly text: string;
  /** Goes on the word before, which was too long for a line. */
  readonly joined: boolean;
}

function wordsOf(text: string, size: number, width: number): Word[] {
  return text
    .slice(0, longest)
    .split(/[ \t\r\n]+/)
    .filter(word => word !== '')
    .flatMap(word => broken(word, size, width).map((part, i) => ({ text: part, joined: i > 0 })));
}

/** A word wider than a line (or a text of a script without spaces), in parts that are not. */
function broken(word: string, size: number, width: number): string[] {
  if (textWidth(word, size) <= width) return [word];
  const parts = [''];
  for (const { segment } of letters.segment(word)) {
    const longer = parts.at(-1)! + segment;
    if (parts.at(-1) === '' || textWidth(longer, size) <= width) parts[parts.length - 1] = longer;
    else parts.push(segment);
  }
  return parts;
}

function cut(text: string, size: number, width: number): string {
  let line = '';
  for (const { segment } of letters.segment(text)) {
    if (textWidth(`${line}${segment}…`, size) > width) break;
    line += segment;
  }
  return `${line.trimEnd()}…`;
}
