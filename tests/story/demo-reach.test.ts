import { afterAll, beforeAll, expect, test } from 'vitest';
import { formatDay } from '../../src/domain/dates/calendar.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import type { Questions, Reach, ReachAsked } from '../../src/questions/questions.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { days } from '../support/days.ts';
import { demoStore } from '../support/demo-store.ts';
import { describeOnEngines, type Engine } from '../support/describe-on-engines.ts';
import { editionsOf, rowOf } from './reach-answers.ts';

const page = { first: 25 };
const dish: ReachAsked = { piece: 'piece-shore-dish', page };

/** Days of the dish: the year of its mark, and 1827 days (five years, rounded up) beyond its end. */
const object = { first: days('1766-01-01'), last: days('1766-12-31') + 1827 };

/**
 * Room by hand: against the longest way from the last day of issue, and the shortest from the first, 60 days ahead; and
 * against the beginning of the works at Ellerholm, which stood there from some day of 1759.
 */
const room = (issue: readonly [string, string], way: readonly [number, number], ahead = 60) => ({
  every: Math.min(object.first - days(issue[1]) - way[1], object.first - days('1759-12-31')),
  some: Math.min(object.last - (days(issue[0]) - ahead) - way[0], object.last - days('1759-01-01')),
});
const year = (y: number) => [`${y}-01-01`, `${y}-12-31`] as const;

// Days on the way to Ellerholm, with a year for agents and orders: no recorded route leads there.
const fromAmsterdam = [1, 387] as const;
const fromLeipzig = [1, 386] as const;
const fromLondon = [2, 396] as const;

describeOnEngines('the story of the demo world, told by %s', engine => {
  let store: GraphStore;
  let questions: Questions;
  let answer: Reach;

  beforeAll(async () => {
    store = await demoStore(engine);
    questions = askStore(store);
    answer = await questions.reach(dish);
  });
  afterAll(() => store.close());

  test('the works at Ellerholm marked the dish in 1766; its painter had been at Leipzig', () => {
    expect(answer.target).toEqual({ label: 'Ellerholm faience works', places: ['Ellerholm', 'Leipzig'] });
    expect(answer.objectDay).toEqual({ lo: object.first, hi: object.last });
    expect(formatDay(object.last)).toBe('1772-01-01');
  });

  test('six editions could have been there on every reckoning, five on some, and one on none', () => {
    expect(answer.counts).toEqual({ inEveryCase: 6, inSomeCases: 5, inNoCase: 1, contradictory: 0, differOnPage: 0 });
    expect(answer.rows.items.map(({ item }) => [item.edition, item.verdict, item.margin])).toEqual([
      ['edition-ferry-sheet', 'IN_EVERY_CASE', room(['1755-01-01', '1761-12-31'], fromAmsterdam, 0)],
      ['edition-shore-leipzig-1758', 'IN_EVERY_CASE', room(year(1758), fromLeipzig)],
      ['edition-cabinet-august-1757', 'IN_EVERY_CASE', room(['1757-08-01', '1757-08-31'], fromLondon)],
      ['edition-fish-market-1692', 'IN_EVERY_CASE', room(year(1692), fromAmsterdam)],
      ['edition-fish-market-1738', 'IN_EVERY_CASE', room(year(1738), fromAmsterdam)],
      ['edition-shore-amsterdam-1751', 'IN_EVERY_CASE', room(year(1751), fromAmsterdam)],
      ['edition-shore-amsterdam-1768', 'IN_SOME_CASES', room(year(1768), fromAmsterdam)],
      ['edition-almanack-1767', 'IN_SOME_CASES', room(year(1767), fromLondon, 120)],
      ['edition-cabinet-march-1765', 'IN_SOME_CASES', room(['1765-03-01', '1765-03-31'], fromLondon)],
      ['edition-shore-london-1764', 'IN_SOME_CASES', room(year(1764), fromLondon)],
      // Of no date: the works alone bound it.
      ['edition-fischer-leipzig', 'IN_SOME_CASES', { some: object.last - days('1759-01-01') }],
      ['edition-views-leipzig-1779', 'IN_NO_CASE', room(year(1779), fromLeipzig)],
    ]);
    expect(answer.rows.more).toBe(false);
  });

  test('the net menders follow a plate of Leipzig, which was there on every reckoning', () => {
    const row = rowOf(answer, 'edition-shore-leipzig-1758');
    expect(row.route).toEqual({
      from: 'Leipzig',
      to: 'Ellerholm',
      by: 'Leipzig by land to Ellerholm',
      least: 1,
      most: 386,
    });
    expect(row.restsOn.claims).toEqual([
      'dating-shore-leipzig-1758',
      'imprint-shore-leipzig-1758',
      'stay-works-at-ellerholm',
    ]);
    expect(row.flags).toEqual(['IMPRINT_AHEAD', 'ASSUMED', 'MARK_WINDOW']);
  });

  test('Ohlsen could have seen it at Leipzig before he came to the works', async () => {
    const ohlsen = await questions.reach({ at: { agent: 'agent-peter-ohlsen' }, by: '1763-06', page });
    const row = rowOf(ohlsen, 'edition-shore-leipzig-1758');
    // His stay began in 1760, on 31 December at the latest: that bounds the room before June 1763.
    expect([row.verdict, row.margin.every]).toEqual(['IN_EVERY_CASE', days('1763-06-01') - days('1760-12-31')]);
    expect(row.route).toEqual({ from: 'Leipzig', to: 'Leipzig', by: 'same town', least: 0, most: 30 });
    expect(row.restsOn.claims).toContain('stay-ohlsen-at-leipzig');
  });

  test('the Leipzig plates could be copied from the Amsterdam ones: those were there before 1758', async () => {
    const filter = { work: 'work-shore-pleasures' };
    const leipzig = await questions.reach({ at: { place: 'place-leipzig-city' }, by: '1758', filter, page });
    expect([leipzig.target.label, leipzig.counts.inEveryCase]).toEqual(['Leipzig', 1]);
    expect(rowOf(leipzig, 'edition-shore-amsterdam-1751').verdict).toBe('IN_EVERY_CASE');
  });

  test('the pattern book came out four times, in this order', async () => {
    const inOrder = await questions.reach({ ...dish, filter: { work: 'work-shore-pleasures' }, order: 'DATE' });
    expect(editionsOf(inOrder)).toEqual([
      'edition-shore-amsterdam-1751',
      'edition-shore-leipzig-1758',
      'edition-shore-london-1764',
      'edition-shore-amsterdam-1768',
    ]);
    expect(inOrder.counts).toEqual({ inEveryCase: 2, inSomeCases: 2, inNoCase: 0, contradictory: 0, differOnPage: 0 });
  });

  test('the London edition of 1764 comes thirty days short of every reckoning', () => {
    const row = rowOf(answer, 'edition-shore-london-1764');
    expect([row.verdict, row.margin.every]).toEqual(['IN_SOME_CASES', -30]);
    expect(row.route.by).toBe('London by sea to Kiel by land to Ellerholm');
  });

  test('the second Amsterdam edition is dated with a query by a cataloguer, and says so', () => {
    expect(rowOf(answer, 'edition-shore-amsterdam-1768').flags).toEqual(
      expect.arrayContaining(['UNCERTAIN', 'SUPPLIED']),
    );
  });

  test('the ferry follows one of three single sheets, dated by a document', async () => {
    const sheets = await questions.reach({ ...dish, filter: { form: 'SINGLE_SHEET' } });
    expect(editionsOf(sheets)).toEqual(['edition-ferry-sheet', 'edition-fish-market-1692', 'edition-fish-market-1738']);
    // Dated by no imprint: it was not for sale ahead of its date.
    expect(sheets.rows.items[0]!.item.flags).not.toContain('IMPRINT_AHEAD');
  });

  test('what shows a lighthouse is the magazine of March 1765, in time on some reckonings', async () => {
    const lighthouses = await questions.reach({ ...dish, filter: { subject: '46C' } });
    expect(lighthouses.rows.items.map(({ item }) => [item.edition, item.verdict])).toEqual([
      ['edition-cabinet-march-1765', 'IN_SOME_CASES'],
    ]);
  });

  test('the landscapes of 1779 are too late within five years of the mark, and may not be if no end is assumed', () => {
    const row = rowOf(answer, 'edition-views-leipzig-1779');
    expect([row.verdict, row.cautious?.verdict]).toEqual(['IN_NO_CASE', 'IN_SOME_CASES']);
    expect(row.why.map(reason => reason.code)).toContain('MARK_WINDOW');
    const others = answer.rows.items.filter(({ item }) => item !== row);
    expect(others.filter(({ item }) => item.verdict !== item.cautious?.verdict)).toEqual([]);
  });

  test('words of the story find what has them all, then what has some', async () => {
    const { hits } = await questions.search({ text: 'evening ferry', page });
    expect(hits.items.map(({ item }) => [item.id, item.match])).toEqual([
      ['artwork-evening-ferry', 'WORDS'],
      ['work-ferry-print', 'WORDS'],
      ['motif-dish-ferry', 'SOME'],
    ]);
  });

  test('every line of the story has a history, and an id that is in no line has none', async () => {
    const { items } = await questions.history('copying-leipzig-menders', page);
    expect(items.map(({ item }) => [item.what, item.changeSet.who, item.changeSet.why])).toEqual([
      ['ADDED', 'Ada', 'the demo world'],
    ]);
    expect(await questions.history('copying-no-such', page)).toEqual({ items: [], more: false });
  });

  test.each([
    ['mhra', 'Lust am Ufer, in zwölf Kupfern (Leipzig: Weidners Erben, 1758)'],
    ['chicago', 'Lust am Ufer, in zwölf Kupfern. Leipzig: Weidners Erben, 1758.'],
    ['apa', 'Lust am Ufer, in zwölf Kupfern. (1758). Weidners Erben.'],
  ])('the Leipzig edition is cited in the style %s', async (style, text) => {
    const cited = await questions.citation({ of: ['edition-shore-leipzig-1758'], format: 'TEXT', style });
    expect(cited.text.trim()).toBe(text);
  });

  test('had the ferry been painted in 1782 by a date of its own, the landscapes would have been there', async () => {
    const own = { id: 'dating-dish-ferry', kind: 'Dating', of: 'motif-dish-ferry', event: 'MADE', date: '1782' };
    const changed = await demoStore(engine, {}, [own]);
    const ferry = await askStore(changed).reach({ piece: 'motif-dish-ferry', page });
    const row = rowOf(ferry, 'edition-views-leipzig-1779');
    expect([row.verdict, row.cautious, row.margin.every]).toEqual([
      'IN_EVERY_CASE',
      undefined,
      days('1782-01-01') - days('1779-12-31') - 386,
    ]);
    await changed.close();
  });
});

describeOnEngines('the story told by %s', engine => {
  test('is what memory tells, to the byte', async () => {
    expect(await whole(engine)).toEqual(await whole('memory'));
  });
});

/** Answers to many questions, as text. */
async function whole(engine: Engine): Promise<readonly string[]> {
  const store = await demoStore(engine);
  const questions = askStore(store);
  const editions = editionsOf(await questions.reach(dish));
  const answers: unknown[] = [
    ...(await Promise.all(
      (['ROOM', 'DATE', 'TITLE'] as const).map(order => questions.reach({ ...dish, order, tallies: true })),
    )),
    await questions.reach({ at: { placeName: 'Hamburg' }, by: '176X', page, tallies: true }),
    ...(await Promise.all(['shore', 'Schüssel', 'amst', 'in the gilt'].map(text => questions.search({ text, page })))),
    ...(await Promise.all(
      (['TEXT', 'CSL_JSON', 'BIBTEX'] as const).map(format => questions.citation({ of: editions, format })),
    )),
    ...(await Promise.all(
      ['motif-table-fish-market', 'motif-table-pilot', 'plate-almanack-lighthouse', 'plate-views-9-windmill'].map(of =>
        questions.lineage({ of }),
      ),
    )),
    await questions.descent('work-shore-pleasures'),
    await questions.history('edition-shore-london-1764', page),
    await questions.changes(page),
    await questions.conventions(),
  ];
  await store.close();
  return answers.map(answer => JSON.stringify(answer));
}
