import { PlatestemmaError } from '../../errors.ts';

/** Longest line read, in characters; a longer one is a fault of that line alone. */
const longestLine = 4_000_000;

/** One line of a table. */
export interface TextLine {
  /** Counted from 1. */
  readonly number: number;
  /** Without its end; empty where there is a fault. */
  readonly text: string;
  readonly fault?: string;
}

/**
 * Lines of a text in bounded memory. Bytes are read in the named encoding, else as a byte order mark says, else as
 * UTF-8. A line that is too long, or that holds bytes that are no text of the encoding, comes as a fault.
 * @param keepsLost such bytes come as U+FFFD instead, for a reader who knows which texts had that before
 */
export async function* textLines(
  input: AsyncIterable<Uint8Array | string>,
  encoding?: string,
  keepsLost = false,
): AsyncGenerator<TextLine> {
  let number = 0;
  let held = '';
  let dropped = 0;
  const end = (text: string): TextLine => {
    const line = lineOf(++number, held + text, dropped, keepsLost);
    held = '';
    dropped = 0;
    return line;
  };
  for await (const text of decoded(input, encoding)) {
    let from = 0;
    for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', from)) {
      yield end(text.slice(from, at));
      from = at + 1;
    }
    held += text.slice(from);
    if (held.length <= longestLine) continue;
    dropped += held.length;
    held = '';
  }
  if (held.length + dropped > 0) yield end('');
}

function lineOf(number: number, text: string, dropped: number, keepsLost: boolean): TextLine {
  const length = text.length + dropped;
  if (length > longestLine) {
    const came = `expected a line of at most ${longestLine.toLocaleString('en')} characters, came one of`;
    return { number, text: '', fault: `${came} ${length.toLocaleString('en')}` };
  }
  if (!keepsLost && text.includes('\uFFFD')) {
    const fault =
      'expected text, came bytes that are none in this encoding, or U+FFFD where a character was lost before';
    return { number, text: '', fault };
  }
  return { number, text: text.endsWith('\r') ? text.slice(0, -1) : text };
}

async function* decoded(input: AsyncIterable<Uint8Array | string>, encoding?: string): AsyncGenerator<string> {
  let decoder: InstanceType<typeof TextDecoder> | undefined;
  let first = true;
  for await (const piece of input) {
    if (typeof piece === 'string') {
      yield first ? piece.replace(/^\uFEFF/, '') : piece;
      first = false;
    } else {
      decoder ??= new TextDecoder(encoding ?? markedEncoding(piece));
      yield decoder.decode(piece, { stream: true });
    }
  }
  yield decoder?.decode() ?? '';
}

function markedEncoding(start: Uint8Array): string {
  if (start[0] === 0xff && start[1] === 0xfe) return 'utf-16le';
  return start[0] === 0xfe && start[1] === 0xff ? 'utf-16be' : 'utf-8';
}

/** @throws INPUT_INVALID if no encoding has this name (WHATWG Encoding Standard) */
export function checkEncoding(label: string): void {
  try {
    new TextDecoder(label);
  } catch (cause) {
    throw new PlatestemmaError('INPUT_INVALID', `expected an encoding such as utf-8 or windows-1252, came "${label}"`, {
      cause,
    });
  }
}
