import { isRecordKind } from '../../domain/model/kinds.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { Prepared } from './prepared.ts';
import { kindNames, kindWord } from './schema-text.ts';
import { sql } from './statements.ts';

export interface SearchTexts {
  readonly whole: string;
  readonly tokens: readonly string[];
  /** Places in the list of kinds; empty: all records. */
  readonly kinds: readonly number[];
  readonly cap: number;
}

export type CandidateRow = readonly [id: string, kind: number, sort: string];

export interface FoundWords {
  /** A list a match class, best first. */
  readonly classes: readonly (readonly CandidateRow[])[];
  readonly cut: boolean;
}

const recordNumbers = kindNames.flatMap((kind, i) => (isRecordKind(kind) ? [i] : []));

/**
 * Candidates of a search. Each class is asked for what no better class has, so that a class that is cut does not
 * spill into the next.
 */
export class SearchReader {
  readonly #prepared: Prepared;

  constructor(prepared: Prepared) {
    this.#prepared = prepared;
  }

  search({ whole, tokens, kinds, cap }: SearchTexts): FoundWords {
    const of = kinds.length > 0 ? kinds : recordNumbers;
    const end = `${whole}\u{10ffff}`;
    const room = cap + 1;
    const byName = (text: string, ...values: string[]) =>
      of.flatMap(kind => this.#prepared.all<CandidateRow>(text, kind, ...values, room));
    const found = [
      byName(sql.wholeName, whole),
      byName(sql.nameBeginning, whole, end),
      ...wordQueries(tokens).map(query =>
        this.#prepared.all<CandidateRow>(sql.byWords, ofKinds(query, kinds), whole, end, room),
      ),
    ];
    return {
      classes: found.map(rows => rows.sort(bySortAndId).slice(0, cap)),
      cut: found.some(rows => rows.length > cap),
    };
  }
}

/** All words; all, the last as a beginning; some. Folded tokens hold letters and digits only: quotes are safe. */
function wordQueries(tokens: readonly string[]): string[] {
  const quoted = tokens.map(token => `"${token}"`);
  const words = quoted.join(' AND ');
  const prefix = `${words}*`;
  const some = quoted.join(' OR ');
  // A single word that is in a record at all is in it as a whole: there is no class below the beginnings.
  return [words, `(${prefix}) NOT (${words})`, ...(quoted.length > 1 ? [`(${some}) NOT (${prefix})`] : [])];
}

function ofKinds(query: string, kinds: readonly number[]): string {
  return kinds.length === 0 ? query : `(${kinds.map(kind => `"${kindWord(kind)}"`).join(' OR ')}) AND (${query})`;
}

function bySortAndId(a: CandidateRow, b: CandidateRow): number {
  return compareText(a[2], b[2]) || compareText(a[0], b[0]);
}
