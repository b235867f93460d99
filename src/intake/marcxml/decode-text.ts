import { PlatestemmaError } from '../../errors.ts';

const declared = /^\s*<\?xml[^>]*?encoding\s*=\s*["']([A-Za-z][\w.-]*)["']/;

/**
 * Bytes, or characters, that are given at once. What is read of a text keeps it alive: of short ones less is alive at a
 * time, and a foreign letter makes a short one alone twice as wide.
 */
const stretch = 16 * 1024;

/**
 * Text of an XML input in pieces: UTF-8 unless a byte order mark or the XML declaration says otherwise (XML 1.0,
 * appendix F). A declared UTF-16 whose bytes are plainly not so is read as UTF-8. Bytes that are no text of the
 * encoding come out as U+FFFD, which readers report.
 * @throws SOURCE_REFUSED if the encoding is not known
 */
export async function* decodeText(input: AsyncIterable<Uint8Array | string>): AsyncGenerator<string> {
  let decoder: InstanceType<typeof TextDecoder> | undefined;
  for await (const piece of input) {
    if (typeof piece === 'string') {
      for (let at = 0; at < piece.length; at += stretch) yield piece.slice(at, at + stretch);
      continue;
    }
    decoder ??= new TextDecoder(encodingOf(piece));
    for (let at = 0; at < piece.length; at += stretch) {
      const text = decoder.decode(piece.subarray(at, at + stretch), { stream: true });
      if (text !== '') yield text;
    }
  }
  const rest = decoder?.decode() ?? '';
  if (rest !== '') yield rest;
}

function encodingOf(start: Uint8Array): string {
  if (start[0] === 0xff && start[1] === 0xfe) return 'utf-16le';
  if (start[0] === 0xfe && start[1] === 0xff) return 'utf-16be';
  const head = new TextDecoder('latin1').decode(start.subarray(0, 200));
  const label = declared.exec(head.replace(/^ï»¿/, ''))?.[1]?.toLowerCase();
  if (label === undefined || label.startsWith('utf-16')) return 'utf-8';
  try {
    return new TextDecoder(label).encoding;
  } catch (cause) {
    throw new PlatestemmaError('SOURCE_REFUSED', `expected an encoding such as UTF-8, the file declares "${label}"`, {
      cause,
    });
  }
}
