import { tryEdtf } from '../../domain/dates/edtf.ts';
import { type MarcField, subfield } from './marc-record.ts';

/**
 * Date of field 046 as EDTF: $k to $l (created), else $c to $e (date 1, date 2), in EDTF where $2 says so, else in
 * digits (ISO 8601 without hyphens). Undefined where it cannot be read or is in $b, $d (before the Christian era).
 * https://www.loc.gov/marc/bibliographic/bd046.html
 */
export function finerDate(fields: readonly MarcField[]): string | undefined {
  for (const field of fields) {
    if (subfield(field, 'a') === 'x') continue;
    const edtf = subfield(field, '2')?.trim().toLowerCase() === 'edtf';
    const from = asEdtf(subfield(field, 'k') ?? subfield(field, 'c'), edtf);
    const to = asEdtf(subfield(field, 'l') ?? subfield(field, 'e'), edtf);
    const date = from === undefined || to === undefined || from === to ? from : ranged(subfield(field, 'a'), from, to);
    if (date !== undefined && tryEdtf(date) !== undefined) return date;
  }
  return undefined;
}

/** Type `q` says one date within a range; every other pair is a stretch of time. */
function ranged(type: string | undefined, from: string, to: string): string {
  return type === 'q' ? `[${from}..${to}]` : `${from}/${to}`;
}

function asEdtf(value: string | undefined, edtf: boolean): string | undefined {
  const text = value?.trim();
  if (text === undefined || text === '') return undefined;
  if (edtf) return text;
  const parts = /^(\d{4})(?:-?(\d\d)(?:-?(\d\d))?)?$/.exec(text);
  return parts === null
    ? undefined
    : parts
        .slice(1)
        .filter(part => part !== undefined)
        .join('-');
}
