import { bibtexKey } from './bibtex-key.ts';
import { bibtexText, bibtexUrl, bibtexWord } from './bibtex-text.ts';
import type { CslDate, CslItem, CslName } from './csl-item.ts';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const seasons = ['Spring', 'Summer', 'Autumn', 'Winter'];

/**
 * BibTeX entries in UTF-8, in the order given: `@book`, and `@misc` for a sheet on its own, since classic BibTeX has
 * no type for pictures. Titles are braced whole, because styles would change their capitals. A date BibTeX cannot hold
 * is worded in `year`, and its EDTF stands in `note`.
 */
export function toBibtex(items: readonly CslItem[]): string {
  return items.map(entry).join('\n');
}

function entry(item: CslItem): string {
  const fields = fieldsOf(item)
    .filter((field): field is readonly [string, string] => field[1] !== undefined && field[1] !== '')
    .map(([name, value]) => `  ${name} = ${value},\n`);
  return `@${item.type === 'graphic' ? 'misc' : 'book'}{${bibtexKey(item)},\n${fields.join('')}}\n`;
}

function fieldsOf(item: CslItem): readonly (readonly [string, string | undefined])[] {
  const sheet = item.type === 'graphic';
  return [
    ['author', names(item.author)],
    ['editor', names(item.editor)],
    ['title', `{${bibtexWord(item.title)}}`],
    ['edition', braced(item.edition?.toString())],
    ['volume', braced(item.volume)],
    ['volumes', braced(item['number-of-volumes']?.toString())],
    ['series', braced(item['collection-title'])],
    ['address', word(item['publisher-place'])],
    [sheet ? 'howpublished' : 'publisher', word(item.publisher)],
    ['year', braced(yearOf(item.issued))],
    ...dayOf(item.issued),
    ['language', braced(item.language)],
    ['doi', braced(item.DOI)],
    ['isbn', braced(item.ISBN)],
    ['issn', braced(item.ISSN)],
    ['url', item.URL === undefined ? undefined : `{${bibtexUrl(item.URL)}}`],
    ['note', braced(noteOf(item))],
  ];
}

function braced(text: string | undefined): string | undefined {
  return text === undefined ? undefined : `{${bibtexText(text)}}`;
}

/** Braced once more, since ` and ` would part it. */
function word(text: string | undefined): string | undefined {
  return text === undefined ? undefined : `{${/\sand\s/i.test(text) ? bibtexWord(text) : bibtexText(text)}}`;
}

function names(list: readonly CslName[] | undefined): string | undefined {
  return list === undefined ? undefined : `{${list.map(name).join(' and ')}}`;
}

/** `Family, Given` or `Family, Suffix, Given`; what has no family name is one word to BibTeX. */
function name(of: CslName): string {
  if (of.family === undefined) return bibtexWord(of.literal ?? '');
  const parts = [of.family, ...(of.suffix === undefined ? [] : [of.suffix]), of.given ?? ''];
  return parts.map(namePart).join(', ').replace(/, $/, '');
}

/** Small letters at the start would be read as a particle, commas and `and` as the ends of names. */
function namePart(part: string, position: number): string {
  const unsafe = /,|\sand\s|^and\s|\sand$|^and$/i.test(part) || (position === 0 && /(?:^|\s)\p{Ll}/u.test(part));
  return unsafe ? bibtexWord(part) : bibtexText(part);
}

function yearOf(date: CslDate | undefined): string | undefined {
  if (date === undefined) return undefined;
  const parts = date['date-parts'];
  if (parts === undefined) return date.literal;
  const text = parts.map(([year]) => (year === 0 ? '' : year! < 0 ? `${-year!} BC` : String(year))).join('–');
  return date.circa === true ? `ca. ${text}` : text;
}

function dayOf(date: CslDate | undefined): readonly (readonly [string, string | undefined])[] {
  const parts = date?.['date-parts'];
  const season = date?.season === undefined ? undefined : seasons[date.season - 1];
  if (season !== undefined) return [['month', `{${season}}`]];
  if (parts?.length !== 1) return [];
  const [, month, day] = parts[0]!;
  return [
    ['month', month === undefined ? undefined : months[month - 1]],
    ['day', day === undefined ? undefined : `{${day}}`],
  ];
}

function noteOf(item: CslItem): string | undefined {
  const people = [
    named('Illustrated by', item.illustrator),
    named('Translated by', item.translator),
    named('Compiled by', item.compiler),
    named('With', item.contributor),
  ];
  const original = [item['original-publisher-place'], item['original-publisher'], yearOf(item['original-date'])].filter(
    part => part !== undefined,
  );
  const reprint = original.length === 0 ? undefined : `Reprint of the edition ${original.join(', ')}.`;
  const responsibility =
    item.author === undefined && item.editor === undefined && item.custom.responsibility !== undefined
      ? sentence(item.custom.responsibility)
      : undefined;
  const edtf = item.custom.edtf;
  const date = edtf === undefined || /^\d{4}(?:-\d\d){0,2}$/.test(edtf) ? undefined : `Date in EDTF: ${edtf}`;
  const parts = [...people, responsibility, item.note, reprint, date].filter(part => part !== undefined);
  return parts.length === 0 ? undefined : parts.join(' ');
}

function named(verb: string, list: readonly CslName[] | undefined): string | undefined {
  if (list === undefined) return undefined;
  const written = list.map(n => n.literal ?? [n.given, n.family, n.suffix].filter(Boolean).join(' '));
  return sentence(`${verb} ${written.join(', ')}`);
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
