import type { RecordOf } from '../../domain/model/row.ts';
import { codedAsBook } from './form.ts';
import { extentInImprint } from './imprints.ts';
import { type MarcField, subfield, subfieldValues } from './marc-record.ts';
import type { RecordView } from './record-view.ts';
import { type Marks, statement, tidy, withoutEndMarks } from './text.ts';

type Mutable<T> = { -readonly [N in keyof T]?: T[N] };
export type Description = Mutable<
  Pick<
    RecordOf<'Edition'>,
    'statement' | 'extent' | 'illustration' | 'illustrated' | 'format' | 'series' | 'identifiers' | 'digitalCopies'
  >
>;

/** Edition statement, extent, illustrations, format, series, numbers and digital copies. */
export function describe(view: RecordView): Description {
  const found: Description = {};
  const edition = view.fields('250').map(field => statement(field, { a: '', b: ' / ' }, view.leftOut));
  if (edition.length > 0) found.statement = edition.join('; ');
  for (const field of view.fields('300')) describeExtent(field, found);
  const extent = found.extent ?? extentInImprint(view);
  if (extent !== undefined) found.extent = extent;
  if (saysIllustrated(view, found.illustration)) found.illustrated = true;
  const series = seriesOf(view);
  if (series.length > 0) found.series = series;
  const identifiers = [...identifiersOf(view)];
  if (identifiers.length > 0) found.identifiers = identifiers;
  const copies = view.fields('856').flatMap(digitalCopies);
  if (copies.length > 0) found.digitalCopies = copies;
  return found;
}

/** Sizes of the leaf, which some catalogues write where the extent belongs: `8º.`, `obl. fol.`, `24 cm`. */
const sizeAlone = /^(?:obl\.? )?(?:\d{1,3}\s?(?:º|°|mo|vo|to|cm\.?)|fol|folio)\.?$/i;

function describeExtent(field: MarcField, found: Description): void {
  for (const [code, value] of field.subfields) {
    const text = withoutEndMarks(tidy(value));
    if (text === '') continue;
    if (code === 'c' || (code === 'a' && sizeAlone.test(text))) found.format = joined(found.format, text);
    else if (code === 'a') found.extent = joined(found.extent, text);
    else if (code === 'b') found.illustration = joined(found.illustration, text);
  }
}

function joined(before: string | undefined, text: string): string {
  return before === undefined ? text : `${before}; ${text}`;
}

/** Words of statements of illustration in the languages of catalogues. Common practice. */
const pictures =
  /\b(?:ill(?:us(?:tr?)?)?\.|illustra(?:t|ç|c|z)|abb\.|abbild|taf\.|tafel|pl\.|plates?\b|planches?\b|grav(?:\.|ures?|ados?)|engrav|etching|woodcut|wood-?engrav|holzschn|kupfer|stiche?\b|lith(?:o|\.)|port(?:s?\.|rait)|frontis|facsim|maps?\b|karten?\b|cartes?\b|plans?\b|diagr|photo|lám\.|láminas?|grabad|tav\.|platen\b|afb\.|billed)|рис\.|илл/iu;
const leavesOfPlates = /leaves of plates|\bpl\.|\bplates?\b|\btaf\.|planches?\b|tafeln?\b/i;
/** Words by which an old catalogue says in the title field that there are pictures: `[With plates and a map.]`. */
const titleSays =
  /\bwith (?:(?!musical|verbal|notes)[\w-]+,? ){0,5}(?:illustrations|plates?|portraits?|engravings?|woodcuts?|etchings|maps?|plans?|frontispiece|photographs|lithographs)\b|\billustrated (?:with|by) (?:[\w-]+ ){0,3}(?:engravings?|woodcuts?|etchings|portraits?|plates|photographs)\b/i;

/** Codes of 008/18-21 that name pictures; `g` is music. */
const pictureCodes = /[a-fhiop]/;

function saysIllustrated(view: RecordView, illustration: string | undefined): boolean {
  if (illustration !== undefined && pictures.test(illustration)) return true;
  if (codedAsBook(view.leader) && pictureCodes.test(view.f008.slice(18, 22))) return true;
  if (view.fields('300').some(field => leavesOfPlates.test(subfield(field, 'a') ?? ''))) return true;
  return ['245', '250'].some(tag => view.fields(tag).some(field => titleSays.test(subfield(field, 'a') ?? '')));
}

const seriesMarks: Marks = { a: '', n: '. ', p: '. ', x: ', ', v: ' ; ' };

/** Series as transcribed (490, 440); the controlled form only where nothing is transcribed. */
function seriesOf(view: RecordView): string[] {
  const transcribed = [...view.fields('490'), ...view.fields('440')];
  const fields = transcribed.length > 0 ? transcribed : ['800', '810', '811', '830'].flatMap(tag => view.fields(tag));
  return fields.map(field => withoutEndMarks(statement(field, seriesMarks, view.leftOut))).filter(text => text !== '');
}

const schemes: Readonly<Record<string, string>> = { '010': 'LCCN', '015': 'NBN', '020': 'ISBN', '022': 'ISSN' };
const schemesOf024: Readonly<Record<string, string>> = { 0: 'ISRC', 1: 'UPC', 2: 'ISMN', 3: 'EAN', 4: 'SICI' };

function* identifiersOf(view: RecordView): Iterable<{ scheme: string; value: string }> {
  for (const tag of ['010', '015', '020', '022', '024'] as const) {
    for (const field of view.fields(tag)) {
      const scheme = tag === '024' ? schemeOf024(field) : (subfield(field, '2') ?? schemes[tag]!);
      for (const raw of subfieldValues(field, 'a')) {
        const value = withoutEndMarks(tidy(raw));
        if (value !== '') yield { scheme, value };
      }
    }
  }
  for (const field of view.fields('035')) {
    const number = /^\(([^)]+)\)\s*(.+)$/.exec(tidy(subfield(field, 'a') ?? ''));
    if (number !== null) yield { scheme: number[1]!, value: number[2]! };
  }
}

function schemeOf024(field: MarcField): string {
  return (field.ind1 === '7' ? subfield(field, '2') : schemesOf024[field.ind1]) ?? 'other standard identifier';
}

/** 856 of the resource itself or a version of it; a related resource (second indicator 2) is no copy. */
function digitalCopies(field: MarcField): string[] {
  if (field.ind2 === '2') return [];
  return subfieldValues(field, 'u')
    .map(value => value.trim())
    .filter(value => /^https?:\/\/\S+$/.test(value));
}
