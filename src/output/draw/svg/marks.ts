import type { PlateFate } from '../../../domain/descent/editions-plates.ts';
import type { DrawnNode, NodeKind } from '../drawing.ts';
import { measures } from '../measures.ts';
import { palette } from './palette.ts';
import { n } from './xml.ts';

export const nodeWords: Readonly<Record<NodeKind, string>> = {
  artwork: 'artwork',
  plate: 'plate, cut or vignette',
  sheet: 'single-sheet print',
  motif: 'motif on an object',
  detail: 'detail',
  surface: 'printing surface',
  edition: 'edition',
  design: 'design',
};

/** The mark of a node: its shape says what it is, an outline that is broken and empty that it is lost or inferred, a ring that it was asked about. */
export function mark(node: Pick<DrawnNode, 'kind' | 'lost' | 'count'>, x: number, y: number, ringed: boolean): string {
  const shape = shapes[node.kind](x, y, node.lost === true ? palette.paper : palette.ink);
  const lost = node.lost === true ? ' stroke-dasharray="1.8 1.5"' : '';
  const stack = (node.count ?? 1) > 1 ? `<g transform="translate(2.2 -2.2)">${shape}</g>` : '';
  const ring = ringed
    ? `<circle cx="${n(x)}" cy="${n(y)}" r="${measures.ring}" fill="${palette.paper}" stroke="${palette.ink}" stroke-width="0.6"/>`
    : '';
  return `${ring}<g fill="${palette.paper}" stroke="${palette.ink}" stroke-width="0.9"${lost}>${stack}${shape}</g>`;
}

const box = (x: number, y: number, w: number, h: number, more = '') =>
  `<rect x="${n(x - w / 2)}" y="${n(y - h / 2)}" width="${w}" height="${h}"${more}/>`;

const shapes: Readonly<Record<NodeKind, (x: number, y: number, solid: string) => string>> = {
  artwork: (x, y) => `<circle cx="${n(x)}" cy="${n(y)}" r="4.8"/>`,
  plate: (x, y) => box(x, y, 8.4, 10.4) + box(x, y, 4.4, 6.4, ' stroke-width="0.6"'),
  sheet: (x, y) => box(x, y, 8.4, 10.4),
  motif: (x, y, solid) => `<circle cx="${n(x)}" cy="${n(y)}" r="4.2" fill="${solid}"/>`,
  detail: (x, y) => {
    const corner = (sx: number, sy: number) =>
      `M${n(x + sx * 4.8)} ${n(y + sy * 1.6)}V${n(y + sy * 4.8)}H${n(x + sx * 1.6)}`;
    const corners = corner(-1, -1) + corner(1, -1) + corner(1, 1) + corner(-1, 1);
    return `${box(x, y, 9.6, 9.6, ' stroke="none"')}<path d="${corners}" fill="none"/>`;
  },
  surface: (x, y, solid) => box(x, y, 10.4, 6.8, ` fill="${solid}"`),
  edition: (x, y) => `${box(x, y, 8.4, 10.4)}<path d="M${n(x - 1.8)} ${n(y - 5.2)}v10.4"/>`,
  design: (x, y) => `<path d="M${n(x)} ${n(y - 5.4)}l5 5.4l-5 5.4l-5 -5.4z"/>`,
};

export const fateWords: Readonly<Record<PlateFate, string>> = {
  NEW: 'new plate',
  WENT_ALONG: 'the plate went along',
  SAME_SURFACE: 'another plate from the same surface',
  COPIED: 'plate copied',
  LEFT_OUT: 'plate left out',
  NOT_KNOWN: 'not known to be in it',
};

/** What became of a plate, as a small square. */
export function fateMark(fate: PlateFate, x: number, y: number): string {
  const [left, top] = [x - 2.7, y - 2.7];
  const square = (fill: string, more = '') =>
    `<rect x="${n(left)}" y="${n(top)}" width="5.4" height="5.4" fill="${fill}" stroke="${palette.ink}" stroke-width="0.7"${more}/>`;
  if (fate === 'WENT_ALONG') return square(palette.ink);
  if (fate === 'SAME_SURFACE')
    return `${square(palette.paper)}<path d="M${n(left)} ${n(top + 5.4)}v-5.4h5.4z" fill="${palette.ink}"/>`;
  if (fate === 'COPIED')
    return `${square(palette.paper)}<circle cx="${n(x)}" cy="${n(y)}" r="1.2" fill="${palette.ink}"/>`;
  if (fate === 'LEFT_OUT') return `<path d="M${n(left)} ${n(y)}h5.4" stroke="${palette.ink}" stroke-width="0.9"/>`;
  return fate === 'NEW' ? square(palette.paper) : square(palette.paper, ' stroke-dasharray="1.1 1.1"');
}
