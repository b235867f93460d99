import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);

/** Advance widths of a face of EB Garamond, in parts of the size, by the tables of its file: OpenType cmap 12, hmtx. */
export function advancesOf(face: '400Regular' | '400Regular_Italic'): (character: string) => number | undefined {
  const file = require.resolve(`@expo-google-fonts/eb-garamond/${face}/EBGaramond_${face}.ttf`);
  const font = readFileSync(file);
  const tables = new Map<string, number>();
  for (let i = 0; i < font.readUInt16BE(4); i++)
    tables.set(font.toString('latin1', 12 + 16 * i, 16 + 16 * i), font.readUInt32BE(20 + 16 * i));
  const unitsPerEm = font.readUInt16BE(tables.get('head')! + 18);
  const metrics = font.readUInt16BE(tables.get('hhea')! + 34);
  const glyphs = glyphsOf(font, tables.get('cmap')!);
  return character => {
    const glyph = glyphs(character.codePointAt(0)!);
    if (glyph === undefined) return undefined;
    return font.readUInt16BE(tables.get('hmtx')! + 4 * Math.min(glyph, metrics - 1)) / unitsPerEm;
  };
}

function glyphsOf(font: Buffer, cmap: number): (code: number) => number | undefined {
  const groups: (readonly [number, number, number])[] = [];
  for (let i = 0; i < font.readUInt16BE(cmap + 2); i++) {
    const table = cmap + font.readUInt32BE(cmap + 8 + 8 * i);
    if (font.readUInt16BE(table) !== 12) continue;
    for (let k = 0; k < font.readUInt32BE(table + 12); k++) {
      const at = table + 16 + 12 * k;
      groups.push([font.readUInt32BE(at), font.readUInt32BE(at + 4), font.readUInt32BE(at + 8)]);
    }
  }
  return code => {
    const group = groups.find(([first, last]) => first <= code && code <= last);
    return group === undefined ? undefined : group[2] + code - group[0];
  };
}
