import { controlField, type MarcField, type MarcRecord, subfield } from './marc-record.ts';
import { punctuationLeftOut } from './text.ts';

const none: readonly MarcField[] = [];

/** A record with its fields at hand by tag, and what every part of the mapping asks of it. */
export class RecordView {
  readonly record: MarcRecord;
  readonly leader: string;
  readonly f008: string;
  readonly source: string;
  readonly leftOut: boolean;
  readonly #byTag = new Map<string, MarcField[]>();

  constructor(record: MarcRecord, source: string) {
    this.record = record;
    this.leader = record.leader;
    this.f008 = controlField(record, '008') ?? '';
    this.source = source;
    this.leftOut = punctuationLeftOut(record.leader);
    for (const field of record.fields) {
      const list = this.#byTag.get(field.tag);
      if (list === undefined) this.#byTag.set(field.tag, [field]);
      else list.push(field);
    }
  }

  fields(tag: string): readonly MarcField[] {
    return this.#byTag.get(tag) ?? none;
  }

  first(tag: string): MarcField | undefined {
    return this.#byTag.get(tag)?.[0];
  }

  /** Tags that occur, in the order of their first field. */
  tags(): Iterable<string> {
    return this.#byTag.keys();
  }

  /**
   * Field 880 that gives a field in another script: `$6 880-02` there answers `$6 245-02/(N` here.
   * https://www.loc.gov/marc/bibliographic/ecbdcntf.html
   */
  inOtherScript(field: MarcField): MarcField | undefined {
    const alternates = this.#byTag.get('880');
    if (alternates === undefined) return undefined;
    const occurrence = /^880-(\d\d)/.exec(subfield(field, '6') ?? '')?.[1];
    if (occurrence === undefined || occurrence === '00') return undefined;
    return alternates.find(other => subfield(other, '6')?.startsWith(`${field.tag}-${occurrence}`) === true);
  }
}
