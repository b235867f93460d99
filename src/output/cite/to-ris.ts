import type { CslDate, CslItem, CslName } from './csl-item.ts';
import { isPageNumber } from './plate-locator.ts';
import { risLine, risName } from './ris-text.ts';
import { capitalised, sentence } from './roles-note.ts';
import { seasonInWords, wordsOfItem, yearInWords } from './words-of-item.ts';

/** Reference types of RIS by type of CSL; anything else is generic. */
const referenceTypes: Readonly<Record<string, string>> = {
  book: 'BOOK',
  chapter: 'CHAP',
  'paper-conference': 'CONF',
  'article-journal': 'JOUR',
  'article-magazine': 'MGZN',
  'article-newspaper': 'NEWS',
  graphic: 'ART',
  manuscript: 'MANSCPT',
  map: 'MAP',
  pamphlet: 'PAMP',
  report: 'RPRT',
  thesis: 'THES',
  webpage: 'ELEC',
};

type Tag = readonly [tag: string, value: string | undefined];

/**
 * RIS records in UTF-8, in the order given, lines ended by CR LF as the format asks. `PY` is a year of four digits, or
 * the date in words where it is no such year (`ca. 1764`, `not after 1765`), and `DA` the whole date; the EDTF of an
 * uncertain date is in the notes (`N1`), as is all else that has no tag.
 */
export function toRis(items: readonly CslItem[]): string {
  return items.map(record).join('\r\n');
}

function record(item: CslItem): string {
  const type = referenceTypes[item.type] ?? 'GEN';
  const lines = tagsOf(item, type).flatMap(([tag, value]) => risLine(tag, value));
  return ['TY  - '.concat(type), ...lines, 'ER  - '].map(line => `${line}\r\n`).join('');
}

function tagsOf(item: CslItem, type: string): readonly Tag[] {
  const inside = item['container-title'] !== undefined;
  const notInParts = ['CHAP', 'CONF'].includes(type);
  const wholeNames = [...(item.author ?? []), ...(item.editor ?? [])].filter(hasComma).map(name => name.literal!);
  return [
    ['ID', item.id],
    ...people('AU', item.author),
    ['TI', item.title],
    ['T2', item['container-title'] ?? item['collection-title']],
    ['T3', inside ? item['collection-title'] : undefined],
    ...people(type === 'BOOK' ? 'A3' : 'A2', item.editor),
    ...people('A4', item.translator),
    ['ET', item.edition?.toString()],
    ['VL', item.volume],
    ['NV', item['number-of-volumes']?.toString()],
    ['IS', item.issue],
    ...pages(item.page),
    ['CY', item['publisher-place']],
    ['PB', item.publisher],
    ['PY', year(item)],
    ['DA', day(item.issued)],
    ['M3', notInParts ? undefined : (item.medium ?? item.genre)],
    ['C3', item.dimensions],
    ['LA', item.language],
    ['CN', item.archive],
    ['SN', item.ISBN ?? item.ISSN],
    ['DO', item.DOI],
    ['UR', item.URL],
    [
      'N1',
      wordsOfItem(withoutTranslators(item), [
        wholeNames.length === 0 ? undefined : sentence(`Written in full: ${wholeNames.join('; ')}`),
        notInParts && item.genre !== undefined ? sentence(capitalised(item.genre)) : undefined,
      ]),
    ],
  ];
}

function people(tag: string, names: readonly CslName[] | undefined): readonly Tag[] {
  return (names ?? []).map(name => [tag, risName(name)] as const);
}

function hasComma({ literal }: CslName): boolean {
  return literal?.includes(',') === true;
}

/** They have a tag. */
function withoutTranslators({ translator: _, ...item }: CslItem): CslItem {
  return item;
}

/** First and last page; a locator in words stands whole. */
function pages(page: string | undefined): readonly Tag[] {
  const [first, last] = page !== undefined && isPageNumber(page) ? page.split(/[-–]/) : [page];
  return [
    ['SP', first],
    ['EP', last],
  ];
}

function year({ issued: date, custom }: CslItem): string | undefined {
  const parts = date?.['date-parts'];
  const [only] = parts?.length === 1 && date?.circa !== true ? parts[0]! : [];
  return only !== undefined && only > 0 ? String(only).padStart(4, '0') : fullYears(yearInWords(date, custom.edtf));
}

/** Readers take the second year of `1760–70` for the year 70. */
function fullYears(text: string | undefined): string | undefined {
  return text?.replace(/^(\d\d)(\d\d)–(\d\d)$/, '$1$2–$1$3');
}

/** `YYYY/MM/DD/other information`, for a date that is certain. */
function day(date: CslDate | undefined): string | undefined {
  const parts = date?.['date-parts'];
  const [only] = parts ?? [];
  if (parts?.length !== 1 || only === undefined || only[0]! < 1 || date?.circa === true) return undefined;
  const season = seasonInWords(date);
  if (only.length === 1 && season === undefined) return undefined;
  const [, month, dayOfMonth] = only;
  const two = (part: number | undefined) => (part === undefined ? '' : String(part).padStart(2, '0'));
  return `${String(only[0]).padStart(4, '0')}/${two(month)}/${two(dayOfMonth)}/${season ?? ''}`;
}
