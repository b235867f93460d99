import { decodeText } from './decode-text.ts';
import type { MarcRecord } from './marc-record.ts';
import { type BrokenInput, MarcxmlParser } from './marcxml-parser.ts';

/**
 * Records of MARCXML, marcxchange (ISO 25577), and responses of SRU and OAI-PMH that wrap them, in the order of the
 * input, with flat memory. Elements are known by local names. A record in which the XML is not well-formed comes with
 * `malformed`, and reading goes on after it. Entities of a document type are never expanded.
 * @throws SOURCE_REFUSED if the encoding is not known
 */
export async function* readMarcxml(
  input: AsyncIterable<Uint8Array | string>,
): AsyncGenerator<readonly (MarcRecord | BrokenInput)[]> {
  const parser = new MarcxmlParser();
  for await (const text of decodeText(input)) {
    parser.write(text);
    yield parser.take();
    if (parser.givenUp) return;
  }
  parser.end();
  yield parser.take();
}
