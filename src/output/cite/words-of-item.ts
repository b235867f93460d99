import type { CslDate, CslItem, CslName } from './csl-item.ts';
import { namedInFull } from './csl-name.ts';
import { sentence } from './roles-note.ts';

/**
 * What BibTeX and RIS have no field for, in sentences: people who are neither authors nor editors, the reprinted
 * edition, the note, and the EDTF of a date that is no plain date.
 */
export function wordsOfItem(item: CslItem, also: readonly (string | undefined)[] = []): string | undefined {
  const responsibility =
    item.author === undefined && item.editor === undefined && item.custom.responsibility !== undefined
      ? sentence(item.custom.responsibility)
      : undefined;
  const sentences = [
    named('Illustrated by', item.illustrator),
    named('Translated by', item.translator),
    named('Compiled by', item.compiler),
    named('With', item.contributor),
    named('In a work by', item['container-author']),
    responsibility,
    ...also,
    item.note,
    reprint(item),
    dateInEdtf(item.custom.edtf),
  ].filter(part => part !== undefined);
  return sentences.length === 0 ? undefined : sentences.join(' ');
}

/**
 * A year or range of years as a reader writes it: `1801–1803`, `ca. 1764` for an approximate one, `1764?` for an
 * uncertain one, or the words of the date. CSL does not tell the two apart, the EDTF does.
 */
export function yearInWords(date: CslDate | undefined, edtf?: string): string | undefined {
  if (date === undefined) return undefined;
  const parts = date['date-parts'];
  if (parts === undefined) return date.literal;
  const text = parts.map(([year]) => (year === 0 ? '' : year! < 0 ? `${-year!} BC` : String(year))).join('–');
  if (date.circa !== true) return text;
  const [uncertain, approximate] = edtf === undefined ? [false, true] : [/[?%]/.test(edtf), /[~%]/.test(edtf)];
  return `${approximate ? 'ca. ' : ''}${text}${uncertain ? '?' : ''}`;
}

/** Spring to winter, by the number of CSL. */
export function seasonInWords(date: CslDate | undefined): string | undefined {
  return date?.season === undefined ? undefined : ['Spring', 'Summer', 'Autumn', 'Winter'][date.season - 1];
}

function named(verb: string, list: readonly CslName[] | undefined): string | undefined {
  if (list === undefined) return undefined;
  return sentence(`${verb} ${list.map(namedInFull).join(', ')}`);
}

function reprint(item: CslItem): string | undefined {
  const original = [
    item['original-publisher-place'],
    item['original-publisher'],
    yearInWords(item['original-date']),
  ].filter(part => part !== undefined);
  return original.length === 0 ? undefined : `Reprint of the edition ${original.join(', ')}.`;
}

function dateInEdtf(edtf: string | undefined): string | undefined {
  return edtf === undefined || /^\d{4}(?:-\d\d){0,2}$/.test(edtf) ? undefined : `Date in EDTF: ${edtf}`;
}
