import { describe, expect, test } from 'vitest';
import { palette } from '../../../../src/output/draw/svg/palette.ts';

/** Relative luminance of a colour #rrggbb. https://www.w3.org/TR/WCAG22/#dfn-relative-luminance */
function luminance(colour: string): number {
  const [r, g, b] = [1, 3, 5].map(i => {
    const part = Number.parseInt(colour.slice(i, i + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio */
function contrast(a: string, b: string): number {
  const [lighter, darker] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (lighter + 0.05) / (darker + 0.05);
}

describe('contrast with the paper, by the formula of WCAG 2.2', () => {
  // 1.4.3 asks 4.5 of text, 1.4.11 asks 3 of parts of graphics that are needed to understand them.
  test.each([
    ['ink', 4.5],
    ['soft', 4.5],
    ['contradiction', 4.5],
    ['bar', 3],
  ] as const)('%s has at least %d', (name, least) => {
    expect(contrast(palette[name], palette.paper)).toBeGreaterThanOrEqual(least);
  });

  test('the formula gives what the standard says of black on white, and finds too little', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
    expect(contrast(palette.hair, palette.paper)).toBeLessThan(3);
  });

  test('bars and lines that lie on each other can be told apart', () => {
    expect(contrast(palette.bar, palette.ink)).toBeGreaterThanOrEqual(3);
  });
});
