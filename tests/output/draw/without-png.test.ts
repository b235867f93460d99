import { expect, test, vi } from 'vitest';

vi.mock('@resvg/resvg-js', () => {
  throw new Error('Cannot find package');
});

test('where the optional packages are not installed PNG is refused, and SVG named', async () => {
  const { svgToPng } = await import('../../../src/output/draw/svg-to-png.ts');
  await expect(svgToPng('<svg viewBox="0 0 1 1"/>')).rejects.toMatchObject({
    code: 'INPUT_INVALID',
    message: expect.stringMatching(/^expected SVG to be asked for: PNG needs the optional packages/),
  });
});
