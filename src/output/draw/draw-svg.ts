import { collapse } from './collapse.ts';
import type { Drawing } from './drawing.ts';
import { inOrder } from './in-order.ts';
import { type Layout, layout } from './layout/layout.ts';
import { measures } from './measures.ts';
import { axis, tall } from './svg/axis.ts';
import { legend } from './svg/legend.ts';
import { dayBars, nodeMarks } from './svg/nodes.ts';
import { palette, typeface } from './svg/palette.ts';
import { stepLines } from './svg/steps.ts';
import { n, svgText, xml } from './svg/xml.ts';
import { describe } from './words/describe.ts';
import { wrapText } from './wrap-text.ts';

const { margin } = measures;

export interface DrawLimits {
  /** Most nodes drawn one by one. */
  readonly nodes: number;
  /** Most exchanges of neighbouring rows that are tried to lessen crossings. */
  readonly exchanges: number;
}

/**
 * The drawing as an SVG document of its own: no script, no font and nothing else from elsewhere; the same drawing gives
 * the same bytes. Every mark stands at its date.
 */
export function drawSvg(drawing: Drawing, limits: DrawLimits): string {
  const drawn = collapse(inOrder(drawing), limits.nodes);
  return plate(drawn, layout(drawn, limits.exchanges));
}

function plate(drawing: Drawing, laid: Layout): string {
  const width = Math.max(laid.right + margin, 560);
  const head = heading(drawing, width);
  const foot = laid.bottom + 16;
  const top = head.height + (foot > tall ? 42 : 24);
  const below = top + foot + (laid.scale === undefined && laid.undated === undefined ? 0 : 34);
  const key = legend(drawing, laid, margin, below + 14, width - 2 * margin);
  const notes = noteLines(drawing, below + 14 + key.height + 8, width);
  const height = below + 14 + key.height + notes.height + margin - 8;
  const id = drawing.of;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}" height="${n(height)}" viewBox="0 0 ${n(width)} ${n(height)}" font-family="${xml(typeface)}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
    `<title id="${id}-title">${xml(drawing.title)}</title>`,
    `<desc id="${id}-desc">${xml(describe(drawing))}</desc>`,
    ...metadata(drawing),
    fades(id),
    frame(width, height),
    head.text,
    `<g transform="translate(0 ${n(top)})">`,
    axis(laid, -14, foot),
    dayBars(laid, id),
    stepLines(laid, drawing.of),
    nodeMarks(laid, drawing.of),
    '</g>',
    `<path d="M${n(margin)} ${n(below)}H${n(width - margin)}" stroke="${palette.soft}" stroke-width="0.4"/>`,
    key.text,
    notes.text,
    '</svg>',
    '',
  ].join('\n');
}

/** https://www.w3.org/TR/SVG2/struct.html#MetadataElement: for machines, and for who looks into the document. */
function metadata({ conventions = [] }: Drawing): string[] {
  const used = conventions.map(({ key, version }) => `${key} ${version}`);
  return used.length === 0 ? [] : [`<metadata>Conventions, with their versions: ${xml(used.join(', '))}</metadata>`];
}

function fades(id: string): string {
  const stop = (offset: number, opacity: number) =>
    `<stop offset="${offset}" stop-color="${palette.bar}" stop-opacity="${opacity}"/>`;
  const fade = (name: string, from: number, to: number) =>
    `<linearGradient id="${id}-${name}">${stop(0, from)}${stop(1, to)}</linearGradient>`;
  return `<defs>${fade('open-left', 0, 1)}${fade('open-right', 1, 0)}</defs>`;
}

/** Paper, and the double line of an old plate. */
function frame(width: number, height: number): string {
  const line = (inset: number, weight: number) =>
    `<rect x="${inset}" y="${inset}" width="${n(width - 2 * inset)}" height="${n(height - 2 * inset)}" fill="none" stroke="${palette.ink}" stroke-width="${weight}"/>`;
  return `<rect width="${n(width)}" height="${n(height)}" fill="${palette.paper}"/>${line(12, 0.9)}${line(15, 0.35)}`;
}

function heading(drawing: Drawing, width: number): { readonly text: string; readonly height: number } {
  const middle = width / 2;
  const room = width - 2 * margin - 20;
  const titles = wrapText(drawing.title, 19, room, 3).map((text, i) =>
    svgText(middle, 54 + i * 23, text, { size: 19, anchor: 'middle', fill: palette.ink }),
  );
  const start = 54 + titles.length * 23;
  const subtitles = wrapText(drawing.subtitle, 12, room, 2).map((text, i) =>
    svgText(middle, start - 2 + i * 15, text, { size: 12, italic: true, anchor: 'middle', fill: palette.soft }),
  );
  const end = start + subtitles.length * 15;
  return { text: [...titles, ...subtitles].join('\n'), height: end };
}

function noteLines(drawing: Drawing, top: number, width: number): { readonly text: string; readonly height: number } {
  const lines = drawing.notes.flatMap(note => wrapText(note, 10, width - 2 * margin, 4));
  const text = lines.map((each, i) =>
    svgText(margin, top + 8 + i * 14, each, { size: 10, italic: true, fill: palette.soft }),
  );
  return { text: text.join('\n'), height: lines.length * 14 };
}
