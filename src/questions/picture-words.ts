import { appearanceLocator } from '../domain/model/appearance-locator.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord, AnyRow } from '../domain/model/row.ts';
import { matrixKind, plateKind, survival } from '../domain/model/vocabularies.ts';
import type { LineageNode } from './lineage-answer.ts';

/** What a picture or printing surface is, for a caption: `etching, Lust am Ufer, no. 4`; `painted, Dish with shore scenes`. */
export function pictureWords(
  record: AnyRecord,
  { appearances, inPart, regionUnknown }: Pick<LineageNode, 'appearances' | 'inPart' | 'regionUnknown'>,
  rows: ReadonlyMap<string, AnyRow>,
): string {
  const named = (id: string) => {
    const row = rows.get(id);
    return (row === undefined ? undefined : labelOf(row as AnyRecord)) ?? id;
  };
  const parts = [
    ...whatItIs(record, named),
    ...appearances
      .slice(0, 1)
      .flatMap(({ edition, claim }) => whereItIs(edition, rows.get(claim), rows))
      .filter(words => words !== labelOf(record)),
    ...(inPart ? ['in part'] : []),
    ...(regionUnknown ? ['perhaps: the part copied is not recorded'] : []),
  ];
  return parts.join(', ');
}

function whatItIs(record: AnyRecord, named: (id: string) => string): readonly string[] {
  switch (record.kind) {
    case 'Artwork':
      return [record.medium ?? 'artwork', ...lost(record.survival)];
    case 'Plate':
      return [record.technique ?? (record.form === undefined ? 'plate' : plateKind.words[record.form])];
    case 'Motif':
      return [...(record.technique === undefined ? [] : [record.technique]), named(record.piece)];
    case 'Matrix':
      return [record.form === undefined ? 'printing surface' : matrixKind.words[record.form], ...lost(record.survival)];
    case 'Detail':
      return [`detail of “${named(record.of)}”`];
    default:
      return [];
  }
}

function lost(how: keyof typeof survival.words | undefined): readonly string[] {
  return how === undefined || how === 'EXTANT' ? [] : [survival.words[how]];
}

function whereItIs(edition: string, appearance: AnyRow | undefined, rows: ReadonlyMap<string, AnyRow>): string[] {
  const row = rows.get(edition);
  const locator = appearance?.kind === 'Appearance' ? appearanceLocator(appearance) : undefined;
  return [
    ...(row?.kind === 'Edition' ? [row.title.replace(/\s*\.$/, '')] : []),
    ...(locator === undefined ? [] : [locator]),
  ];
}
