import { claimSentence, namedInSentence } from '../../domain/model/claim-sentence.ts';
import { isRecordKind, recordKinds } from '../../domain/model/kinds.ts';
import { labelOf } from '../../domain/model/label.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../../domain/model/row.ts';
import { howMany } from '../../domain/text/how-many.ts';
import type { ChangeSet, GraphStore } from '../../store/graph-store.ts';
import type { LeftOut } from './left-out.ts';
import type { Without } from './what-if.ts';

/** Ids that are told one by one. */
const told = 10;

/** When the graph is asked about. @param changeSet absent: before the first */
export function asOfWords(changeSet: ChangeSet | undefined): string {
  if (changeSet === undefined) return 'As of before the first change: nothing was recorded.';
  return `As of change set ${changeSet.number}, made ${changeSet.moment}.`;
}

/** Each row that is supposed, a sentence each. */
export async function supposedWords(store: GraphStore, supposed: readonly AnyRow[]): Promise<readonly string[]> {
  const isClaim = (row: AnyRow): row is AnyClaim => !isRecordKind(row.kind);
  const named = [...new Set(supposed.filter(isClaim).flatMap(namedInSentence))];
  const rows = [...(await store.rows(named)).filter(row => row !== undefined), ...supposed];
  const names = new Map(
    rows.map(row => [row.id, isClaim(row) ? undefined : quoted(labelOf(row as AnyRecord))] as const),
  );
  return supposed.map(row => {
    const says = isClaim(row)
      ? claimSentence(row, id => names.get(id))
      : `there is a ${recordKinds[row.kind].words.en[0]}${names.get(row.id) === undefined ? '' : ` ${names.get(row.id)}`}`;
    return `Supposed: ${says} (${row.id}).`;
  });
}

function quoted(name: string | undefined): string | undefined {
  return name === undefined ? undefined : `“${name}”`;
}

/** What is left out by name. */
export function withoutWords({ claims = [], references = [], saidBy = [], rules = [] }: Without): readonly string[] {
  return [
    ...(claims.length === 0 ? [] : [`Left out: ${howMany(claims.length, 'claim')}: ${listed(claims)}.`]),
    ...(references.length === 0 ? [] : [`Left out: what rests on ${listed(references)} alone.`]),
    ...(saidBy.length === 0 ? [] : [`Left out: what is said by ${listed(saidBy)}.`]),
    ...(rules.length === 0 ? [] : [`Left out: what was read by the rule ${listed(rules)}.`]),
  ];
}

/** Which claims were met that are left out for what they say, and which stay though they lose some of their evidence. */
export function metWords(leftOut: LeftOut): readonly string[] {
  if (leftOut.isByIds) return [];
  const [found, weakened] = [leftOut.found(), leftOut.weakened()];
  return [
    found.length === 0
      ? 'No claim that this answer looked at was left out for it.'
      : `Of the claims that this answer looked at, ${howMany(found.length, 'was', 'were')} left out for it: ${listed(found)}.`,
    ...(weakened.length === 0
      ? []
      : [`Weakened, but kept for other evidence: ${howMany(weakened.length, 'claim')}: ${listed(weakened)}.`]),
  ];
}

function listed(names: readonly string[]): string {
  const more = names.length - told;
  return more <= 0 ? names.join(', ') : `${names.slice(0, told).join(', ')} and ${more} more`;
}
