import type { StepSign } from '../drawing.ts';
import { palette } from './palette.ts';
import { n, svgText } from './xml.ts';

/** How wide a sign is, with the ground that breaks the line for it. */
export const signWidth = 13;

/** The sign of a step on its line: two flags that fly alike, two that mirror each other, a question mark, or a barred ring. */
export function sign(what: StepSign, x: number, y: number, colour: string): string {
  const ground = `<rect x="${n(x - signWidth / 2)}" y="${n(y - 5)}" width="${signWidth}" height="10" fill="${palette.paper}"/>`;
  return ground + drawn[what](x, y, colour);
}

const flag = (x: number, y: number, towards: 1 | -1, colour: string) =>
  `<path d="M${n(x)} ${n(y + 3.6)}v-7.2l${n(4.2 * towards)} 2.4l${n(-4.2 * towards)} 2.4" fill="${colour}" stroke="${colour}" stroke-width="0.7" stroke-linejoin="round"/>`;

const drawn: Readonly<Record<StepSign, (x: number, y: number, colour: string) => string>> = {
  same: (x, y, colour) => flag(x - 5.2, y, 1, colour) + flag(x + 0.8, y, 1, colour),
  reverse: (x, y, colour) => flag(x - 5.4, y, 1, colour) + flag(x + 5.4, y, -1, colour),
  'direction not known': (x, y, colour) => svgText(x, y + 3.6, '?', { size: 11, anchor: 'middle', fill: colour }),
  'without leave': (x, y, colour) =>
    `<g stroke="${colour}" stroke-width="0.9" fill="none"><circle cx="${n(x)}" cy="${n(y)}" r="3.4"/><path d="M${n(x - 4.2)} ${n(y + 4.2)}l8.4 -8.4"/></g>`,
};

/** An arrow whose point is at x, flying to the right or to the left. */
export function arrow(x: number, y: number, towards: 1 | -1, colour: string): string {
  return `<path d="M${n(x)} ${n(y)}l${n(-6 * towards)} -2.3q${n(1.6 * towards)} 2.3 0 4.6z" fill="${colour}"/>`;
}

/** The cross of a contradiction, so that it is seen without colour too. */
export function cross(x: number, y: number): string {
  const ground = `<circle cx="${n(x)}" cy="${n(y)}" r="4.6" fill="${palette.paper}"/>`;
  return `${ground}<path d="M${n(x - 3.2)} ${n(y - 3.2)}l6.4 6.4m0 -6.4l-6.4 6.4" stroke="${palette.contradiction}" stroke-width="1.5"/>`;
}
