import { namesAgent } from './agents.ts';
import { codedDate } from './coded-dates.ts';
import type { MarcField } from './marc-record.ts';
import type { RecordView } from './record-view.ts';
import { tidy } from './text.ts';

/** Fields whose content is elsewhere in the bundle, and those about the record itself (040, 066). */
const taken = new Set(`010 015 020 022 024 040 066 100 110 111 245 246 250 260 264 300 440 490`.split(' '));
/** Notes that are rather lists and references: kept by tag. */
const notNotes = new Set(['510', '590', '591', '592', '593', '594', '595', '596', '597', '598', '599']);
/** Fields that the first indicator 0 makes private. */
const private0 = new Set(['541', '542', '561', '583']);

export interface Rest {
  readonly notes?: readonly string[];
  readonly columns?: Readonly<Record<string, string>>;
}

/**
 * What no other part takes: notes (5xx), and everything else as readable text by tag (`MARC 852`). Private notes (561, 541, 583 with
 * first indicator 0) and nonpublic subfields (852 and 856 $x) are left out.
 */
export function restOf(view: RecordView): Rest {
  const notes: string[] = [];
  const columns: Record<string, string> = {};
  const original = view.f008[6] === 'r' ? codedDate(view.f008).original : undefined;
  if (original !== undefined) columns[columnOf('008')] = `reissue or reproduction of ${original}`;
  for (const tag of view.tags()) {
    if (taken.has(tag)) continue;
    for (const field of view.fields(tag)) {
      if (isPrivate(field) || isTaken(view, field)) continue;
      const text = readable(field);
      if (text === '') continue;
      const isNote = tag[0] === '5' && !notNotes.has(tag);
      if (isNote) notes.push(text);
      if (isNote && tag !== '533' && tag !== '534') continue;
      const column = columnOf(tag);
      columns[column] = columns[column] === undefined ? text : `${columns[column]} | ${text}`;
    }
  }
  return {
    ...(notes.length === 0 ? {} : { notes }),
    ...(Object.keys(columns).length === 0 ? {} : { columns }),
  };
}

/** A name that says what the tag is one of. To an object, digits alone would be a place in a list, which is slow. */
function columnOf(tag: string): string {
  return `MARC ${tag}`;
}

function isPrivate(field: MarcField): boolean {
  return field.ind1 === '0' && private0.has(field.tag);
}

function isTaken(view: RecordView, field: MarcField): boolean {
  const { tag } = field;
  if (tag === '700' || tag === '710' || tag === '711' || tag === '720') return namesAgent(field);
  if (tag === '035') return /^\(/.test(field.subfields[0]?.[1] ?? '');
  if (tag === '880') return isLabel(view, field);
  return false;
}

/** Titles and names in another script are labels of what they name; other fields 880 are kept by tag. */
function isLabel(view: RecordView, field: MarcField): boolean {
  const tag = field.subfields.find(([code]) => code === '6')?.[1].slice(0, 3) ?? '';
  if (!/^(?:245|[17][01][01])$/.test(tag)) return false;
  return view.fields(tag).some(regular => view.inOtherScript(regular) === field);
}

/** Control subfields: authority numbers, institutions, linkage, sequence. */
const control = new Set(['0', '1', '2', '5', '6', '7', '8', '9']);

function readable(field: MarcField): string {
  const isSubject = field.tag[0] === '6';
  const nonpublic = field.tag === '852' || field.tag === '856';
  let text = '';
  for (const [code, value] of field.subfields) {
    if (control.has(code) || (nonpublic && code === 'x')) continue;
    const part = tidy(value);
    if (part === '') continue;
    const subdivision = isSubject && (code === 'v' || code === 'x' || code === 'y' || code === 'z');
    text += text === '' ? part : (subdivision ? ' -- ' : ' ') + part;
  }
  return text;
}
