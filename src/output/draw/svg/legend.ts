import type { Drawing } from '../drawing.ts';
import type { Layout } from '../layout/layout.ts';
import { textWidth } from '../text-width.ts';
import { legendEntries } from './legend-entries.ts';
import { palette } from './palette.ts';
import { svgText } from './xml.ts';

const size = 10;
const rowHeight = 17;
/** Entries begin in columns about as wide as this. */
const columnWidth = 180;
const gap = 14;

/** What the signs used in this drawing mean, in lines of a width. @returns its text and height */
export function legend(
  drawing: Drawing,
  layout: Layout,
  left: number,
  top: number,
  width: number,
): { readonly text: string; readonly height: number } {
  const column = (width + gap) / Math.max(1, Math.round(width / columnWidth));
  let [x, y] = [left, top + 10];
  const parts: string[] = [];
  for (const group of legendEntries(drawing, layout)) {
    for (const entry of group) {
      const wide = entry.room + 6 + textWidth(entry.words, size);
      if (x > left && x + wide > left + width) [x, y] = [left, y + rowHeight];
      parts.push(entry.sample(x + entry.room / 2, y));
      parts.push(svgText(x + entry.room + 6, y + 3.4, entry.words, { size, fill: palette.soft }));
      x += Math.ceil((wide + gap) / column) * column;
    }
    [x, y] = [left, y + rowHeight];
  }
  return { text: `<g>${parts.join('')}</g>`, height: y - top - 6 };
}
