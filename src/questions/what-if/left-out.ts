import { isRecordKind } from '../../domain/model/kinds.ts';
import type { AnyClaim, AnyRow, Stamped } from '../../domain/model/row.ts';
import { rowInOrder } from '../../domain/model/row-in-order.ts';
import { compareText } from '../../domain/text/compare.ts';

/** What decides which claims are left out, each as claims name it. */
export interface LeftOutBy {
  readonly claims: ReadonlySet<string>;
  readonly references: ReadonlySet<string>;
  readonly saidBy: ReadonlySet<string>;
  readonly rules: ReadonlySet<string>;
}

/**
 * Claims that are left out of a question. Those that are named by id are known beforehand; the others are found among the
 * claims that are read, and kept in mind with those that lose some of their evidence and stay.
 */
export class LeftOut {
  readonly ids: ReadonlySet<string>;
  /** No claim is left out for what it says. */
  readonly isByIds: boolean;
  readonly #by: LeftOutBy;
  readonly #found = new Set<string>();
  readonly #weakened = new Set<string>();

  constructor(by: LeftOutBy) {
    this.ids = by.claims;
    this.isByIds = by.references.size + by.saidBy.size + by.rules.size === 0;
    this.#by = by;
  }

  /** Ids of claims that were read, and left out for what they say; by id. */
  found(): readonly string[] {
    return [...this.#found].sort(compareText);
  }

  /** Ids of claims that were read, and stay for their other evidence; by id. */
  weakened(): readonly string[] {
    return [...this.#weakened].sort(compareText);
  }

  /** The row as the question sees it: a claim that is left out as one that was withdrawn. */
  seen(row: Stamped<AnyRow>): Stamped<AnyRow> {
    return isRecordKind(row.kind) || !this.#has(row as AnyClaim) ? row : rowInOrder({ ...row, standing: 'WITHDRAWN' });
  }

  #has(claim: AnyClaim): boolean {
    if (this.ids.has(claim.id)) return true;
    if (this.isByIds || claim.standing === 'WITHDRAWN') return false;
    const isFound = this.#restsOnReferences(claim) || this.#isSaidBy(claim) || this.#isByRule(claim);
    if (isFound) this.#found.add(claim.id);
    return isFound;
  }

  #restsOnReferences({ id, evidence = [] }: AnyClaim): boolean {
    const citing = evidence.filter(({ reference }) => reference !== undefined && this.#by.references.has(reference));
    if (citing.length > 0 && citing.length < evidence.length) this.#weakened.add(id);
    return citing.length > 0 && citing.length === evidence.length;
  }

  #isSaidBy({ by }: AnyClaim): boolean {
    return by !== undefined && this.#by.saidBy.has(by);
  }

  #isByRule(claim: AnyClaim): boolean {
    return 'rule' in claim && claim.rule !== undefined && this.#by.rules.has(claim.rule);
  }
}

export const nothingLeftOut = new LeftOut({
  claims: new Set(),
  references: new Set(),
  saidBy: new Set(),
  rules: new Set(),
});
