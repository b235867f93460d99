import type { RecordOf } from '../../domain/model/row.ts';

/**
 * Form of publication from leader/06-07 and 008/18 alone. A serial that comes out once a year is an annual. Undefined
 * where the codes do not say: a graphic (leader/06 `k`) may be a sheet or a set, a component part is no publication.
 * Titles are never looked at.
 */
export function formOf(leader: string, f008: string): RecordOf<'Work'>['form'] {
  const printedText = leader[6] === 'a';
  if (!printedText) return undefined;
  if (leader[7] === 'm') return 'BOOK';
  if (leader[7] === 's') return f008[18] === 'a' ? 'ANNUAL' : 'SERIAL';
  return undefined;
}

/** Whether 008/18-34 is laid out as for books (leader/06-07). https://www.loc.gov/marc/bibliographic/bd008.html */
export function codedAsBook(leader: string): boolean {
  return (leader[6] === 'a' || leader[6] === 't') && 'acdm'.includes(leader[7] ?? ' ');
}
