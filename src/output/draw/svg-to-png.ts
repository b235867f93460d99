import { createRequire } from 'node:module';
import { PlatestemmaError } from '../../errors.ts';

/** Pixels of a picture at most: a drawing that would have more is drawn smaller. */
const mostPixels = 16e6;
const zoom = 2;
/** Letters of the typeface that comes along: Latin, Greek and Cyrillic, with marks, punctuation and signs. */
const covered = /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Common}\p{Script=Inherited}]*$/u;

/**
 * An SVG document of ours as a PNG picture, at twice its size. The same document gives the same bytes, unless it has
 * letters that the typeface which comes along lacks: for those the machine's own typefaces are used.
 * @throws INPUT_INVALID if the packages for it are not installed
 */
export async function svgToPng(svg: string): Promise<Uint8Array> {
  const { renderAsync } = await renderer();
  const { width, height } = sizeOf(svg);
  const image = await renderAsync(svg, {
    fitTo: { mode: 'zoom', value: Math.min(zoom, Math.sqrt(mostPixels / (width * height))) },
    font: { loadSystemFonts: !covered.test(svg), fontFiles: typefaces(), defaultFontFamily: 'EB Garamond' },
  });
  return image.asPng();
}

async function renderer(): Promise<typeof import('@resvg/resvg-js')> {
  try {
    return await import('@resvg/resvg-js');
  } catch (cause) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      'expected SVG to be asked for: PNG needs the optional packages @resvg/resvg-js and @expo-google-fonts/eb-garamond, which are not installed',
      { cause },
    );
  }
}

function typefaces(): string[] {
  const require = createRequire(import.meta.url);
  return ['400Regular/EBGaramond_400Regular.ttf', '400Regular_Italic/EBGaramond_400Regular_Italic.ttf'].map(file =>
    require.resolve(`@expo-google-fonts/eb-garamond/${file}`),
  );
}

function sizeOf(svg: string): { readonly width: number; readonly height: number } {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!;
  return { width: Number(width), height: Number(height) };
}
