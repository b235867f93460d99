import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { drawSvg } from '../../../src/output/draw/draw-svg.ts';
import { svgToPng } from '../../../src/output/draw/svg-to-png.ts';
import { family, manyScripts, netMenders, oneNode } from './drawings.ts';

const limits = { nodes: 300, exchanges: 5_000 };
const svg = drawSvg(oneNode, limits);
/** Width and height of a PNG. https://www.w3.org/TR/png-3/#11IHDR */
const sizeOf = (png: Uint8Array) => {
  const view = Buffer.from(png);
  expect(view.toString('latin1', 12, 16)).toBe('IHDR');
  return [view.readUInt32BE(16), view.readUInt32BE(20)] as const;
};
const digest = (png: Uint8Array) => createHash('sha256').update(png).digest('hex');

test('a picture is twice as large as its document, and the same bytes each time', async () => {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!;
  const png = await svgToPng(svg);
  expect(sizeOf(png)).toEqual([Math.ceil(Number(width) * 2), Math.ceil(Number(height) * 2)]);
  expect(digest(await svgToPng(svg))).toBe(digest(png));
});

test('its letters are drawn: the same without a word is another picture', async () => {
  const without = svg.replaceAll('>The Ferry at Evening</text>', '></text>');
  expect(without).not.toBe(svg);
  expect(digest(await svgToPng(without))).not.toBe(digest(await svgToPng(svg)));
});

test('scripts that the typeface lacks do not stop it', async () => {
  expect(sizeOf(await svgToPng(drawSvg(manyScripts, limits)))[0]).toBeGreaterThan(1000);
});

test('a large drawing is drawn smaller, not larger than 16 million pixels', async () => {
  const [width, height] = sizeOf(await svgToPng(drawSvg(family(150), limits)));
  expect(width * height).toBeLessThan(16.1e6);
  expect(sizeOf(await svgToPng(drawSvg(netMenders, limits)))[0]).toBeGreaterThan(1500);
});
