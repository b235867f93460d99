import { readDatePhrase } from '../../domain/dates/phrase.ts';
import type { CitableEdition } from './citable.ts';
import { volumeOf } from './volume-number.ts';

/** Volume and issue of a number of a serial. */
export interface IssueNumber {
  readonly volume?: string;
  readonly issue?: string;
}

const label = '(?:no|nos|nr|num|núm|n|№|heft|stück|cahier|numéro|fasc|fascicolo|issue|part|pt)';
const both = new RegExp(`^(.+?)[,;:. ]+${label}[.º°]?\\s*(\\w+)\\.?$`, 'iu');
const issueAlone = new RegExp(`^(?:${label}[.º°]?\\s*)?(\\d{1,5})\\.?$`, 'iu');

/**
 * `Vol. 3, no. 131` is both, `No. 131` and `131` an issue, `Vol. 3` a volume. A number that is only the date of issue
 * (`March 1765`) is left out, as the date says it; any other is an issue as it stands.
 */
export function issueNumber({ number, date }: CitableEdition): IssueNumber {
  const text = number?.trim() ?? '';
  if (text === '') return {};
  const issue = issueAlone.exec(text)?.[1];
  if (issue !== undefined) return { issue };
  const volume = volumeOf(text);
  if (volume !== undefined) return { volume };
  const parts = both.exec(text);
  const volumeOfBoth = volumeOf(parts?.[1]);
  if (parts !== null && volumeOfBoth !== undefined) return { volume: volumeOfBoth, issue: parts[2]! };
  return isDate(text, date?.edtf) ? {} : { issue: text };
}

function isDate(text: string, edtf: string | undefined): boolean {
  const reading = readDatePhrase(text, 'library');
  return 'edtf' in reading && reading.edtf === edtf;
}
