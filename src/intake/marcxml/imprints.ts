import { remember } from '../../domain/text/remember.ts';
import type { BundleDraft, Said } from './bundle-draft.ts';
import type { ImprintRole } from './imprint-markers.ts';
import { ImprintWriter, type Places, placesIn } from './imprint-writer.ts';
import type { MarcField } from './marc-record.ts';
import { countriesOf } from './place-reading.ts';
import type { RecordView } from './record-view.ts';
import { type Marks, statement, tidy, withoutEndMarks } from './text.ts';
import { readUnstructuredImprint, type UnstructuredImprint } from './unstructured-imprint.ts';

/** The words of a date in an imprint, and where they stand. */
export interface ImprintDate {
  readonly words: string;
  readonly said: Said;
  /** It is the date of a copyright notice (264, second indicator 4). */
  readonly copyrightNotice: boolean;
}

const marks: Marks = { a: '; ', b: ' : ', c: ', ', e: '; ', f: ' : ', g: ', ' };

/** Place, publisher and date as transcribed; undefined if the record has none. */
export function imprintText(view: RecordView): string | undefined {
  const texts = imprintFields(view).map(field => statement(field, marks, view.leftOut));
  return texts.filter(text => text !== '').join('; ') || undefined;
}

/** Imprint claims of fields 260 and 264, one for each place and each part an agent took, in order; gives the words of their dates. */
export function addImprints(view: RecordView, draft: BundleDraft): readonly ImprintDate[] {
  const writer = new ImprintWriter(countriesOf(view), draft);
  return imprintFields(view).flatMap(field => addField(field, writer, draft));
}

/** Extent that an imprint in one string gives (`pp. vi. 225. Whittaker & Co.: London, [1863.]`). */
export function extentInImprint(view: RecordView): string | undefined {
  for (const field of view.fields('260')) {
    const whole = onlyPlace(field);
    const extent = whole === undefined ? undefined : wholeImprint(whole)?.extent;
    if (extent !== undefined) return extent;
  }
  return undefined;
}

function imprintFields(view: RecordView): readonly MarcField[] {
  return [...view.fields('260'), ...view.fields('264')];
}

/** The $a of a field that has nothing else: a place, or a whole imprint in one string. */
function onlyPlace(field: MarcField): string | undefined {
  const [only, ...others] = field.subfields;
  return others.length === 0 && only?.[0] === 'a' ? only[1] : undefined;
}

const wholeImprint = remember(5000, (text): UnstructuredImprint | undefined =>
  /[\d:]/.test(text) ? readUnstructuredImprint(text) : undefined,
);

/** Second indicator of 264: who the names of the field are. 0 (unpublished) and 4 (copyright) name no imprint. */
const roleOf264: Readonly<Record<string, ImprintRole>> = { 2: 'DISTRIBUTOR', 3: 'PRINTER' };

function addField(field: MarcField, writer: ImprintWriter, draft: BundleDraft): ImprintDate[] {
  const { tag } = field;
  const whole = onlyPlace(field);
  if (whole !== undefined && /\d/.test(whole)) return addWhole(tag, whole, writer, draft);
  const kind = tag === '264' ? field.ind2 : '1';
  if (kind !== '0' && kind !== '4') pairUp(field, 'a', 'b', roleOf264[kind], writer);
  if (tag === '260') pairUp(field, 'e', 'f', 'PRINTER', writer);
  return kind === '0' || kind === '2' || kind === '3' ? [] : datesOf(field, kind === '4');
}

function addWhole(tag: string, text: string, writer: ImprintWriter, draft: BundleDraft): ImprintDate[] {
  const said: Said = { tag, codes: 'a' };
  const imprint = wholeImprint(text);
  if (imprint === undefined) {
    const expected = 'expected a place, or an imprint that can be taken apart';
    draft.remark('INPUT_INVALID', `${expected}, came "${tidy(text)}"`, `${tag}$a`);
    return [];
  }
  for (const { place, agent } of imprint.pairs) {
    writer.write([{ words: place?.name ?? '', named: place === undefined ? [] : [place] }], agent, undefined, said);
  }
  return imprint.date === undefined ? [] : [{ words: imprint.date, said, copyrightNotice: false }];
}

/**
 * Each name goes with the places before it; several places may share a name, several names a place. Places and names
 * of manufacture (260 $e, $f) stand in round brackets.
 */
function pairUp(
  field: MarcField,
  placeCode: string,
  nameCode: string,
  role: ImprintRole | undefined,
  writer: ImprintWriter,
): void {
  const { tag } = field;
  let places: Places[] = [];
  let names = 0;
  for (const [code, value] of field.subfields) {
    if (code !== placeCode && code !== nameCode) continue;
    const words = value.replace(/[()]/g, '');
    if (code === placeCode) {
      if (names > 0) places = [];
      names = 0;
      places.push(placesIn(words));
    } else {
      const codes = places.length > 0 ? placeCode + nameCode : nameCode;
      writer.write(places, words, role, { tag, codes }, names === 0);
      names++;
    }
  }
  if (names === 0 && places.length > 0) writer.write(places, undefined, role, { tag, codes: placeCode });
}

function datesOf(field: MarcField, copyrightNotice: boolean): ImprintDate[] {
  const said: Said = { tag: field.tag, codes: 'c' };
  return field.subfields.flatMap(([code, value]) => {
    const words = code === 'c' ? withoutEndMarks(tidy(value)) : '';
    return words === '' ? [] : [{ words, said, copyrightNotice }];
  });
}
