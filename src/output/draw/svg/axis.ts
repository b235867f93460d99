import { year as yearInWords } from '../../cite/date-words.ts';
import type { Layout } from '../layout/layout.ts';
import type { TimeScale } from '../layout/time-scale.ts';
import { palette } from './palette.ts';
import { n, svgText, type TextLook } from './xml.ts';

const yearLook: TextLook = { size: 10.5, anchor: 'middle', fill: palette.soft };
/** A drawing higher than this has the years above too. */
export const tall = 600;

/** The years below (and where the drawing is tall, above too), and fine lines that lead the eye up from them. */
export function axis({ scale, undated }: Layout, top: number, bottom: number): string {
  const head =
    undated === undefined ? '' : svgText(undated, bottom + 17, 'without date', { ...yearLook, italic: true });
  if (scale === undefined) return head;
  const hairs = scale.ticks.filter(tick => tick.year !== undefined).map(({ x }) => `M${n(x)} ${n(top)}V${n(bottom)}`);
  return [
    `<path d="${hairs.join('')}" stroke="${palette.hair}" stroke-width="0.6" fill="none"/>`,
    ruler({ scale, y: bottom, down: 1 }),
    bottom > tall ? ruler({ scale, y: top, down: -1 }) : '',
    head,
  ].join('');
}

interface Ruler {
  readonly scale: TimeScale;
  readonly y: number;
  readonly down: 1 | -1;
}

function ruler({ scale, y, down }: Ruler): string {
  const strokes = scale.ticks.map(({ x, year }) => `M${n(x)} ${n(y)}v${n(down * (year === undefined ? 2.5 : 5))}`);
  const years = scale.ticks.flatMap(({ x, year }) =>
    year === undefined ? [] : [svgText(x, down > 0 ? y + 17 : y - 9, yearInWords(year), yearLook)],
  );
  const path = `M${n(scale.left)} ${n(y)}H${n(scale.right)}${strokes.join('')}`;
  return `<path d="${path}" stroke="${palette.soft}" stroke-width="0.7" fill="none"/>${years.join('')}`;
}
