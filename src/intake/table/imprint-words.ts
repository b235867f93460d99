import type { BundleDraft, Said } from '../marcxml/bundle-draft.ts';
import { ImprintWriter, type Places, placesIn } from '../marcxml/imprint-writer.ts';
import { readUnstructuredImprint } from '../marcxml/unstructured-imprint.ts';
import type { ImprintWords } from './plan-claims.ts';
import { joined } from './value.ts';

/**
 * Writes the Imprint claims that words of a place and of names come to, as those of a library record do. Words of a
 * place that are a whole imprint (`pp. 144. Fraser: London; Stevenson: Cambridge, 1836`) are taken apart.
 */
export function writeImprint({ place, agent }: ImprintWords, edition: string, said: Said, draft: BundleDraft): void {
  const writer = new ImprintWriter([], draft, edition);
  const names = joined(agent) || undefined;
  const whole = wholeImprint(joined(place));
  if (whole === undefined) {
    writer.write(
      place.pieces.map(({ text }) => placesIn(text)),
      names,
      undefined,
      said,
    );
    return;
  }
  for (const { place: named, agent: name } of whole.pairs) {
    const places: Places[] = named === undefined ? [] : [{ words: named.name, named: [named] }];
    writer.write(places, name ?? names, undefined, said);
  }
}

/** Columns of an imprint whose words its claims keep as written: all, unless they are taken apart. */
export function keptWords({ place, agent }: ImprintWords): readonly string[] {
  return wholeImprint(joined(place)) === undefined ? [...place.whole, ...agent.whole] : [];
}

function wholeImprint(text: string): ReturnType<typeof readUnstructuredImprint> {
  return /\d/.test(text) ? readUnstructuredImprint(text) : undefined;
}
