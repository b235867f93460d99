import { firm } from './agents.ts';
import type { BundleDraft, Said } from './bundle-draft.ts';
import { type ImprintPart, type ImprintRole, imprintParts } from './imprint-words.ts';
import type { MarcField } from './marc-record.ts';
import { placeNames } from './place-names.ts';
import { countriesOf, readPlace } from './place-reading.ts';
import type { RecordView } from './record-view.ts';
import { remember } from './remember.ts';
import { type Marks, statement, tidy, withoutEndMarks } from './text.ts';

/** The words of a date in an imprint, and where they stand. */
export interface ImprintDate {
  readonly words: string;
  readonly said: Said;
  /** It is the date of a copyright notice (264, second indicator 4). */
  readonly copyrightNotice: boolean;
}

const marks: Marks = { a: '; ', b: ' : ', c: ', ', e: '; ', f: ' : ', g: ', ' };
/** A place of an imprint; without `id` where its words name none. */
interface Where {
  readonly id?: string;
  readonly words?: string;
  readonly rule?: string;
  readonly doubtful?: boolean;
}

const nowhere: readonly Where[] = [{}];
const namesOf = remember(50_000, placeNames);
const partsOf = remember(50_000, imprintParts);
const firmOf = remember(50_000, firm);

/** Place, publisher and date as transcribed; undefined if the record has none. */
export function imprintText(view: RecordView): string | undefined {
  const texts = imprintFields(view).map(field => statement(field, marks, view.leftOut));
  return texts.filter(text => text !== '').join('; ') || undefined;
}

/** Imprint claims of fields 260 and 264, one for each place and each part an agent took, in order; gives the words of their dates. */
export function addImprints(view: RecordView, draft: BundleDraft): readonly ImprintDate[] {
  const writer = new ImprintWriter(view, draft);
  for (const field of imprintFields(view)) writer.add(field);
  return writer.dates;
}

function imprintFields(view: RecordView): readonly MarcField[] {
  return [...view.fields('260'), ...view.fields('264')];
}

/** Second indicator of 264: who the names of the field are. 0 (unpublished) and 4 (copyright) name no imprint. */
const roleOf264: Readonly<Record<string, ImprintRole>> = { 2: 'DISTRIBUTOR', 3: 'PRINTER' };

class ImprintWriter {
  readonly dates: ImprintDate[] = [];
  readonly #draft: BundleDraft;
  readonly #countries: readonly string[];
  #order = 0;
  #placed = false;

  constructor(view: RecordView, draft: BundleDraft) {
    this.#draft = draft;
    this.#countries = countriesOf(view);
  }

  add(field: MarcField): void {
    if (isUnstructured(field)) return;
    const kind = field.tag === '264' ? field.ind2 : '1';
    if (kind !== '0' && kind !== '4') this.#pair(field, roleOf264[kind]);
    if (field.tag === '260') this.#pairManufacture(field);
    if (kind === '1' || kind === '4') this.#noteDates(field, kind === '4');
  }

  /** Each name goes with the places before it; several places may share a name, several names a place. */
  #pair(field: MarcField, role: ImprintRole | undefined): void {
    let places: string[] = [];
    let named = false;
    for (const [code, value] of field.subfields) {
      if (code === 'a') {
        if (named) places = [];
        named = false;
        places.push(value);
      } else if (code === 'b') {
        named = true;
        this.#claims(places, value, role, { tag: field.tag, codes: places.length > 0 ? 'ab' : 'b' });
      }
    }
    if (!named && places.length > 0) this.#claims(places, undefined, role, { tag: field.tag, codes: 'a' });
  }

  /** Place ($e) and printer ($f) of manufacture. */
  #pairManufacture(field: MarcField): void {
    let place: string[] = [];
    for (const [code, value] of field.subfields) {
      if (code === 'e') place = [unwrapped(value)];
      if (code === 'f')
        this.#claims(place, unwrapped(value), 'PRINTER', { tag: '260', codes: place.length > 0 ? 'ef' : 'f' });
    }
    if (place.length > 0 && field.subfields.every(([code]) => code !== 'f')) {
      this.#claims(place, undefined, 'PRINTER', { tag: '260', codes: 'e' });
    }
  }

  #claims(places: readonly string[], names: string | undefined, role: ImprintRole | undefined, said: Said): void {
    const where = places.flatMap(words => this.#places(words, said));
    const parts: readonly ImprintPart[] = names === undefined ? [{ role: 'PUBLISHER' }] : partsOf(names);
    for (const part of parts) {
      const agent = part.name === undefined ? undefined : firmOf(part.name);
      const agentId = agent === undefined ? undefined : this.#draft.shared('@agent', agent.key, agent.record);
      for (const place of where.length === 0 ? nowhere : where)
        this.#claim(place, agentId, role ?? part.role, names, said);
    }
  }

  #claim(place: Where, agent: string | undefined, role: ImprintRole, names: string | undefined, said: Said): void {
    const words = [place.words, names]
      .filter(text => text !== undefined)
      .map(tidy)
      .join(' ');
    this.#draft.claim(
      {
        kind: 'Imprint',
        edition: '@edition',
        ...(place.id === undefined ? {} : { place: place.id }),
        ...(agent === undefined ? {} : { agent }),
        role,
        order: ++this.#order,
        ...(words === '' ? {} : { asWritten: withoutEndMarks(words) }),
        ...(place.rule === undefined ? {} : { rule: place.rule }),
        ...(place.doubtful === true ? { certainty: 'PROBABLE' } : {}),
      },
      said,
    );
  }

  #places(words: string, said: Said): Where[] {
    const { names, doubtful } = namesOf(words);
    if (names.length === 0) return [{ words }];
    return names.map((name): Where => {
      const reading = readPlace(name, this.#countries, !this.#placed);
      this.#placed = true;
      if (reading.unresolved !== undefined) {
        this.#draft.remark(
          'INPUT_INVALID',
          `expected a town that is known, came "${name}": ${reading.unresolved}`,
          `${said.tag}$a`,
        );
      }
      const id = this.#draft.shared('@place', reading.key, reading.record);
      return { id, words, doubtful, ...(reading.rule === undefined ? {} : { rule: reading.rule }) };
    });
  }

  #noteDates(field: MarcField, copyrightNotice: boolean): void {
    for (const [code, value] of field.subfields) {
      const words = code === 'c' ? withoutEndMarks(tidy(value)) : '';
      if (words !== '') this.dates.push({ words, said: { tag: field.tag, codes: 'c' }, copyrightNotice });
    }
  }
}

/** Manufacture stands in round brackets in field 260: `(London :`, `A. Printer)`. */
function unwrapped(value: string): string {
  return value.replace(/[()]/g, '');
}

/** A whole imprint in one $a, as old catalogues were converted: `pp. 720. W. Tegg & Co.: London, 1857.` */
function isUnstructured(field: MarcField): boolean {
  const [only, ...others] = field.subfields;
  return others.length === 0 && only?.[0] === 'a' && /\d/.test(only[1]);
}
