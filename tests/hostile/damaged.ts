import type { Chance } from './chance.ts';

const pieces = [
  ...[
    '\0',
    '\n',
    '"',
    "'",
    '\\',
    '{',
    '}',
    '[',
    ']',
    '<',
    '>',
    '&',
    ';',
    ',',
    ':',
    '#',
    '\\u0000',
    '\\ud800',
    '\ufeff',
    '..',
  ],
  ...['null', '1e999', '__proto__', '$', '@', '/*', '<!--', '<![CDATA[', '&#0;', '&x;', 'é', '字', ' '.repeat(300)],
].map(piece => Buffer.from(piece));
const bytes = [[0xff], [0xfe, 0xff], [0xc0, 0x80], [0xed, 0xa0, 0x80], [0x80], [0x1b], [0xf8, 0x88]].map(each =>
  Buffer.from(each),
);

/** Some bytes with a few changes, of one piece or another. */
export function damaged(whole: Uint8Array, chance: Chance): Buffer<ArrayBuffer> {
  let left: Buffer = Buffer.from(whole);
  for (let change = 1 + chance.below(4); change > 0; change--) {
    const at = chance.below(left.length + 1);
    const end = Math.min(left.length, at + chance.pick([0, 1, 1, 2, 10, 100, 10_000]));
    const put = chance.pick([
      Buffer.alloc(0),
      chance.pick(pieces),
      chance.pick(bytes),
      Buffer.from([chance.below(256)]),
      left.subarray(at, end),
      left.subarray(chance.below(left.length + 1)).subarray(0, 300),
    ]);
    left = Buffer.concat([left.subarray(0, at), put, left.subarray(chance.percent(50) ? at : end)]);
  }
  return Buffer.from(left);
}
