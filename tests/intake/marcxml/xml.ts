import type { MarcRecord } from '../../../src/intake/marcxml/marc-record.ts';
import type { BrokenInput } from '../../../src/intake/marcxml/marcxml-parser.ts';
import { readMarcxml } from '../../../src/intake/marcxml/read-marcxml.ts';

export const leader = '00000cam a2200000 a 4500';

/** A MARCXML record with a control number and a title. */
export function recordXml(number: string | number, title = `Title ${number}`): string {
  return `<record><leader>${leader}</leader><controlfield tag="001">${number}</controlfield><controlfield tag="003">XX</controlfield><datafield tag="245" ind1="1" ind2="0"><subfield code="a">${title}</subfield></datafield></record>`;
}

export function collection(...records: readonly string[]): string {
  return `<?xml version="1.0" encoding="UTF-8"?>\n<collection xmlns="http://www.loc.gov/MARC21/slim">\n${records.join('\n')}\n</collection>\n`;
}

/** The bytes of a text, in pieces of `size`. */
export async function* inPieces(text: string | Uint8Array, size = 65_536): AsyncGenerator<Uint8Array> {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  for (let from = 0; from < bytes.length; from += size) yield bytes.subarray(from, from + size);
}

export interface ReadAll {
  readonly records: readonly MarcRecord[];
  readonly broken: readonly BrokenInput[];
}

export async function readAll(input: string | Uint8Array, size?: number): Promise<ReadAll> {
  const records: MarcRecord[] = [];
  const broken: BrokenInput[] = [];
  for await (const some of readMarcxml(inPieces(input, size))) {
    for (const read of some) {
      if ('broken' in read) broken.push(read);
      else records.push(read);
    }
  }
  return { records, broken };
}

/** Control number of each record, with a star where it is malformed. */
export function numbers({ records }: ReadAll): string[] {
  return records.map(({ control, malformed }) => `${control[0]?.[1] ?? '?'}${malformed === undefined ? '' : '*'}`);
}
