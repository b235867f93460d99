/**
 * Advance widths of U+0020..U+007E in thousandths of the size: those of DejaVu Serif or of EB Garamond, upright or italic,
 * whichever is widest, so that a name has room in whatever book face the reader has. Measured from the fonts.
 */
const ascii = [
  ...[318, 402, 460, 838, 636, 950, 890, 275, 390, 390, 500, 838, 318, 338, 318, 400, 636, 636, 636, 636, 636, 636],
  ...[636, 636, 636, 636, 337, 337, 838, 838, 838, 536, 1000, 722, 735, 765, 802, 730, 694, 799, 872, 401, 401, 747],
  ...[664, 1024, 875, 820, 673, 820, 753, 685, 667, 843, 722, 1070, 712, 660, 695, 390, 410, 390, 838, 500, 500, 596],
  ...[640, 560, 640, 592, 370, 640, 644, 320, 320, 606, 320, 948, 644, 602, 640, 640, 478, 513, 402, 644, 565, 856],
  ...[565, 565, 527, 636, 337, 636, 838],
] as const;

const mark = /^\p{M}$/u;
const capital = /^[\p{Lu}\p{Lt}]$/u;
const small = /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}]$/u;
/** Small letters wider than the others of their scripts, and the widest of them. */
const broad = /^[жтфшщыюмцљњѣѥѫѭѱҗҥҧҭӕԕԝҡңҵҷψωϻφæœƕƣƴȡȵȸȹ]$/u;
const widest = /^[жѭҗ]$/u;
const wide =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Bopomofo}\p{Extended_Pictographic}\u3000-\u303f\uff00-\uff60]$/u;
const known = new Map<string, number>();

/** Room that a text needs at most, at a size; marks that sit on a letter need none. */
export function textWidth(text: string, size: number): number {
  let sum = 0;
  for (const character of text) sum += characterWidth(character);
  return (sum * size) / 1000;
}

function characterWidth(character: string): number {
  const code = character.codePointAt(0)!;
  if (code >= 0x20 && code <= 0x7e) return ascii[code - 0x20]!;
  const before = known.get(character);
  if (before !== undefined) return before;
  const width = otherWidth(character);
  if (known.size < 5000) known.set(character, width);
  return width;
}

/** Letters with marks as without, joined ones as their parts; of what is left the widest that book faces have. */
function otherWidth(character: string): number {
  if (mark.test(character)) return 0;
  const parts = character.normalize('NFKD');
  if (parts !== character) return textWidth(parts, 1000);
  if (wide.test(character)) return 1050;
  if (character === '\u2015') return 2000;
  if (capital.test(character)) return 1150;
  return small.test(character) && !broad.test(character) ? 680 : widest.test(character) ? 1150 : 1000;
}
