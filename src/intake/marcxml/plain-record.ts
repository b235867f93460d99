import { RecordBuilder } from './record-builder.ts';

/** A record that was read, and the place after it. */
export interface PlainRecord {
  readonly builder: RecordBuilder;
  readonly end: number;
}

/**
 * Reads records as nearly all are written: elements in order, with the attributes of MARCXML in their order and between
 * double quotes, no comments. Nothing is guessed: what is not written so letter for letter is left to the XML parser.
 */
export class PlainRecords {
  #elements = new Elements('');
  #isOfUse = true;

  /** What stands for itself is so in XML 1.0; in later versions more characters end a line, or may not stand in a file. */
  get isOfUse(): boolean {
    return this.#isOfUse;
  }

  /** @param version of XML that the file declares */
  declared(version: string | undefined): void {
    this.#isOfUse = version === '1.0';
  }

  /**
   * @param at place where the record begins
   * @param line of that place
   * @returns undefined if the record is not written so, or not all there
   */
  read(text: string, at: number, line: number): PlainRecord | undefined {
    begin.lastIndex = at;
    const prefix = begin.exec(text)?.[1];
    if (prefix === undefined) return undefined;
    if (prefix !== this.#elements.prefix) this.#elements = new Elements(prefix);
    const builder = new RecordBuilder(line);
    const end = this.#elements.read(text, begin.lastIndex, builder);
    return end === undefined ? undefined : { builder, end };
  }
}

/** A long one would make expressions too large. */
const prefixes = '(?:[A-Za-z_][\\w.-]{0,30}:)?';
const begin = new RegExp(`<(${prefixes})record>`, 'y');
const recordEnd = new RegExp(`</${prefixes}record>`, 'g');

/** No end tag of a record is longer than so many characters. */
export const longestEnd = 50;

/** The place after the first end tag of a record from a place on; undefined if there is none. */
export function afterRecordEnd(text: string, from: number): number | undefined {
  recordEnd.lastIndex = from;
  return recordEnd.test(text) ? recordEnd.lastIndex : undefined;
}

const tag = '[0-9A-Za-z]{3}';
/** An attribute of one character that stands for itself. */
const one = "[ !#-%'-;=-~]";

/** The elements of a record, whose names have one prefix. */
class Elements {
  readonly prefix: string;
  readonly #leader: Element;
  readonly #control: Element;
  readonly #field: Element;
  readonly #subfield: Element;
  readonly #end: string;

  constructor(prefix: string) {
    this.prefix = prefix;
    this.#leader = new Element(`${prefix}leader`);
    this.#control = new Element(`${prefix}controlfield`, ` tag="${tag}"`);
    this.#field = new Element(`${prefix}datafield`, ` tag="${tag}" ind1="${one}" ind2="${one}"`);
    this.#subfield = new Element(`${prefix}subfield`, ` code="${one}"`);
    this.#end = `</${prefix}record>`;
  }

  /** @returns the place after the record */
  read(text: string, from: number, builder: RecordBuilder): number | undefined {
    let at: number | undefined = afterSpace(text, from);
    while (at !== undefined) {
      const field = this.#field.start(text, at);
      if (field !== undefined) at = this.#readField(text, field, builder);
      else if (text.startsWith(this.#end, at)) return at + this.#end.length;
      else at = this.#readControl(text, at, builder);
    }
    return undefined;
  }

  /** Attributes are found from the end of the tag: ` tag="245" ind1="1" ind2="0">` is as long in every field. */
  #readField(text: string, start: number, builder: RecordBuilder): number | undefined {
    builder.openField(text.slice(start - 23, start - 20), text[start - 12], text[start - 3]);
    for (let at = afterSpace(text, start); ; ) {
      const subfield = this.#subfield.start(text, at);
      if (subfield === undefined) return this.#field.end(text, at);
      const ended = afterValue(text, subfield);
      const next = this.#subfield.end(text, ended);
      if (next === undefined) return undefined;
      builder.subfield(text[subfield - 3], valueIn(text, subfield, ended));
      at = next;
    }
  }

  #readControl(text: string, at: number, builder: RecordBuilder): number | undefined {
    const control = this.#control.start(text, at);
    const start = control ?? this.#leader.start(text, at);
    if (start === undefined) return undefined;
    const ended = afterValue(text, start);
    const value = valueIn(text, start, ended);
    if (control === undefined) builder.leader(value);
    else builder.control(text.slice(start - 5, start - 2), value);
    return (control === undefined ? this.#leader : this.#control).end(text, ended);
  }
}

class Element {
  readonly #start: RegExp;
  readonly #end: string;

  constructor(name: string, attributes = '') {
    this.#start = new RegExp(`<${name.replaceAll('.', '\\.')}${attributes}>`, 'y');
    this.#end = `</${name}>`;
  }

  /** The place after its start tag, if that stands here. */
  start(text: string, at: number): number | undefined {
    this.#start.lastIndex = at;
    return this.#start.test(text) ? this.#start.lastIndex : undefined;
  }

  /** The place after its end tag and the space that follows, if that stands here. */
  end(text: string, at: number): number | undefined {
    return text.startsWith(this.#end, at) ? afterSpace(text, at + this.#end.length) : undefined;
  }
}

const space = /[ \t\n]*(?:\r\n[ \t\n]*)*/y;

export function afterSpace(text: string, at: number): number {
  space.lastIndex = at;
  space.test(text);
  return space.lastIndex;
}

/** Characters that stand for themselves in a value: all that XML has but "&", "<", "]", and those beyond U+FFFF. */
const plain = /[\t\n -%'-;=-\\^-\uD7FF\uE000-\uFFFD]*/y;
/** References that every file may use: https://www.w3.org/TR/xml/#sec-predefined-ent */
const reference = /&(?:amp|quot|apos|lt|gt);/y;

/** The place after a value, as far as it is plain. "]]>" may not stand in one. */
function afterValue(text: string, from: number): number {
  for (let at = from; ; ) {
    plain.lastIndex = at;
    plain.test(text);
    at = plain.lastIndex;
    reference.lastIndex = at;
    if (reference.test(text)) at = reference.lastIndex;
    else if (text[at] === ']' && !text.startsWith(']]>', at)) at++;
    else return at;
  }
}

const references = /&(amp|quot|apos|lt|gt);/g;
const meant: Readonly<Record<string, string>> = { amp: '&', quot: '"', apos: "'", lt: '<', gt: '>' };

function valueIn(text: string, from: number, to: number): string {
  const value = text.slice(from, to);
  return value.includes('&') ? value.replace(references, (_, name) => meant[name]!) : value;
}
