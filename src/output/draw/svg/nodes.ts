import type { Bar, BarEnd } from '../layout/bar.ts';
import type { Spot } from '../layout/geometry.ts';
import type { Layout } from '../layout/layout.ts';
import { measures } from '../measures.ts';
import { daysInWords } from '../words/days-in-words.ts';
import { fateMark, mark as nodeShape } from './marks.ts';
import { palette } from './palette.ts';
import { n, svgText, xml } from './xml.ts';

const { mark } = measures;

/** The bars of the days, below all lines. */
export function dayBars({ spots, levels, drops }: Layout, id: string): string {
  return spots
    .map((spot, i) => (spot.bar === undefined ? '' : dayBar(spot, spot.bar, levels[i]! + drops[i]!, id)))
    .join('');
}

function dayBar({ x, name }: Spot, bar: Bar, level: number, id: string): string {
  if (!bar.contrary && bar.from > x - mark && bar.to < x + mark) return '';
  const y = level + (name.beside ? measures.barBeside : measures.bar);
  const rect = (from: number, to: number, fill: string) =>
    to - from < 0.5
      ? ''
      : `<rect x="${n(from)}" y="${n(y - 1.2)}" width="${n(to - from)}" height="2.4" fill="${fill}"/>`;
  const colour = bar.contrary ? palette.contradiction : palette.bar;
  const from = bar.left === 'open' ? bar.from + measures.fade : bar.from;
  const to = bar.right === 'open' ? bar.to - measures.fade : bar.to;
  return [
    bar.left === 'open' ? rect(bar.from, from, `url(#${id}-open-left)`) : '',
    rect(from, to, colour),
    bar.right === 'open' ? rect(to, bar.to, `url(#${id}-open-right)`) : '',
    barEnd(bar.left, bar.from, y, -1, colour),
    barEnd(bar.right, bar.to, y, 1, colour),
  ].join('');
}

/** A closed end is a stroke, one that runs on beyond the drawing a point, an open one neither. */
function barEnd(end: BarEnd, at: number, y: number, towards: 1 | -1, colour: string): string {
  if (end === 'open') return '';
  if (end === 'closed') return `<path d="M${n(at)} ${n(y - 2.8)}v5.6" stroke="${colour}" stroke-width="0.9"/>`;
  return `<path d="M${n(at)} ${n(y - 2.8)}l${n(6 * towards)} 2.8l${n(-6 * towards)} 2.8z" fill="${colour}"/>`;
}

/** Marks with their names, above all lines; each tells its name and days in full. */
export function nodeMarks({ spots, levels, drops }: Layout, of: string): string {
  return spots.map((spot, i) => nodeMark(spot, levels[i]!, drops[i]!, spot.node.id === of)).join('\n');
}

function nodeMark({ node, x, nameX, name }: Spot, y: number, drop: number, asked: boolean): string {
  const baseline = y + (name.beside ? 2.8 : drop + measures.nameBase);
  const names = name.lines.map((each, i) =>
    svgText(nameX, baseline + i * measures.line, each.text, {
      size: each.form === 'name' ? measures.nameSize : measures.smallSize,
      italic: each.form === 'name',
      fill: each.form === 'name' ? palette.ink : palette.soft,
      halo: palette.paper,
    }),
  );
  const plates = (node.plates ?? []).map((fate, i) =>
    fateMark(
      fate,
      nameX + 3 + (i % measures.platesInRow) * 8,
      baseline + (name.lines.length + Math.floor(i / measures.platesInRow)) * measures.line - 3.4,
    ),
  );
  const full = [...node.lines, daysInWords(node.days)].join(', ');
  return `<g><title>${xml(full)}</title>${nodeShape(node, x, y, asked)}${names.join('')}${plates.join('')}</g>`;
}
