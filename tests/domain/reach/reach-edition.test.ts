import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import type { LocatedPlace } from '../../../src/domain/conventions/located-place.ts';
import { withOverrides } from '../../../src/domain/conventions/with-overrides.ts';
import { parseDay } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import { markWindows } from '../../../src/domain/reach/mark-windows.ts';
import { type PublishedClass, regularWindow } from '../../../src/domain/reach/published-window.ts';
import { reachEdition } from '../../../src/domain/reach/reach-edition.ts';
import type {
  Outlet,
  ReachEdition,
  ReachStay,
  ReachTarget,
  RecordedAccess,
} from '../../../src/domain/reach/reach-edition-input.ts';
import { towns } from './towns.ts';

const between = (first: string, last = first): DayRange => ({ lo: parseDay(first), hi: parseDay(last) });
const year = (y: number) => between(`${y}-01-01`, `${y}-12-31`);
const from = (place: LocatedPlace | undefined, claim?: string): Outlet => ({ kind: 'PUBLISHER', place, claim });
const sold = (place: LocatedPlace, claim?: string): Outlet => ({ kind: 'BOOKSELLER', place, claim });
const book = (days: DayRange, outlets: readonly Outlet[], kind: PublishedClass = 'OTHER'): ReachEdition => ({
  published: regularWindow(days, kind, defaultConventions),
  outlets,
});
const at = (place: LocatedPlace, ...days: readonly DayRange[]): ReachTarget => ({
  objectDay: days.map(headline => ({ headline })),
  stays: [{ place }],
});
const reach = (edition: ReachEdition, target: ReachTarget) => reachEdition(edition, target, defaultConventions);
const short = (edition: ReachEdition, target: ReachTarget) => {
  const { verdict, margin } = reach(edition, target);
  return [verdict, margin.every, margin.some];
};

const always = 'IN_EVERY_CASE';
const sometimes = 'IN_SOME_CASES';
const never = 'IN_NO_CASE';

test('a whole answer says what decided it', () => {
  const claim = 'imprint-london-1764';
  expect(
    reach(book(year(1764), [from(towns.london, claim)]), at(towns.birmingham, between('1765-07-01', '1766-06-30'))),
  ).toEqual({
    verdict: always,
    margin: { every: 122, some: 909 },
    cautious: undefined,
    outlet: from(towns.london, claim),
    stay: { place: towns.birmingham },
    access: undefined,
    lag: expect.objectContaining({ least: 2, most: 60 }),
    arrival: between('1764-01-03', '1765-03-01'),
    flags: [],
    conventions: [
      { key: 'route.london-midlands', id: 'convention-route-london-midlands', version: 1 },
      { key: 'route.sameTown', id: 'convention-route-same-town', version: 1 },
    ],
    why: [
      { code: 'ROOM', message: 'in time on every reckoning: 122 days of room on the latest reckoning' },
      { code: 'WAY', message: 'from London to Birmingham in 2 to 60 days (route.london-midlands)' },
    ],
  });
});

describe('B20, a piece dated by a mark', () => {
  const mark = between('1765-07-01', '1766-06-30');
  const target: ReachTarget = {
    objectDay: markWindows([mark], defaultConventions),
    stays: [{ place: towns.birmingham }],
  };
  const asked = (y: number) => reach(book(year(y), [from(towns.london)]), target);

  test('has its headline within five years of the mark, cautiously no end', () => {
    expect(markWindows([mark], defaultConventions)).toEqual([
      { headline: between('1765-07-01', '1771-07-01'), cautious: { lo: parseDay('1765-07-01'), hi: undefined } },
    ]);
  });

  test('a book of 1764 is in time either way, with 122 days', () => {
    const { verdict, margin, cautious, flags } = asked(1764);
    expect([verdict, margin.every, cautious, flags]).toEqual([
      always,
      122,
      { verdict: always, margin: { every: 122, some: undefined } },
      ['MARK_WINDOW'],
    ]);
  });

  test('a book of 1768 is in time on some reckonings either way', () => {
    expect([asked(1768).verdict, asked(1768).cautious?.verdict]).toEqual([sometimes, sometimes]);
  });

  test('a book of 1772 is 186 days short, cautiously in time on some: a date of the decoration would decide', () => {
    const { verdict, margin, cautious, why, conventions } = asked(1772);
    expect([verdict, margin.some, cautious?.verdict]).toEqual([never, -186, sometimes]);
    expect(why.map(({ code }) => code)).toEqual(['ROOM', 'WAY', 'MARK_WINDOW', 'MARK_ANSWERS_DIFFER']);
    expect(conventions.map(({ key }) => key)).toContain('decoratedWithin');
  });

  test('a mark of two years is asked for each and joined', () => {
    const marks = markWindows([year(1764), year(1772)], defaultConventions);
    const found = reach(book(year(1770), [from(towns.london)]), { ...target, objectDay: marks });
    // Too late by far for 1764 with its five years; in time for 1772.
    expect([found.verdict, found.cautious?.verdict]).toEqual([sometimes, sometimes]);
  });
});

describe('B21, an object finished on 20 December 1764 and a London imprint of 1765', () => {
  const target = at(towns.birmingham, between('1764-12-20'));
  test.each<[PublishedClass, string, number]>([
    ['OTHER', never, -14],
    ['IMPRINT', sometimes, 46],
    ['ANNUAL', sometimes, 106],
  ])('%s: %s, %d', (kind, verdict, some) => {
    const found = reach(book(year(1765), [from(towns.london)], kind), target);
    expect([found.verdict, found.margin.some]).toEqual([verdict, some]);
    expect(found.flags).toEqual(kind === 'OTHER' ? [] : ['IMPRINT_AHEAD']);
    expect(found.arrival.lo).toBe(parseDay('1765-01-03'));
  });
});

describe('B24, a painter who moved', () => {
  // The way from Leipzig to Vennholm is given as 3 to 413 days.
  const value = {
    from: { name: 'Leipzig', codes: ['gw'] },
    to: { name: 'Vennholm', codes: ['sw'] },
    bothWays: true,
    years: [null, null],
    least: 3,
    most: 413,
  };
  const conventions = withOverrides(defaultConventions, [{ key: 'route.leipzig-vennholm', value, version: 1 }]);
  const leipzig: ReachStay = {
    place: towns.leipzig,
    from: year(1758),
    to: between('1763-03-01', '1763-04-30'),
    claim: 'stay-at-leipzig',
  };
  const vennholm: ReachStay = {
    place: towns.vennholm,
    from: between('1763-05-01', '1763-05-31'),
    claim: 'stay-at-vennholm',
  };
  const asked = (y: number, ...stays: ReachStay[]) => {
    const target = { objectDay: [{ headline: year(1764) }], stays };
    const { verdict, margin, stay } = reachEdition(book(year(y), [from(towns.leipzig)]), target, conventions);
    return [verdict, margin.every, margin.some, stay?.claim];
  };

  test('a Leipzig book of 1762: in time by the stay at Leipzig, which ended 30 days later', () => {
    expect(asked(1762, leipzig).slice(0, 2)).toEqual([always, 30]);
    expect(asked(1762, vennholm).slice(0, 2)).toEqual([sometimes, -47]);
    expect(asked(1762, leipzig, vennholm)).toEqual([always, 30, 484, 'stay-at-leipzig']);
  });

  test('a Leipzig book of 1764: too late for Leipzig by 246 days, at Vennholm in time on some reckonings', () => {
    expect([asked(1764, leipzig)[0], asked(1764, leipzig)[2]]).toEqual([never, -246]);
    expect([asked(1764, vennholm)[0], asked(1764, vennholm)[2]]).toEqual([sometimes, 362]);
    expect(asked(1764, leipzig, vennholm)).toEqual([sometimes, -778, 362, 'stay-at-vennholm']);
  });

  test('a stay whose end is not known is never safe; one without an end is', () => {
    expect(asked(1762, { ...leipzig, to: {} })[0]).toBe(sometimes);
    expect(asked(1762, { place: leipzig.place, from: leipzig.from })[0]).toBe(always);
  });

  test('a stay that began, on every reckoning, after the object is no stay', () => {
    expect(asked(1762, { ...leipzig, from: year(1766), to: undefined })).toEqual([
      never,
      -1095,
      -366,
      'stay-at-leipzig',
    ]);
  });

  test('of two stays of which one is true, both must be in time', () => {
    const group = { id: 'alternatives-where', open: false };
    const both = [leipzig, vennholm].map(stay => ({ ...stay, group }));
    expect(asked(1762, ...both).slice(0, 3)).toEqual([sometimes, -47, 610]);
    const late = { ...leipzig, from: year(1766), to: year(1767), group };
    expect(asked(1762, late, { ...late, place: towns.vennholm })[0]).toBe(never);
  });

  test('with an open group there may have been no stay at all', () => {
    expect(asked(1762, { ...leipzig, group: { id: 'alternatives-where', open: true } })[0]).toBe(sometimes);
    expect(asked(1762, leipzig, { ...vennholm, group: { id: 'alternatives-where', open: true } })[0]).toBe(always);
  });

  test('a stay that ended before it began contradicts', () => {
    const found = reach(book(year(1762), [from(towns.leipzig)]), {
      objectDay: [{ headline: year(1764) }],
      stays: [{ ...leipzig, to: year(1750) }],
    });
    expect([found.verdict, found.why]).toEqual([
      'CONTRADICTORY',
      [{ code: 'STAY_CONTRADICTS', message: 'the stay at Leipzig ended before it began' }],
    ]);
  });

  test('more groups than are tried together give a bound, marked inexact', () => {
    const stays = Array.from({ length: 7 }, (_, i) => ({
      ...leipzig,
      group: { id: `alternatives-n-${i}`, open: false },
    }));
    const target = { objectDay: [{ headline: year(1764) }], stays };
    const found = reach(book(year(1762), [from(towns.leipzig)]), target);
    expect([found.verdict, found.flags]).toEqual([sometimes, ['INEXACT']]);
    const tooLate = reach(book(year(1770), [from(towns.leipzig)]), target);
    expect([tooLate.verdict, tooLate.flags]).toEqual([never, ['INEXACT']]);
  });
});

describe('B25, places of an imprint', () => {
  const leipzig = from(towns.leipzig, 'imprint-leipzig-a');
  const london = sold(towns.london, 'imprint-london-b');
  const object = year(1765);

  test('the bookseller at London has it there within 30 days, the better of two ways', () => {
    expect(short(book(year(1764), [leipzig]), at(towns.london, object))).toEqual([sometimes, -179, 728]);
    const found = reach(book(year(1764), [leipzig, london]), at(towns.london, object));
    expect([found.verdict, found.margin, found.outlet?.claim, found.lag?.most]).toEqual([
      sometimes,
      { every: -29, some: 730 },
      'imprint-london-b',
      30,
    ]);
    expect(short(book(year(1763), [leipzig, london]), at(towns.london, object))).toEqual([always, 337, 1095]);
  });

  test('from a bookseller it travels on, his own days added', () => {
    const found = reach(book(year(1764), [london]), at(towns.paris, object));
    expect([found.lag?.least, found.lag?.most, found.conventions.map(({ key }) => key)]).toEqual([
      2,
      210,
      ['route.london-paris', 'route.sameTown'],
    ]);
    expect(found.why[1]?.message).toBe(
      'from London to Paris in 2 to 210 days (to a bookseller at London, then route.london-paris)',
    );
  });

  test('a false place is none: at best in time on some reckonings', () => {
    const found = reach(book(year(1700), [{ ...leipzig, fictitious: true }]), at(towns.london, object));
    expect([found.verdict, found.margin, found.flags]).toEqual([
      sometimes,
      { every: undefined, some: 24_105 },
      ['PLACE_UNKNOWN'],
    ]);
    expect(short(book(year(1763), [{ ...leipzig, fictitious: true }, london]), at(towns.london, object))[0]).toBe(
      always,
    );
  });

  test('an edition without a place can be too late by its date alone', () => {
    expect(short(book(year(1766), []), at(towns.london, object))).toEqual([never, undefined, -1]);
  });
});

describe('an access', () => {
  const had = (access: RecordedAccess, y = 1764): ReachEdition => ({
    ...book(year(y), [from(towns.london)]),
    accesses: [{ claim: 'access-1', ...access }],
  });
  const target = at(towns.calcutta, year(1766));

  test('at the place before the object makes it sure, whatever the way', () => {
    expect(short(book(year(1764), [from(towns.london)]), target)[0]).toBe(sometimes);
    const found = reach(had({ at: towns.calcutta, when: between('1765-06-01') }), target);
    expect([found.verdict, found.margin.every, found.access?.claim]).toEqual([always, 214, 'access-1']);
    expect(found.arrival).toEqual(between('1764-03-21', '1765-06-01'));
    expect(found.why.map(({ code }) => code)).toEqual(['ROOM', 'ACCESS', 'WAY']);
  });

  test('elsewhere says nothing of this place', () => {
    expect(reach(had({ at: towns.leipzig, when: between('1765-06-01') }), target).verdict).toBe(sometimes);
  });

  test('before anything can have arrived contradicts', () => {
    const found = reach(had({ at: towns.calcutta, when: between('1764-03-20') }), target);
    expect([found.verdict, found.margin, found.access?.claim, found.why.map(({ code }) => code)]).toEqual([
      'CONTRADICTORY',
      {},
      'access-1',
      ['ACCESS_CONTRADICTS'],
    ]);
    expect(reach(had({ at: towns.calcutta, when: between('1764-03-21') }), target).verdict).toBe(always);
  });

  test('of somebody else, nowhere in particular, says nothing', () => {
    expect(reach(had({ when: between('1765-06-01') }), target).verdict).toBe(sometimes);
  });

  test('of the person asked about holds wherever they were', () => {
    const stays = [{ place: towns.calcutta, from: year(1760), to: year(1761) }];
    const found = reach(had({ byAsked: true, when: between('1765-06-01') }), { ...target, stays });
    expect([found.verdict, found.margin.every]).toEqual([always, 214]);
  });
});

describe('contradictions', () => {
  test('of the datings of the edition', () => {
    const found = reach(book({ lo: 5, hi: 4 }, [from(towns.london)], 'IMPRINT'), at(towns.london, year(1764)));
    expect(found).toMatchObject({ verdict: 'CONTRADICTORY', margin: {}, flags: ['IMPRINT_AHEAD'] });
    expect(found.why.map(({ code }) => code)).toEqual(['DATINGS_CONTRADICT']);
  });

  test('of those of the object', () => {
    const found = reach(book(year(1764), [from(towns.london)]), { objectDay: [], stays: [{ place: towns.london }] });
    expect([found.verdict, found.why[0]?.code]).toEqual(['CONTRADICTORY', 'OBJECT_CONTRADICTS']);
  });
});

test('dates in several parts are judged for each and joined', () => {
  const twice = {
    ...book(year(1764), [from(towns.london)]),
    published: {
      ...regularWindow({}, 'OTHER', defaultConventions),
      recorded: [year(1760), year(1770)],
      reckoned: [year(1760), year(1770)],
    },
  };
  expect(short(twice, at(towns.london, year(1765)))).toEqual([sometimes, -2220, 2191]);
  expect(short(twice, at(towns.london, year(1772)))[0]).toBe(always);
  expect(short(twice, at(towns.london, year(1759)))[0]).toBe(never);
  expect(short(book(year(1764), [from(towns.london)]), at(towns.london, year(1760), year(1770)))).toEqual([
    sometimes,
    -1856,
    2556,
  ]);
});

describe('stays, against trying every combination of days', () => {
  const conventions = withOverrides(defaultConventions, [
    { key: 'route.sameTown', value: { within: 15, least: 0, most: 2 }, version: 2 },
    {
      key: 'route.leipzig-vennholm',
      value: {
        from: { name: 'Leipzig', codes: ['gw'] },
        to: { name: 'Vennholm', codes: ['sw'] },
        bothWays: true,
        years: [null, null],
        least: 1,
        most: 3,
      },
      version: 1,
    },
  ]);
  const range = fc.tuple(fc.nat(7), fc.nat(2)).map(([lo, n]) => ({ lo, hi: lo + n }));
  const stay = fc.record({ place: fc.constantFrom(towns.leipzig, towns.vennholm), from: range, to: range });

  test('the verdict is exact', () => {
    fc.assert(
      fc.property(range, range, fc.array(stay, { minLength: 1, maxLength: 2 }), (p, o, stays) => {
        fc.pre(stays.every(each => each.from.lo <= each.to.hi));
        const target = { objectDay: [{ headline: o }], stays };
        const found = reachEdition(book(p, [from(towns.leipzig)]), target, conventions);
        expect(found.verdict).toBe(tried(p, o, stays));
      }),
      { numRuns: 200 },
    );
  });
});

type Closed = { readonly lo: number; readonly hi: number };
type ClosedStay = { readonly place: LocatedPlace; readonly from: Closed; readonly to: Closed };

/** One lag, one beginning and one end a stay, no stay ended before it began. */
function tried(p: Closed, o: Closed, stays: readonly ClosedStay[]): string {
  const outcomes = new Set<boolean>();
  const each = ({ lo, hi }: Closed) => Array.from({ length: hi - lo + 1 }, (_, i) => lo + i);
  const seenBy = (published: number, object: number, at: number, seen: boolean): void => {
    const stay = stays[at];
    if (stay === undefined) {
      outcomes.add(seen);
      return;
    }
    const lags = stay.place === towns.leipzig ? { lo: 0, hi: 2 } : { lo: 1, hi: 3 };
    for (const lag of each(lags))
      for (const began of each(stay.from))
        for (const ended of each(stay.to)) {
          if (ended < began) continue;
          const here = published + lag <= Math.min(ended, object) && began <= object;
          seenBy(published, object, at + 1, seen || here);
        }
  };
  for (const published of each(p)) for (const object of each(o)) seenBy(published, object, 0, false);
  return outcomes.size === 2 ? sometimes : outcomes.has(true) ? always : never;
}
