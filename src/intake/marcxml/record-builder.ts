import type { MarcField, MarcRecord, MarcSubfield } from './marc-record.ts';

/** Most characters of one record that are kept: ten times what ISO 2709 can hold. */
const mostCharacters = 1_000_000;
const goodTag = /^[0-9A-Za-z]{3}$/;

interface OpenField {
  readonly tag: string;
  readonly ind1: string;
  readonly ind2: string;
  readonly subfields: MarcSubfield[];
}

/** Collects the elements of one record. A `record` element that turns out to be a wrapper (SRU, OAI-PMH) stays empty. */
export class RecordBuilder {
  readonly line: number;
  #leader: string | undefined;
  readonly #control: (readonly [string, string])[] = [];
  readonly #fields: MarcField[] = [];
  readonly #faults: string[] = [];
  #malformed: string | undefined;
  #field: OpenField | undefined;
  #characters = 0;
  #children = 0;

  constructor(line: number) {
    this.line = line;
  }

  /** True if nothing of a MARC record was in it but elements of another kind were. */
  get isWrapper(): boolean {
    return this.isEmpty && this.#children > 0;
  }

  get isEmpty(): boolean {
    return this.#leader === undefined && this.#control.length === 0 && this.#fields.length === 0;
  }

  otherChild(): void {
    this.#children++;
  }

  leader(text: string): void {
    if (this.#leader !== undefined) this.#faults.push('the leader is given twice');
    else this.#leader = text;
    if (text.length !== 24)
      this.#faults.push(`expected a leader of 24 characters, came ${text.length}: "${text.slice(0, 40)}"`);
  }

  control(tag: string | undefined, text: string): void {
    if (this.#holds(text)) this.#control.push([this.#tag(tag), text]);
  }

  openField(tag: string | undefined, ind1: string | undefined, ind2: string | undefined): void {
    const known = this.#tag(tag);
    if (ind1?.length !== 1 || ind2?.length !== 1) {
      this.#faults.push(
        `field ${known}: expected two indicators of one character each, came "${ind1 ?? ''}" and "${ind2 ?? ''}"`,
      );
    }
    const field = { tag: known, ind1: ind1?.[0] ?? ' ', ind2: ind2?.[0] ?? ' ', subfields: [] };
    this.#field = field;
    this.#fields.push(field);
  }

  closeField(): void {
    this.#field = undefined;
  }

  subfield(code: string | undefined, text: string): void {
    if (this.#field === undefined) this.malformed('a subfield stands outside a field');
    else if (this.#holds(text)) {
      if (code?.length !== 1) {
        this.#faults.push(`field ${this.#field.tag}: expected a subfield code of one character, came "${code ?? ''}"`);
      }
      this.#field.subfields.push([code?.[0] ?? ' ', text]);
    }
  }

  malformed(why: string): void {
    this.#malformed ??= why;
  }

  build(ordinal: number): MarcRecord {
    if (this.#leader === undefined) this.#faults.push('the record has no leader');
    const { line } = this;
    return {
      ordinal,
      line,
      leader: this.#leader ?? '',
      control: this.#control,
      fields: this.#fields,
      faults: this.#faults,
      ...(this.#malformed === undefined ? {} : { malformed: this.#malformed }),
    };
  }

  #tag(tag: string | undefined): string {
    if (tag === undefined || !goodTag.test(tag))
      this.#faults.push(`expected a tag of three characters, came "${tag ?? ''}"`);
    return tag ?? '';
  }

  #holds(text: string): boolean {
    this.#characters += text.length;
    if (text.includes('\uFFFD')) this.#unreadable();
    if (this.#characters <= mostCharacters) return true;
    this.malformed(`the record has more than ${mostCharacters.toLocaleString('en')} characters`);
    return false;
  }

  #unreadable(): void {
    const fault = 'it holds U+FFFD: bytes that are not text of the encoding, or characters that were lost before';
    if (!this.#faults.includes(fault)) this.#faults.push(fault);
  }
}
