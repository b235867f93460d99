import type { Dice } from './random-graph.ts';

const pieces = [
  '|',
  ';',
  ',',
  '\\',
  ':',
  '"',
  "'",
  '=',
  '+',
  '-',
  '@',
  ' ',
  '\t',
  '\n',
  '\r\n',
  '＝',
  'a',
  '1790-06',
  '花',
  '𠮷',
];

/** A text that means something to a table, a formula or a list where it is not guarded. Never blank. */
export function awkwardText(roll: Dice): string {
  const text = Array.from({ length: 1 + roll.below(6) }, () => roll.pick(pieces)).join('');
  return text.trim() === '' ? `${text}x` : text;
}
