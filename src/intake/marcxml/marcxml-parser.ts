import type { SaxesTagPlain } from 'saxes';
import { BareAmpersands, bareAmpersand } from './bare-ampersands.ts';
import type { MarcRecord } from './marc-record.ts';
import { afterRecordEnd, afterSpace, longestEnd, PlainRecords } from './plain-record.ts';
import { RecordBuilder } from './record-builder.ts';
import { XmlParser } from './xml-parser.ts';

/** A fault of the file that lies in no record. */
export interface BrokenInput {
  readonly broken: string;
  /** Records that came before it. */
  readonly after: number;
}

/** Most characters between two tags, quotes or comments of an XML file: more is no catalogue record. */
const longestStretch = 20_000_000;
const deepest = 1000;
/** Elements in each other that a record has: itself, a field, a subfield. */
const elementsDeep = 3;
/** Errors without a record between them after which the rest is given up. */
const mostErrors = 1000;
/** What the parser says of every element after the end of the document, and of an end tag that it had to supply. */
const oneRootOnly = 'documents may contain only one root';
const endSupplied = 'unexpected close tag';

/** Most characters that wait for the end of a record; what is longer is left to the XML parser. */
const longestHeld = 65_536;

/** Turns the text of a MARCXML file, given in pieces, into records and faults. */
export class MarcxmlParser {
  readonly #parser = new XmlParser(message => this.#fault(message));
  readonly #ampersands = new BareAmpersands();
  readonly #plain = new PlainRecords();
  #ready: (MarcRecord | BrokenInput)[] = [];
  #record: RecordBuilder | undefined;
  /** A record whose end tag was just seen or supplied: the parser says afterwards which. */
  #closed: RecordBuilder | undefined;
  #text: string | undefined;
  #count = 0;
  #depth = 0;
  #stretch = 0;
  #errors = 0;
  #started = false;
  /** What follows a record, and does not end one yet. */
  #held = '';
  /**
   * Where the XML parser stood when a record had ended, and after the space and the plain records that followed it. If it
   * stands there still, it has seen nothing else since: it reads text, and keeps nothing of it.
   */
  #betweenLine = 0;
  #betweenColumn = 0;
  #ending = false;
  readonly #told = new Set<string>();
  givenUp = false;

  constructor() {
    this.#parser.on('xmldecl', ({ version }) => this.#plain.declared(version));
    this.#parser.on('opentag', tag => this.#open(tag));
    this.#parser.on('closetag', tag => this.#close(tag));
    this.#parser.on('text', text => this.#addText(text));
    this.#parser.on('cdata', text => this.#addText(text.replaceAll(bareAmpersand, '&')));
  }

  write(text: string): void {
    if (!this.#started && !this.#beginsAsXml(text)) return;
    this.#read(this.#ampersands.write(text));
    if (this.#stretch > longestStretch) this.#giveUp(`more than ${longestStretch} characters without a tag`);
  }

  end(): void {
    this.#give(this.#held + this.#ampersands.end());
    this.#held = '';
    this.#ending = true;
    if (this.#record !== undefined && !this.#record.isWrapper) {
      this.#record.malformed(`the input ends at line ${this.#parser.line} within it`);
      this.#told.add('end');
      this.#finish();
    }
    this.#parser.close();
    this.#release();
    if (this.#count === 0 && this.#told.size === 0) this.#broken('expected MARC records, found none');
  }

  take(): readonly (MarcRecord | BrokenInput)[] {
    this.#release();
    const ready = this.#ready;
    this.#ready = [];
    return ready;
  }

  #beginsAsXml(text: string): boolean {
    const start = text.trimStart().slice(0, 24);
    if (start === '') return false;
    this.#started = true;
    if (start.startsWith('<')) return true;
    this.#giveUp(`expected XML, which begins with "<", came "${start}"`);
    return false;
  }

  /** Gives the XML parser all but the records that are written plainly and follow another record. */
  #read(more: string): void {
    const text = this.#held + more;
    const from = Math.max(0, this.#held.length - longestEnd);
    if (this.#held !== '' && text.length < longestHeld && afterRecordEnd(text, from) === undefined) {
      this.#held = text;
      return;
    }
    this.#held = '';
    for (let at = 0; at < text.length && !this.givenUp; ) {
      if (this.#isBetweenRecords) at = this.#readPlain(text, at);
      const end = (this.#plain.isOfUse ? afterRecordEnd(text, at) : undefined) ?? text.length;
      if (end === text.length && this.#isBetweenRecords && end - at < longestHeld) {
        this.#held = text.slice(at);
        return;
      }
      this.#give(text.slice(at, end));
      at = end;
    }
  }

  #give(text: string): void {
    this.#stretch += text.length;
    this.#parser.write(text);
    // The parser keeps a carriage return, and half a character, until it sees what follows.
    if (/[\r\uD800-\uDBFF]/.test(text.slice(-1))) this.#betweenLine = 0;
  }

  get #isBetweenRecords(): boolean {
    const { line, column } = this.#parser;
    const isDeep = this.#depth + elementsDeep > deepest;
    const isUnseen = this.#betweenLine === line && this.#betweenColumn === column;
    return this.#plain.isOfUse && this.#depth > 0 && !isDeep && isUnseen;
  }

  /** @returns the place after the records that follow and are written plainly, and the space after them */
  #readPlain(text: string, from: number): number {
    for (let at = from; ; ) {
      const begin = afterSpace(text, at);
      this.#stretch = begin < text.length ? 0 : this.#stretch + begin - at;
      this.#pass(text, at, begin);
      const read = this.#plain.read(text, begin, this.#parser.line);
      if (read === undefined) return begin;
      this.#release();
      this.#errors = 0;
      this.#record = read.builder;
      this.#finish();
      this.#pass(text, begin, read.end);
      at = read.end;
    }
  }

  #pass(text: string, from: number, to: number): void {
    this.#parser.pass(text.slice(from, to));
    this.#markBetween();
  }

  #markBetween(): void {
    this.#betweenLine = this.#parser.line;
    this.#betweenColumn = this.#parser.column;
  }

  #open(tag: SaxesTagPlain): void {
    if (this.givenUp) return;
    this.#stretch = 0;
    if (this.#closed !== undefined) this.#release();
    if (++this.#depth > deepest) this.#giveUp(`elements are nested more than ${deepest} deep`);
    const { attributes } = tag;
    switch (localName(tag.name)) {
      case 'subfield':
      case 'controlfield':
      case 'leader':
        this.#text = '';
        break;
      case 'datafield':
        this.#record?.openField(attributes['tag'], attributes['ind1'], attributes['ind2']);
        break;
      case 'record':
        this.#begin();
        break;
      default:
        this.#record?.otherChild();
    }
  }

  #close(tag: SaxesTagPlain): void {
    if (this.givenUp) return;
    this.#stretch = 0;
    if (this.#closed !== undefined) this.#release();
    this.#depth--;
    const text = this.#text ?? '';
    switch (localName(tag.name)) {
      case 'subfield':
        this.#record?.subfield(tag.attributes['code'], text);
        break;
      case 'controlfield':
        this.#record?.control(tag.attributes['tag'], text);
        break;
      case 'leader':
        this.#record?.leader(text);
        break;
      case 'datafield':
        this.#record?.closeField();
        return;
      case 'record':
        this.#markBetween();
        this.#finish();
        return;
      default:
        return;
    }
    this.#text = undefined;
  }

  #addText(text: string): void {
    this.#stretch = 0;
    if (this.#text !== undefined) this.#text += text;
  }

  #begin(): void {
    if (this.#record !== undefined && !this.#record.isEmpty) {
      this.#record.malformed(`another record begins at line ${this.#parser.line} within it`);
      this.#finish();
      this.#release();
    }
    this.#errors = 0;
    this.#record = new RecordBuilder(this.#parser.line);
  }

  #finish(): void {
    this.#closed = this.#record;
    this.#record = undefined;
    this.#text = undefined;
  }

  #release(): void {
    const closed = this.#closed;
    this.#closed = undefined;
    if (closed !== undefined && !closed.isWrapper) this.#ready.push(closed.build(++this.#count));
  }

  #fault(message: string): void {
    if (this.givenUp) return;
    if (message === oneRootOnly) {
      this.#outside(message, true);
      return;
    }
    const inRecord = this.#record ?? (message === endSupplied ? this.#closed : undefined);
    if (inRecord === undefined) this.#outside(message, this.#depth === 0);
    else inRecord.malformed(this.#notWellFormed(message));
    if (++this.#errors > mostErrors) {
      this.#giveUp(`more than ${mostErrors} errors in a row: ${this.#notWellFormed(message)}`);
    }
  }

  /**
   * Outside records each kind of error is told once; once for all that follows the end of the document, which is what
   * files that were joined look like; and once for the end of the input.
   */
  #outside(message: string, outsideRoot: boolean): void {
    const what = this.#ending ? 'end' : outsideRoot ? 'outside the root' : message;
    if (this.#told.has(what)) return;
    this.#told.add(what);
    this.#release();
    this.#broken(this.#notWellFormed(message));
  }

  #notWellFormed(message: string): string {
    return `the XML is not well-formed at line ${this.#parser.line}, column ${this.#parser.column}: ${message}`;
  }

  #giveUp(why: string): void {
    if (this.givenUp) return;
    if (this.#record !== undefined && !this.#record.isEmpty) {
      this.#record.malformed(why);
      this.#finish();
    }
    this.#release();
    this.#broken(`${why}; the rest is not read`);
    this.givenUp = true;
  }

  #broken(broken: string): void {
    this.#ready.push({ broken, after: this.#count });
  }
}

/** The element of a name, whatever its prefix. */
const localNames = new Map<string, string>();

function localName(name: string): string {
  let local = localNames.get(name);
  if (local === undefined) {
    local = name.slice(name.indexOf(':') + 1);
    if (localNames.size < 1000) localNames.set(name, local);
  }
  return local;
}
