import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import type { Known } from './reach-by-brute-force.ts';

/**
 * Changes every seventeenth edition in a way that library records of one date and place do not show: dates of several
 * parts, alternatives, contradictions, copies seen at a place, booksellers, false places, claims that do not count.
 * @returns ids of the editions that were changed
 */
export async function plantClaims(
  store: GraphStore,
  editions: readonly Known[],
  seenAt: string,
): Promise<ReadonlySet<string>> {
  const chosen = editions.filter(({ claims }, i) => i % 17 === 0 && datingOf(claims) !== undefined);
  const added = new Set<string>();
  const rows: AnyRow[] = [];
  chosen.forEach((known, i) => {
    const { changed, fresh } = plant(known, i, seenAt);
    rows.push(...changed, ...fresh);
    for (const row of fresh) added.add(row.id);
  });
  await applyChanges(store, {
    rows,
    added,
    changeSet: { moment: '2026-02-01T00:00:00.000Z', who: 'Ada', why: 'planted' },
  });
  return new Set(chosen.map(({ edition }) => edition.id));
}

interface Planting {
  readonly changed: readonly AnyRow[];
  readonly fresh: readonly AnyRow[];
}

function plant({ edition, work, claims }: Known, i: number, seenAt: string): Planting {
  const dating = unstamped(datingOf(claims)!);
  const year = Number(/\d{4}/.exec(dating.date ?? '1850')?.[0]);
  const imprint = claims.find(claim => claim.kind === 'Imprint') as ClaimOf<'Imprint'> | undefined;
  const other = (date: string, more: Partial<ClaimOf<'Dating'>> = {}): ClaimOf<'Dating'> => ({
    ...{ id: `dating-planted-${i}`, kind: 'Dating', of: edition.id, event: 'PUBLISHED', basis: 'DOCUMENT' },
    date,
    ...more,
  });
  const alternatives = `alternatives-planted-${i}`;
  const seen = (when: string): ClaimOf<'Access'> => ({
    ...{ id: `access-planted-${i}`, kind: 'Access', what: edition.id, at: seenAt, manner: 'OWNED' },
    who: seenAt,
    when,
  });
  const ofImprint = (more: Partial<ClaimOf<'Imprint'>>): Planting =>
    imprint === undefined ? { changed: [], fresh: [] } : { changed: [{ ...unstamped(imprint), ...more }], fresh: [] };
  const ofDating = (more: Partial<ClaimOf<'Dating'>>): Planting => ({ changed: [{ ...dating, ...more }], fresh: [] });
  const group = (open: boolean): Planting => ({
    changed: [{ ...dating, alternativeTo: alternatives }],
    fresh: [
      { id: alternatives, kind: 'Alternatives', ...(open ? { open } : {}) },
      other(String(year - 8), { alternativeTo: alternatives }),
    ],
  });
  const plantings: readonly (() => Planting)[] = [
    () => ({ changed: [], fresh: [other(`${year - 2}/${year}-06`)] }),
    () => ({ changed: [], fresh: [other(String(year + 3))] }),
    () => ({ changed: [], fresh: [other(String(year + 3), { certainty: 'DOUBTFUL' })] }),
    () => group(false),
    () => group(true),
    () => ofDating({ date: `[${year - 3},${year + 4}]` }),
    () => ofDating({ date: `${String(year).slice(0, 3)}X~` }),
    () => ofDating({ date: `../${year}` }),
    () => ofDating({ stance: 'REJECTED' }),
    () => ({ changed: [], fresh: [seen(String(year + 2))] }),
    () => ({ changed: [], fresh: [seen(String(year - 1))] }),
    () => ofImprint({ role: 'BOOKSELLER' }),
    () => ofImprint({ role: 'DISTRIBUTOR' }),
    () => ofImprint({ fictitious: true }),
    () => ofImprint({ standing: 'WITHDRAWN' }),
    () => ({ changed: [{ ...unstamped(work), form: 'ANNUAL' }], fresh: [] }),
  ];
  return plantings[i % plantings.length]!();
}

function datingOf(claims: Known['claims']): ClaimOf<'Dating'> | undefined {
  return claims.find(claim => claim.kind === 'Dating' && claim.event === 'PUBLISHED' && claim.date !== undefined) as
    | ClaimOf<'Dating'>
    | undefined;
}

function unstamped<Row extends AnyRow>(row: Row): Row {
  const { since: _since, until: _until, ...rest } = row as Row & { since?: number; until?: number };
  return rest as unknown as Row;
}
