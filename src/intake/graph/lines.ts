/** Longest line read unless another is asked for, in bytes; a longer one is a fault of that line alone. */
const longestLine = 4 * 1024 * 1024;

export interface Line {
  /** Counted from 1. */
  readonly number: number;
  /** Without the line end and surrounding white space; empty where there is a fault. */
  readonly text: string;
  readonly fault?: string;
}

/** Lines of a stream of UTF-8, in bounded memory: a line that is too long or no UTF-8 comes as a fault. */
export async function* lines(input: AsyncIterable<Uint8Array>, longest = longestLine): AsyncGenerator<Line> {
  let number = 0;
  let held: Uint8Array[] = [];
  let bytes = 0;
  const end = (): Line => {
    number++;
    const line = bytes > longest ? tooLong(number, bytes, longest) : decode(number, Buffer.concat(held));
    held = [];
    bytes = 0;
    return line;
  };
  for await (const chunk of input) {
    let from = 0;
    for (let at = chunk.indexOf(10); at >= 0; at = chunk.indexOf(10, from)) {
      bytes += at - from;
      if (bytes <= longest) held.push(chunk.subarray(from, at));
      yield end();
      from = at + 1;
    }
    bytes += chunk.length - from;
    if (bytes <= longest) held.push(chunk.slice(from));
    else held = [];
  }
  if (bytes > 0) yield end();
}

function tooLong(number: number, bytes: number, longest: number): Line {
  return { number, text: '', fault: `expected a line of at most ${longest} bytes, came one of ${bytes}` };
}

function decode(number: number, bytes: Uint8Array): Line {
  try {
    return { number, text: new TextDecoder('utf-8', { fatal: true, ignoreBOM: number !== 1 }).decode(bytes).trim() };
  } catch {
    return { number, text: '', fault: 'expected UTF-8, came bytes that are none' };
  }
}
