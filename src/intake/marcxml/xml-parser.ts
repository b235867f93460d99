import { SaxesParser } from 'saxes';

interface Options {
  readonly xmlns: false;
  readonly position: true;
}

/**
 * The XML parser without an Error for each fault: a file with a fault in every element (files that were joined have
 * one) is read as fast as any other.
 */
export class XmlParser extends SaxesParser<Options> {
  readonly #onFault: (message: string) => void;

  /** @param onFault is told what is wrong, without the place: `line` and `column` have it. */
  constructor(onFault: (message: string) => void) {
    super({ xmlns: false, position: true });
    this.#onFault = onFault;
  }

  override fail(message: string): this {
    this.#onFault(message.replace(/\.$/, ''));
    return this;
  }

  /** Goes past text that need not be parsed, without characters beyond U+FFFF. */
  pass(text: string): void {
    let begun = -this.column;
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) {
      this.line++;
      begun = at + 1;
    }
    this.column = text.length - begun;
  }
}
