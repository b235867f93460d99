import type { MarcField, MarcRecord } from '../../../src/intake/marcxml/marc-record.ts';
import { RecordView } from '../../../src/intake/marcxml/record-view.ts';

/**
 * A record in the notation of the MARC documentation: `Leader …`, `001 …`, `260 ##$aBoston :$b…`, `#` for a blank
 * indicator. Leader, 001 and 003 are supplied where they are not given.
 */
export function marc(...lines: readonly string[]): MarcRecord {
  const given = new Set(lines.map(line => line.slice(0, 3)));
  const supplied = [given.has('Lea') ? '' : 'Leader 00000cam a2200000 a 4500', given.has('001') ? '' : '001 17'];
  if (!given.has('003')) supplied.push('003 XX');
  const all = [...supplied, ...lines].filter(line => line !== '');
  return {
    ordinal: 1,
    line: 1,
    leader: all.find(line => line.startsWith('Leader'))!.slice(7),
    control: all.filter(line => line.startsWith('00')).map(line => [line.slice(0, 3), line.slice(4)] as const),
    fields: all.filter(line => /^[1-9]|^0[1-9]/.test(line)).map(field),
    faults: [],
  };
}

/** One field: `264 #1$aBoston :$b[publisher not identified],$c2010.` */
export function field(line: string): MarcField {
  const [, ...subfields] = line.slice(6).split('$');
  return {
    tag: line.slice(0, 3),
    ind1: line[4]!.replace('#', ' '),
    ind2: line[5]!.replace('#', ' '),
    subfields: subfields.map(part => [part[0]!, part.slice(1)] as const),
  };
}

export function view(...lines: readonly string[]): RecordView {
  return new RecordView(marc(...lines), 'XX');
}
