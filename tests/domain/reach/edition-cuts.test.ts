import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Conventions, defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { formatDay, parseDay } from '../../../src/domain/dates/calendar.ts';
import { cutVerdict } from '../../../src/domain/reach/cut-verdict.ts';
import {
  type CutDays,
  type EditionCuts,
  editionCuts,
  type OutletCuts,
} from '../../../src/domain/reach/edition-cuts.ts';
import { editionRoom } from '../../../src/domain/reach/edition-room.ts';
import { editionVerdicts } from '../../../src/domain/reach/edition-verdicts.ts';
import { type EraSpan, eraSpan } from '../../../src/domain/reach/era-grid.ts';
import type { lagDays } from '../../../src/domain/reach/lag-days.ts';
import { openDay } from '../../../src/domain/reach/open-day.ts';
import { usableOutlets } from '../../../src/domain/reach/outlet-lag.ts';
import type { PublishedClass } from '../../../src/domain/reach/published-window.ts';
import type { ReachEdition } from '../../../src/domain/reach/reach-edition-input.ts';
import { routeMapOf } from '../../../src/domain/reach/route-map.ts';
import { type ReachVerdict, reachVerdicts, type VerdictAndMargin } from '../../../src/domain/reach/verdict.ts';
import { anyEdition, anyTarget } from './any-reach.ts';

const { grid } = routeMapOf(defaultConventions);

function spanOf({ published }: ReachEdition): EraSpan {
  return eraSpan(grid, published.recorded[0]!);
}

function outletCuts(cuts: EditionCuts, edition: ReachEdition): readonly OutletCuts[] {
  return usableOutlets(edition.outlets).map(outlet => cuts.ofOutlet(outlet)(spanOf(edition)));
}

/** The verdict that cut days give on an edition of one stretch of days, and its room as an order needs it. */
function byCuts(cuts: EditionCuts | undefined, edition: ReachEdition): readonly [ReachVerdict, number?] {
  const [days] = edition.published.reckoned;
  if (cuts === undefined || days === undefined) return ['CONTRADICTORY'];
  const each = outletCuts(cuts, edition);
  const limits = usableOutlets(edition.outlets).map(outlet => cuts.limitsOf(outlet)(spanOf(edition)));
  const cut = cuts.joined(each);
  const [first, last] = [days.lo ?? -openDay, days.hi ?? openDay];
  const verdict = verdictBy(cut, first, last);
  const room = editionRoom(cuts, limits, verdict, first, last);
  if (cuts.plain && verdict === 'IN_EVERY_CASE') expect(cut.every - last).toBe(room);
  if (cuts.plain && verdict !== 'IN_EVERY_CASE' && first !== -openDay) expect(cut.some - first).toBe(room);
  return [verdict, room];
}

function verdictBy(cut: CutDays, first: number, last: number): Exclude<ReachVerdict, 'CONTRADICTORY'> {
  return reachVerdicts[cutVerdict(cut.every, cut.some, first, last)];
}

function asOrdered({ verdict, margin }: VerdictAndMargin): readonly [ReachVerdict, number?] {
  if (verdict === 'CONTRADICTORY') return [verdict];
  return [verdict, (verdict === 'IN_EVERY_CASE' ? margin.every : margin.some) ?? Infinity];
}

function disagreement(spoilt: (cuts: EditionCuts) => EditionCuts, conventions: Conventions, seed: number): unknown {
  const found = fc.check(
    fc.property(anyTarget, fc.array(anyEdition(0), { minLength: 1, maxLength: 5 }), (asked, editions) => {
      const verdictOn = editionVerdicts(asked, conventions);
      const cuts = editionCuts(asked, conventions);
      for (const each of editions) {
        const found = byCuts(cuts === undefined ? undefined : spoilt(cuts), each);
        expect(found, `seed ${seed}`).toEqual(asOrdered(verdictOn(each)));
      }
    }),
    { seed, numRuns: 3000 },
  );
  return found.counterexample;
}

describe('cut days', () => {
  test('decide as each edition by itself, and tell the same room', () => {
    for (const seed of [1767, Date.now() % 1_000_000]) {
      expect({ seed, differs: disagreement(cuts => cuts, defaultConventions, seed) }).toEqual({ seed, differs: null });
    }
  });

  test.each<readonly [string, (cuts: CutDays) => CutDays]>([
    ['one day more', ({ every, some }) => ({ every: every + 1, some })],
    ['one day fewer', ({ every, some }) => ({ every, some: some - 1 })],
  ])('are seen to be wrong by %s', (_what, spoil) => {
    const spoilt = (cuts: EditionCuts) => ({
      ...cuts,
      joined: (each: readonly OutletCuts[]) => spoil(cuts.joined(each)),
    });
    expect(disagreement(spoilt, defaultConventions, 1767)).not.toBe(null);
  });
});

// Worked by hand from the inequalities: a = greatest o1 - l2, b = greatest o2 - l1 of the regions of a profile; the first
// day for sale is 60 days (annuals: 120) before the recorded one.
describe('cut days of three regions for an object of July 1765 to June 1766', () => {
  const lags = { R1: { least: 0, most: 30 }, R2: { least: 2, most: 180 }, R3: { least: 80, most: 540 } } as const;
  const between: typeof lagDays = from => () => lags[from!.name as keyof typeof lags];
  const object = { lo: parseDay('1765-07-01'), hi: parseDay('1766-06-30') };
  const target = { objectDay: [{ headline: object }], stays: [{ place: { name: 'T' } }] };
  const cuts = editionCuts(target, defaultConventions, between)!;
  const ahead = { IMPRINT: 60, ANNUAL: 120, OTHER: 0 } as const;

  const cutOf = (regions: string, kind: PublishedClass): CutDays => {
    const outlets = regions.split('+').map(name => ({ kind: 'PUBLISHER' as const, place: { name } }));
    const { every, some } = cuts.joined(outlets.map(outlet => cuts.ofOutlet(outlet)({ first: 0, last: 0 })));
    return { every, some: some + ahead[kind] };
  };

  test.each([
    ['R1', 'IMPRINT', '1765-06-01', '1766-08-29'],
    ['R1', 'OTHER', '1765-06-01', '1766-06-30'],
    ['R1+R3', 'OTHER', '1765-06-01', '1766-06-30'],
    ['R2', 'IMPRINT', '1765-01-02', '1766-08-27'],
    ['R2', 'OTHER', '1765-01-02', '1766-06-28'],
    ['R3', 'ANNUAL', '1764-01-08', '1766-08-09'],
    ['R3', 'IMPRINT', '1764-01-08', '1766-06-10'],
    ['R3', 'OTHER', '1764-01-08', '1766-04-11'],
  ] as const)('%s %s: every to %s, some to %s', (regions, kind, a, b) => {
    const { every, some } = cutOf(regions, kind);
    expect([formatDay(every), formatDay(some)]).toEqual([a, b]);
  });

  const editions: readonly (readonly [string, PublishedClass, string, string, ReachVerdict])[] = [
    ['R1', 'IMPRINT', '1764-01-01', '1764-12-31', 'IN_EVERY_CASE'],
    ['R1', 'OTHER', '1765-05-20', '1765-06-01', 'IN_EVERY_CASE'],
    ['R1', 'OTHER', '1765-05-20', '1765-06-02', 'IN_SOME_CASES'],
    ['R1', 'IMPRINT', '1766-08-01', '1766-12-31', 'IN_SOME_CASES'],
    ['R1', 'IMPRINT', '1766-09-01', '1766-12-31', 'IN_NO_CASE'],
    ['R2', 'OTHER', '1764-12-01', '1765-01-02', 'IN_EVERY_CASE'],
    ['R2', 'IMPRINT', '1765-01-01', '1765-12-31', 'IN_SOME_CASES'],
    ['R2', 'OTHER', '', '1765-01-03', 'IN_SOME_CASES'],
    ['R3', 'IMPRINT', '1763-01-01', '1763-12-31', 'IN_EVERY_CASE'],
    ['R3', 'OTHER', '1766-04-11', '1766-04-30', 'IN_SOME_CASES'],
    ['R3', 'OTHER', '1766-04-12', '1766-04-30', 'IN_NO_CASE'],
    ['R3', 'ANNUAL', '1766-06-11', '1766-07-20', 'IN_SOME_CASES'],
    ['R1+R3', 'OTHER', '1765-06-01', '1766-06-30', 'IN_SOME_CASES'],
  ];

  test.each(editions)('%s %s, %s to %s: %s', (regions, kind, first, last, verdict) => {
    expect(verdictBy(cutOf(regions, kind), first === '' ? -openDay : parseDay(first)!, parseDay(last)!)).toBe(verdict);
  });
});
