import type { ClaimOf } from '../../domain/model/row.ts';
import type { BundleDraft, Said } from './bundle-draft.ts';
import { codedDate } from './coded-dates.ts';
import { boundsOf, type DateReading, readImprintDate } from './date-reading.ts';
import { finerDate } from './finer-date.ts';
import type { ImprintDate } from './imprints.ts';
import type { RecordView } from './record-view.ts';

type Dating = ClaimOf<'Dating'>;

/**
 * Datings of the publication. Order of trust: the first readable date of the imprint, then field 046, then 008: only
 * one of them is held, except that a day or a range coded within a wider date of the imprint is held beside it, since
 * both can be true. Further dates of the imprint and copyright dates are weighed. Returns the date that is held.
 */
export function addDatings(view: RecordView, stated: readonly ImprintDate[], draft: BundleDraft): string | undefined {
  let held: string | undefined;
  for (const { words, said, copyrightNotice } of stated) {
    const reading = readImprintDate(words);
    const weighed = held !== undefined || copyrightNotice;
    addStated(words, reading, said, weighed, copyrightNotice, draft);
    if (!weighed) held = reading.date;
  }
  const finer = finerDate(view.fields('046'));
  if (finer !== undefined) held = addCoded(finer, { tag: '046', codes: '' }, held, true, draft);
  return addFrom008(view, held, draft);
}

function addStated(
  words: string,
  reading: DateReading,
  said: Said,
  weighed: boolean,
  copyrightNotice: boolean,
  draft: BundleDraft,
): void {
  const { date, rule, flags, calendar, copyright, reason } = reading;
  draft.claim(
    {
      ...published,
      ...(date === undefined ? {} : { date }),
      asWritten: words,
      ...(calendar === undefined ? {} : { calendar }),
      rule,
      basis: copyrightNotice ? 'COPYRIGHT' : reading.basis,
      ...(flags.length === 0 ? {} : { flags }),
      ...(weighed ? weighing : {}),
    },
    said,
  );
  if (copyright !== undefined) {
    draft.claim({ ...published, date: copyright, asWritten: words, rule, basis: 'COPYRIGHT', ...weighing }, said);
  }
  if (rule === 'unparsed') {
    draft.remark('DATE_UNREADABLE', `expected a date, came "${words}": ${reason}`, `${said.tag}$${said.codes}`);
  }
}

const published = { kind: 'Dating', of: '@edition', event: 'PUBLISHED' } as const satisfies Partial<Dating>;
const weighing = { stance: 'WEIGHED' } as const satisfies Partial<Dating>;

function addFrom008(view: RecordView, held: string | undefined, draft: BundleDraft): string | undefined {
  const { code, date, copyright, fault } = codedDate(view.f008);
  const said: Said = { tag: '008/06-14', codes: '' };
  if (fault !== undefined) draft.remark('INPUT_INVALID', fault, '008');
  if (date === undefined) return held;
  const now = addCoded(date, said, held, code === 'e' || code === 'q', draft);
  if (held === undefined && copyright !== undefined) {
    draft.claim({ ...published, date: copyright, rule: `marc-008-${code}`, basis: 'COPYRIGHT', ...weighing }, said);
  }
  return now;
}

/**
 * @param exact a coded date that may be held beside a wider one. Code `s` does not prove one certain year: cataloguers
 * use it for "after 1875" too.
 */
function addCoded(date: string, said: Said, held: string | undefined, exact: boolean, draft: BundleDraft): string {
  const claim = { ...published, date, rule: `marc-${said.tag.slice(0, 3)}`, basis: 'CODED' } as const;
  if (held === undefined) {
    draft.claim(claim, said);
    return date;
  }
  const [coded, stated] = [boundsOf(date), boundsOf(held)];
  if (disjoint(coded, stated)) {
    draft.remark(
      'INPUT_INVALID',
      `the field says ${date}, but the imprint ${held}: the imprint is taken`,
      said.tag.slice(0, 3),
    );
  } else if (exact && within(coded, stated)) {
    draft.claim(claim, said);
    return date;
  }
  return held;
}

type Bounds = ReturnType<typeof boundsOf>;

function disjoint(one: Bounds, other: Bounds): boolean {
  return before(one, other) || before(other, one);
}

/** Whether all days of one lie before all days of the other. */
export function before(one: Bounds, other: Bounds): boolean {
  return one.hi !== undefined && other.lo !== undefined && one.hi < other.lo;
}

/** Strictly: the same bounds say nothing new. */
function within(one: Bounds, other: Bounds): boolean {
  const [lo, hi] = [one.lo ?? -Infinity, one.hi ?? Infinity];
  const [outerLo, outerHi] = [other.lo ?? -Infinity, other.hi ?? Infinity];
  return lo >= outerLo && hi <= outerHi && (lo > outerLo || hi < outerHi);
}
