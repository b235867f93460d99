import type { RecordKind } from './declaration.ts';
import { recordKinds } from './kinds.ts';
import type { AnyRecord, Label } from './row.ts';

/**
 * What a record is called, for a reader of a language: its label in that language, else in English, else one without a
 * language, else the first; a record without labels is called by the field its kind is named by. Undefined if it has
 * no name at all.
 */
export function labelOf(record: AnyRecord, language = 'en'): string | undefined {
  const labels = record.labels ?? [];
  const found =
    inLanguage(labels, language) ?? inLanguage(labels, 'en') ?? labels.find(l => l.language === undefined) ?? labels[0];
  return found?.text ?? namedBy(record);
}

/** Every name of a record: its labels, and the field its kind is named by. */
export function namesOf(record: AnyRecord): string[] {
  const own = namedBy(record);
  return [...(own === undefined ? [] : [own]), ...(record.labels ?? []).map(label => label.text)];
}

function inLanguage(labels: readonly Label[], language: string): Label | undefined {
  return labels.find(l => l.language === language) ?? labels.find(l => l.language?.split('-')[0] === language);
}

function namedBy(record: AnyRecord): string | undefined {
  const declaration: RecordKind = recordKinds[record.kind];
  if (declaration.namedBy === undefined) return undefined;
  const value = (record as unknown as Readonly<Record<string, unknown>>)[declaration.namedBy];
  return typeof value === 'string' ? value : undefined;
}
