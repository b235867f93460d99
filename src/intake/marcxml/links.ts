import type { ClaimOf, Origin } from '../../domain/model/row.ts';
import { foldTokens } from '../../domain/text/fold.ts';
import type { BundleDraft, ClaimDraft, Said } from './bundle-draft.ts';
import { boundsOf } from './date-reading.ts';
import { before } from './dates.ts';
import { dateOfLinked } from './linked-date.ts';
import { type MarcField, subfield } from './marc-record.ts';
import type { RecordView } from './record-view.ts';
import { tidy, withoutEndMarks } from './text.ts';

type Descent = ClaimOf<'EditionDescent'>;
type Text = NonNullable<Descent['text']>;

/** Which end of the claim the linked record is, and what became of the text. MARC 21, linking entry fields 76X-78X. */
interface DescentOfTag {
  readonly linked: 'earlier' | 'later';
  readonly text: Text;
}

const descents: Readonly<Record<string, DescentOfTag>> = {
  765: { linked: 'earlier', text: 'TRANSLATED' },
  767: { linked: 'later', text: 'TRANSLATED' },
  780: { linked: 'earlier', text: 'CONTINUED' },
  785: { linked: 'later', text: 'CONTINUED' },
};

/** Which end of a PartOf claim the linked record is, and the subfields that number the part. */
const parts: Readonly<Record<string, { readonly linked: 'whole' | 'part'; readonly number: string }>> = {
  760: { linked: 'whole', number: 'g' },
  762: { linked: 'part', number: 'g' },
  773: { linked: 'whole', number: 'gq' },
  774: { linked: 'part', number: 'g' },
  800: { linked: 'whole', number: 'v' },
  810: { linked: 'whole', number: 'v' },
  811: { linked: 'whole', number: 'v' },
  830: { linked: 'whole', number: 'v' },
};

/** Fields that do not say which of the two editions came first. */
const symmetric = new Set(['775', '776', '787']);

/**
 * Links to other records by their control numbers ($w): EditionDescent and PartOf. A field without $w stays readable
 * text. Where the field gives no direction (775, 776, 787), the dates do, or there is no claim.
 * @param published date of this edition that is held, EDTF
 */
export function addLinks(view: RecordView, published: string | undefined, title: string, draft: BundleDraft): void {
  for (const tag of view.tags()) {
    if (tag[0] !== '7' && tag[0] !== '8') continue;
    const toEdition = descents[tag];
    const toWhole = parts[tag];
    if (toEdition === undefined && toWhole === undefined && !symmetric.has(tag)) continue;
    for (const field of view.fields(tag)) {
      if (toEdition !== undefined) {
        const { linked, text } = toEdition;
        link(view, field, linked, descent(linked, { text, ...asWritten(field) }), draft);
      } else if (toWhole !== undefined) {
        link(view, field, toWhole.linked, partOf(field, toWhole.linked, toWhole.number), draft);
      } else linkByDates(view, field, published, title, draft);
    }
  }
}

function descent(linked: 'earlier' | 'later', said: Partial<Descent>): ClaimDraft {
  return { kind: 'EditionDescent', [linked === 'earlier' ? 'later' : 'earlier']: '@edition', ...said } as ClaimDraft;
}

function partOf(field: MarcField, linked: 'whole' | 'part', codes: string): ClaimDraft {
  const number = [...codes].map(code => subfield(field, code)).find(value => value !== undefined);
  return {
    kind: 'PartOf',
    [linked === 'whole' ? 'part' : 'whole']: '@edition',
    ...(number === undefined ? {} : { number: withoutEndMarks(tidy(number)) }),
    ...asWritten(field),
  } as ClaimDraft;
}

/**
 * The field says "other edition" (775), "other form" (776) or "related" (787); the dates say which came first. Words of
 * the cataloguer in $i and $n may say so too. A related item is taken for another edition where its title is the same,
 * else the claim is weighed only.
 */
function linkByDates(
  view: RecordView,
  field: MarcField,
  published: string | undefined,
  title: string,
  draft: BundleDraft,
): void {
  const linked = directionByWords(field) ?? directionByDates(field, published);
  if (linked === undefined) return;
  const sure = field.tag !== '787' || sameTitle(subfield(field, 't'), title);
  const claim = descent(linked, {
    ...asWritten(field),
    ...(field.tag === '776' ? { text: 'SAME' } : {}),
    certainty: 'PROBABLE',
    ...(sure ? {} : { stance: 'WEIGHED' }),
  });
  link(view, field, linked, claim, draft);
}

const earlierWords =
  /\b(?:reprint(?:ed)? (?:of|from)|reproduction of|facsimile of|originally (?:published|issued)|earlier edition|previous(?:ly)? (?:edition|published)|nachdruck (?:von|der)|repr\. of|réimpression de)\b/i;
const laterWords =
  /\b(?:reprinted (?:as|in)|later edition|subsequent edition|reproduced as|neuausgabe|nachgedruckt)\b/i;

function directionByWords(field: MarcField): 'earlier' | 'later' | undefined {
  const words = `${subfield(field, 'i') ?? ''} ${subfield(field, 'n') ?? ''}`;
  if (earlierWords.test(words)) return 'earlier';
  return laterWords.test(words) ? 'later' : undefined;
}

function directionByDates(field: MarcField, published: string | undefined): 'earlier' | 'later' | undefined {
  const words = subfield(field, 'd');
  const date = words === undefined || published === undefined ? undefined : dateOfLinked(words);
  if (date === undefined || published === undefined) return undefined;
  const [there, here] = [boundsOf(date), boundsOf(published)];
  if (before(there, here)) return 'earlier';
  return before(here, there) ? 'later' : undefined;
}

function sameTitle(linked: string | undefined, title: string): boolean {
  return linked !== undefined && foldTokens(linked).join(' ') === foldTokens(title).join(' ');
}

function asWritten(field: MarcField): { asWritten?: string } {
  const texts = field.subfields.flatMap(([code, value]) => ('aitdn'.includes(code) ? [tidy(value)] : []));
  return texts.length === 0 ? {} : { asWritten: texts.join(' ') };
}

function link(view: RecordView, field: MarcField, role: string, claim: ClaimDraft, draft: BundleDraft): void {
  const target = targetOf(field, view.source);
  const said: Said = { tag: field.tag, codes: 'w' };
  if (target !== undefined) draft.link(claim, role, target, said);
}

/** `(Uk)MP1.0000000030.1` is a number of the source Uk; a number without a source in brackets is one of the same source. */
function targetOf(field: MarcField, source: string): Origin | undefined {
  let found: Origin | undefined;
  for (const [code, value] of field.subfields) {
    if (code !== 'w') continue;
    const [, given, key] = /^(?:\(([^)]*)\))?(.*)$/.exec(tidy(value.replaceAll('#', ' '))) ?? [];
    if (key === undefined || key.trim() === '') continue;
    const target = { source: given === undefined || given === '' ? source : given, key: key.trim() };
    if (target.source === source) return target;
    found ??= target;
  }
  return found;
}
