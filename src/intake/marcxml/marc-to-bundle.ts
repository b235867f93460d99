import { hash } from 'node:crypto';
import type { RecordOf } from '../../domain/model/row.ts';
import { foldTokens } from '../../domain/text/fold.ts';
import type { SourcePlace } from '../../errors.ts';
import type { Bundle, Refusal } from '../intention.ts';
import { addAttributions, mainHeading } from './agents.ts';
import { BundleDraft, type RecordDraft } from './bundle-draft.ts';
import { addDatings } from './dates.ts';
import { describe } from './description.ts';
import { formOf } from './form.ts';
import { addImprints, imprintText } from './imprints.ts';
import { languagesOf } from './languages.ts';
import { addLinks } from './links.ts';
import { controlField, type MarcRecord } from './marc-record.ts';
import { RecordView } from './record-view.ts';
import { restOf } from './rest.ts';
import { type Titles, titlesOf } from './titles.ts';

export interface MappingOptions {
  /** Name of the file, for messages alone: it never becomes part of an origin. */
  readonly file?: string;
  /** Source of records that do not name one in field 003. */
  readonly source?: string;
}

/**
 * What one MARC 21 record of a bibliographic format comes to: an Edition with its Work, persons and firms, places, and
 * the claims that the record makes, each with the record's key and field as evidence. A record without source, control
 * number or title, of another format, deleted, or malformed is refused with the reason.
 */
export function marcToBundle(record: MarcRecord, options: MappingOptions = {}): Bundle | Refusal {
  const key = controlField(record, '001')?.trim() ?? '';
  const place = placeOf(record, key, options.file);
  if (record.malformed !== undefined) return refused(place, record.malformed);
  if (key === '') return refused({ ...place, field: '001' }, 'expected a control number (field 001), came none');
  const source = controlField(record, '003')?.trim() || options.source;
  if (source === undefined || source === '') {
    return refused(
      { ...place, field: '003' },
      'expected the source of the record in field 003 or given with the file, came none',
    );
  }
  const unfit = unfitness(record.leader);
  if (unfit !== undefined) return refused({ ...place, field: 'leader' }, unfit);
  const view = new RecordView(record, source);
  const languages = languagesOf(record, view.fields('041'));
  const titles = titlesOf(view, languages);
  if (titles === undefined) return refused({ ...place, field: '245' }, 'expected a title (field 245 $a), came none');
  const draft = new BundleDraft({ source, key }, place);
  addRows(view, key, titles, languages, draft);
  for (const fault of record.faults) draft.remark('INPUT_INVALID', fault);
  return draft.bundle(digestOf(record));
}

function placeOf({ ordinal }: MarcRecord, key: string, file: string | undefined): SourcePlace {
  return { ...(file === undefined ? {} : { file }), record: ordinal, ...(key === '' ? {} : { key }) };
}

function refused(place: SourcePlace, message: string): Refusal {
  return { outcome: 'refused', problem: { code: 'INPUT_INVALID', message, place } };
}

/** Types of record (leader/06) of the other formats of MARC 21. */
const otherFormats: Readonly<Record<string, string>> = {
  u: 'holdings',
  v: 'holdings',
  x: 'holdings',
  y: 'holdings',
  z: 'authority',
  w: 'classification',
  q: 'community information',
};

function unfitness(leader: string): string | undefined {
  const format = otherFormats[leader[6] ?? ' '];
  if (format !== undefined) return `expected a bibliographic record, came one of ${format} (leader/06 "${leader[6]}")`;
  return leader[5] === 'd' ? 'the source says that the record is deleted (leader/05 "d")' : undefined;
}

function addRows(
  view: RecordView,
  key: string,
  titles: Titles,
  languages: readonly string[],
  draft: BundleDraft,
): void {
  draft.named('@edition', key, edition(view, titles, languages));
  draft.named('@work', workKey(view, titles.work), work(view, titles.work));
  draft.named('@catalogue', 'catalogue', catalogue(view.source));
  const dates = addImprints(view, draft);
  const published = addDatings(view, dates, draft);
  addAttributions(view, languages, draft);
  addLinks(view, published, titles.title, draft);
}

function edition(view: RecordView, titles: Titles, languages: readonly string[]): RecordDraft {
  const imprint = imprintText(view);
  const { labels, title, responsibility, number } = titles;
  return {
    kind: 'Edition',
    work: '@work',
    title,
    ...(labels === undefined ? {} : { labels }),
    ...(responsibility === undefined ? {} : { responsibility }),
    ...(number === undefined ? {} : { number }),
    ...(imprint === undefined ? {} : { imprint }),
    ...(languages.length === 0 ? {} : { languages }),
    ...describe(view),
    ...restOf(view),
  };
}

/** Editions of one source share a work by the main heading and the title, brackets and punctuation aside. */
function workKey(view: RecordView, title: string): string {
  const folded = foldTokens(title)
    .filter(token => token !== 'etc')
    .join(' ');
  return `work:${mainHeading(view)}|${folded === '' ? title : folded}`;
}

function work(view: RecordView, title: string): RecordDraft {
  const form: RecordOf<'Work'>['form'] = formOf(view.leader, view.f008);
  return { kind: 'Work', labels: [{ text: title }], ...(form === undefined ? {} : { form }) };
}

function catalogue(source: string): RecordDraft {
  const title = `Catalogue records of ${source}`;
  return { kind: 'Reference', labels: [{ text: title, language: 'en' }], csl: { type: 'dataset', title } };
}

/** SHA-256 over leader and fields, the first 32 hexadecimal digits. Time stamps (005) do not count as content. */
function digestOf(record: MarcRecord): string {
  let text = record.leader;
  for (const [tag, value] of record.control) if (tag !== '005') text += `\x1e${tag}${value}`;
  for (const { tag, ind1, ind2, subfields } of record.fields) {
    text += `\x1e${tag}${ind1}${ind2}`;
    for (const [code, value] of subfields) text += `\x1f${code}${value}`;
  }
  return hash('sha256', text, 'hex').slice(0, 32);
}
