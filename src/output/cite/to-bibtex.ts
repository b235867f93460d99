import { bibtexKey } from './bibtex-key.ts';
import { bibtexText, bibtexUrl, bibtexWord } from './bibtex-text.ts';
import type { CslDate, CslItem, CslName } from './csl-item.ts';
import { capitalised, sentence } from './roles-note.ts';
import { seasonInWords, wordsOfItem, yearInWords } from './words-of-item.ts';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];

/** Entry types of classic BibTeX; anything else is `@misc`, as it has no type for pictures and objects. */
const entryTypes: Readonly<Record<string, string>> = {
  book: 'book',
  chapter: 'incollection',
  'paper-conference': 'inproceedings',
  'article-journal': 'article',
  'article-magazine': 'article',
  'article-newspaper': 'article',
  thesis: 'phdthesis',
  report: 'techreport',
};

/**
 * BibTeX entries in UTF-8, in the order given. Titles are braced whole, because styles would change their capitals. A
 * date BibTeX cannot hold is worded in `year`, and its EDTF stands in `note`, as does all else that has no field.
 */
export function toBibtex(items: readonly CslItem[]): string {
  return items.map(entry).join('\n');
}

function entry(item: CslItem): string {
  const fields = fieldsOf(item)
    .filter((field): field is readonly [string, string] => field[1] !== undefined && field[1] !== '')
    .map(([name, value]) => `  ${name} = ${value},\n`);
  return `@${entryTypes[item.type] ?? 'misc'}{${bibtexKey(item)},\n${fields.join('')}}\n`;
}

function fieldsOf(item: CslItem): readonly (readonly [string, string | undefined])[] {
  const type = entryTypes[item.type] ?? 'misc';
  const container = item['container-title'];
  const publisher = { misc: 'howpublished', phdthesis: 'school', techreport: 'institution' }[type] ?? 'publisher';
  return [
    ['author', names(item.author)],
    ['editor', names(item.editor)],
    ['title', `{${bibtexWord(item.title)}}`],
    [type === 'article' ? 'journal' : 'booktitle', container === undefined ? undefined : `{${bibtexWord(container)}}`],
    ['edition', braced(item.edition?.toString())],
    ['volume', braced(item.volume)],
    ['volumes', braced(item['number-of-volumes']?.toString())],
    ['number', braced(item.issue)],
    ['pages', braced(pagesOf(item.page))],
    ['series', braced(item['collection-title'])],
    ['address', word(item['publisher-place'])],
    [publisher, word(item.publisher)],
    ['year', braced(yearInWords(item.issued, item.custom.edtf))],
    ...dayOf(item.issued),
    ['language', braced(item.language)],
    ['library', braced(item.archive)],
    ['doi', braced(item.DOI)],
    ['isbn', braced(item.ISBN)],
    ['issn', braced(item.ISSN)],
    ['url', item.URL === undefined ? undefined : `{${bibtexUrl(item.URL)}}`],
    ['note', braced(wordsOfItem(item, [madeOf(item)]))],
  ];
}

/** Kind, medium and size have no field: `Tin-glazed earthenware, diameter 38 cm.` */
function madeOf({ genre, medium, dimensions }: CslItem): string | undefined {
  const parts = [genre, medium, dimensions].filter(part => part !== undefined);
  if (parts.length === 0) return undefined;
  return sentence(capitalised(parts.join(', ')));
}

/** A range has two hyphens in BibTeX. */
function pagesOf(page: string | undefined): string | undefined {
  return page?.replace(/^(\w+)[-–](\w+)$/, '$1–$2');
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

function dayOf(date: CslDate | undefined): readonly (readonly [string, string | undefined])[] {
  const parts = date?.['date-parts'];
  const season = seasonInWords(date);
  if (season !== undefined) return [['month', `{${season}}`]];
  if (parts?.length !== 1) return [];
  const [, month, day] = parts[0]!;
  return [
    ['month', month === undefined ? undefined : months[month - 1]],
    ['day', day === undefined ? undefined : `{${day}}`],
  ];
}
