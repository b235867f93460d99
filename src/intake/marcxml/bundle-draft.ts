import type { AnyClaim, AnyRecord, Origin } from '../../domain/model/row.ts';
import type { ErrorCode, SourcePlace } from '../../errors.ts';
import type { Bundle, IntakeProblem, IntendedLink, IntendedRow } from '../intention.ts';

type Nameless<T> = T extends unknown ? Omit<T, 'id'> : never;
type Bare<T> = T extends unknown ? Omit<T, 'id' | 'evidence'> : never;

/** A record before it has a name within the bundle. */
export type RecordDraft = Nameless<AnyRecord>;
/** A claim before it has a name and its evidence. */
export type ClaimDraft = Bare<AnyClaim>;

/** Which part of the record says it: tag, and subfield codes. */
export interface Said {
  readonly tag: string;
  readonly codes: string;
  /** A note on the evidence. */
  readonly note?: string;
}

/** A bundle being put together: gives names, evidence with locators that are unique per claim kind, and remarks. */
export class BundleDraft {
  readonly #rows: IntendedRow[] = [];
  readonly #links: IntendedLink[] = [];
  readonly #remarks: IntakeProblem[] = [];
  readonly #names = new Map<string, string>();
  readonly #locators = new Map<string, number>();
  readonly #counts = new Map<string, number>();
  readonly #origin: Origin;
  readonly #place: SourcePlace;

  constructor(origin: Origin, place: SourcePlace) {
    this.#origin = origin;
    this.#place = place;
  }

  /** A record that stands under a name of its own: `@edition`, `@work`, `@catalogue`. */
  named(name: string, key: string, record: RecordDraft): void {
    this.#rows.push({ row: { ...record, id: name } as AnyRecord, origin: { source: this.#origin.source, key } });
  }

  /** A record of which there may be several (`@agent-1`, `@agent-2`); the same key again gives the same name. */
  shared(prefix: string, key: string, record: RecordDraft): string {
    let name = this.#names.get(key);
    if (name === undefined) {
      name = this.#next(prefix);
      this.#names.set(key, name);
      this.named(name, key, record);
    }
    return name;
  }

  claim(claim: ClaimDraft, said: Said): void {
    this.#rows.push({ row: this.#complete(claim, said) });
  }

  /** A claim whose `role` is a record of a source that may not have come yet. */
  link(claim: ClaimDraft, role: string, target: Origin, said: Said): void {
    this.#links.push({ row: this.#complete(claim, said), role, target });
  }

  remark(code: ErrorCode, message: string, field?: string): void {
    this.#remarks.push({ code, message, place: field === undefined ? this.#place : { ...this.#place, field } });
  }

  bundle(digest: string): Bundle {
    const { source, key } = this.#origin;
    return {
      outcome: 'taken',
      place: this.#place,
      origin: { source, key },
      digest,
      rows: this.#rows,
      links: this.#links,
      remarks: this.#remarks,
    };
  }

  #complete(claim: ClaimDraft, said: Said): AnyClaim {
    const note = said.note === undefined ? {} : { note: said.note };
    const evidence = [{ reference: '@catalogue', locator: this.#locator(claim.kind, said), ...note }];
    return { ...claim, id: this.#next(`@${claim.kind.toLowerCase()}`), evidence } as AnyClaim;
  }

  #locator(kind: string, { tag, codes }: Said): string {
    let locator = `${this.#origin.key} ${tag}`;
    for (const code of codes) locator += `$${code}`;
    const key = `${kind} ${locator}`;
    const count = (this.#locators.get(key) ?? 0) + 1;
    this.#locators.set(key, count);
    return count === 1 ? locator : `${locator} #${count}`;
  }

  #next(prefix: string): string {
    const count = (this.#counts.get(prefix) ?? 0) + 1;
    this.#counts.set(prefix, count);
    return `${prefix}-${count}`;
  }
}
