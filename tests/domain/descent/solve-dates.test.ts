import { describe, expect, test } from 'vitest';
import { solveDates } from '../../../src/domain/descent/solve-dates.ts';
import { PlatestemmaError } from '../../../src/errors.ts';
import { dated, daysLeft, inDays, inLines, link, network, onDays, oneOf, told } from './network.ts';

describe('a drawing, the print after it, an almanac after that and a tile', () => {
  const links = [link('drawing', 'print', 60), link('print', 'almanac', 30), link('almanac', 'tile', 14)];
  const bounds = [dated('drawing', '1788/1790'), dated('print', '1789/1795'), dated('tile', '1790/1792')];

  test('C1: bound each other', () => {
    const dates = solveDates(network({ bounds, links }));
    expect(daysLeft(dates)).toEqual({
      almanac: '1789-01-31..1792-12-17',
      drawing: '1788-01-01..1790-12-31',
      print: '1789-01-01..1792-11-17',
      tile: '1790-01-01..1792-12-31',
    });
    expect(links.map(({ by }) => dates.room(by[0]!))).toEqual([{ least: 1722 }, { least: 1416 }, { least: 1416 }]);
    expect([dates.contradictions(), dates.exact]).toEqual([[], true]);
  });

  test('tell why', () => {
    const dates = solveDates(network({ bounds, links }));
    expect(inLines(dates.why('almanac', 'FIRST'))).toEqual([
      'print not before 1789-01-01 (print 1789/1795)',
      'print to almanac at least 30 (print>almanac)',
    ]);
    expect(inLines(dates.why('print', 'LAST'))).toEqual([
      'tile not after 1792-12-31 (tile 1790/1792)',
      'almanac to tile at least 14 (almanac>tile)',
      'print to almanac at least 30 (print>almanac)',
    ]);
    expect(inLines(dates.why('drawing', 'FIRST'))).toEqual(['drawing not before 1788-01-01 (drawing 1788/1790)']);
  });

  test('C2: cannot hold with a print of June 1793, and the date of the drawing has no part in it', () => {
    const dates = solveDates(network({ bounds: [...bounds, dated('print', '1793-06-01/..')], links }));
    expect(told(dates.contradictions())).toEqual([
      ['DATES', ['print 1793-06-01/..', 'print>almanac', 'almanac>tile', 'tile 1790/1792'], 196],
    ]);
    expect(dates.contradictions()[0]?.message).toBe(
      'tile: not before 1793-07-15 and not after 1792-12-31, 196 days short',
    );
    expect(dates.room('tile 1790/1792')).toEqual({ last: -196 });
    expect(dates.room('drawing 1788/1790')).toEqual({});
    expect(dates.days('almanac')).toEqual({ recorded: {}, linked: {}, parts: [{}], contradictory: true });
  });
});

describe('small networks', () => {
  test('C3: one link', () => {
    const dates = solveDates(
      network({
        bounds: [onDays('0', [{ lo: 0, hi: 364 }], 'a'), onDays('1', [{ hi: 333 }], 'b')],
        links: [link('0', '1', 16)],
      }),
    );
    expect([dates.days('0').linked, dates.days('1').linked]).toEqual([
      { lo: 0, hi: 317 },
      { lo: 16, hi: 333 },
    ]);
    expect(dates.room('0>1')).toEqual({ least: 317 });
    expect([dates.room('a'), dates.room('b')]).toEqual([{ first: 317, last: 364 }, { last: 317 }]);
  });

  test('C4: a chain', () => {
    const dates = solveDates(
      network({
        bounds: [onDays('0', [{ lo: 0, hi: 50 }], 'a'), onDays('3', [{ lo: 100, hi: 120 }], 'b')],
        links: [link('0', '1', 10), link('1', '2', 20), link('2', '3', 5)],
      }),
    );
    const days = ['0', '1', '2', '3'].map(name => dates.days(name).linked);
    expect(days).toEqual([
      { lo: 0, hi: 50 },
      { lo: 10, hi: 95 },
      { lo: 30, hi: 115 },
      { lo: 100, hi: 120 },
    ]);
    expect(['0>1', '1>2', '2>3'].map(dates.room)).toEqual([{ least: 85 }, { least: 85 }, { least: 85 }]);
  });

  test('C5: a chain that is too long', () => {
    const dates = solveDates(
      network({
        bounds: [onDays('0', [{ lo: 100 }], 'lo0'), onDays('2', [{ hi: 110 }], 'hi2')],
        links: [link('0', '1', 5), link('1', '2', 10)],
      }),
    );
    expect(told(dates.contradictions())).toEqual([['DATES', ['lo0', '0>1', '1>2', 'hi2'], 5]]);
  });

  test('C6: two ways', () => {
    const dates = solveDates(
      network({
        bounds: [onDays('0', [{ lo: 0, hi: 30 }], 'a'), onDays('3', [{ hi: 60 }], 'b')],
        links: [link('0', '1', 10), link('0', '2', 25), link('1', '3', 10), link('2', '3', 20)],
      }),
    );
    const days = ['0', '1', '2', '3'].map(name => dates.days(name).linked);
    expect(days).toEqual([
      { lo: 0, hi: 15 },
      { lo: 10, hi: 50 },
      { lo: 25, hi: 40 },
      { lo: 45, hi: 60 },
    ]);
    const rooms = ['0>1', '0>2', '1>3', '2>3'].map(dates.room);
    expect(rooms).toEqual([{ least: 40 }, { least: 15 }, { least: 40 }, { least: 15 }]);
  });

  test('C7: a loop that no date reaches', () => {
    const dates = solveDates(network({ links: [link('0', '1', 3), link('1', '0', 2)] }));
    expect(told(dates.contradictions())).toEqual([['LOOP', ['0>1', '1>0'], 5]]);
    expect(dates.contradictions()[0]?.message).toBe('0: these links lead back to it later than itself, 5 days short');
    expect([dates.room('0>1'), dates.days('1').contradictory]).toEqual([{ least: -5 }, true]);
  });
});

test('an event some days before itself is a loop', () => {
  const dates = solveDates(network({ bounds: [dated('a', '1764')], links: [link('a', 'a', 3)] }));
  expect(told(dates.contradictions())).toEqual([['LOOP', ['a>a'], 3]]);
  expect(solveDates(network({ links: [link('a', 'a', 0)] })).contradictions()).toEqual([]);
});

describe('two datings of one event', () => {
  const early = dated('made', '1760/1762');
  const late = dated('made', '1764/1766');

  test('C8: contradict where they have no day in common', () => {
    const dates = solveDates(network({ bounds: [early, late] }));
    expect(told(dates.contradictions())).toEqual([['DATES', ['made 1764/1766', 'made 1760/1762'], 366]]);
    expect(inDays(dates.days('made').recorded)).toBe('1764-01-01..1762-12-31');
  });

  const group = oneOf('group', { early: { bounds: [early] }, late: { bounds: [late] } });

  test('C8: in a group leave the days of either', () => {
    const dates = solveDates(network({ choices: [group] }));
    expect(dates.days('made').parts.map(inDays)).toEqual(['1760-01-01..1762-12-31', '1764-01-01..1766-12-31']);
    expect(dates.contradictions()).toEqual([]);
    expect(dates.alternatives().map(({ claim, possible, necessary }) => [claim, possible, necessary])).toEqual([
      ['early', true, false],
      ['late', true, false],
    ]);
  });

  test('C8: of a group of which a further claim leaves one make that one necessary', () => {
    const dates = solveDates(network({ bounds: [dated('made', '../1763')], choices: [group] }));
    expect(daysLeft(dates)).toEqual({ made: '1760-01-01..1762-12-31' });
    const alternatives = dates.alternatives();
    expect(alternatives.map(({ claim, possible, necessary }) => [claim, possible, necessary])).toEqual([
      ['early', true, true],
      ['late', false, false],
    ]);
    expect(told(alternatives.flatMap(({ contradiction }) => contradiction ?? []))).toEqual([
      ['DATES', ['made 1764/1766', 'made ../1763'], 1],
    ]);
  });
});

describe('a copy of one of two sources', () => {
  const bounds = [dated('copy', '../1763'), dated('A', '1765/..'), dated('B', '1761/1762')];
  const [fromA, fromB] = [link('A', 'copy', 0, undefined, 'after A'), link('B', 'copy', 0, undefined, 'after B')];

  test('C9: can only be after the earlier one', () => {
    const choices = [oneOf('group', { 'after A': { links: [fromA] }, 'after B': { links: [fromB] } })];
    const dates = solveDates(network({ bounds, choices }));
    expect(daysLeft(dates)).toEqual({
      A: '1765-01-01..',
      B: '1761-01-01..1762-12-31',
      copy: '1761-01-01..1763-12-31',
    });
    const alternatives = dates.alternatives();
    expect(alternatives.map(({ claim, possible, necessary }) => [claim, possible, necessary])).toEqual([
      ['after A', false, false],
      ['after B', true, true],
    ]);
    expect(told(alternatives.flatMap(({ contradiction }) => contradiction ?? []))).toEqual([
      ['DATES', ['A 1765/..', 'after A', 'copy ../1763'], 367],
    ]);
  });

  test('C9: without a group contradicts the later one', () => {
    const dates = solveDates(network({ bounds, links: [fromA, fromB] }));
    expect(told(dates.contradictions())).toEqual([['DATES', ['A 1765/..', 'after A', 'copy ../1763'], 367]]);
  });
});

describe('C10: greatest days', () => {
  const links = [link('p', 'a', 2, 60), link('a', 'o', 30, 200)];

  test('bound the later from the earlier', () => {
    const dates = solveDates(network({ bounds: [dated('p', '1764')], links }));
    expect(daysLeft(dates)).toEqual({
      a: '1764-01-03..1765-03-01',
      o: '1764-02-02..1765-09-17',
      p: '1764-01-01..1764-12-31',
    });
  });

  test('contradict what comes too late', () => {
    const dates = solveDates(network({ bounds: [dated('p', '1764'), dated('o', '1765-12-01/..')], links }));
    expect(told(dates.contradictions()).map(([code, involved, short]) => [code, [...involved].sort(), short])).toEqual([
      ['DATES', ['a>o', 'o 1765-12-01/..', 'p 1764', 'p>a'], 75],
    ]);
    expect(inLines(dates.contradictions()[0]!.reasons)).toEqual([
      'o not before 1765-12-01 (o 1765-12-01/..)',
      'a to o at most 200 (a>o)',
      'p to a at most 60 (p>a)',
      'p not after 1764-12-31 (p 1764)',
    ]);
  });
});

describe('a contradiction with a simpler one at the same place', () => {
  const links = [link('a', 'b', 10), link('b', 'c', 10), link('c', 'd', 10), link('e', 'd', 1)];
  const bounds = [
    onDays('a', [{ lo: 0 }], 'lo a'),
    onDays('e', [{ lo: 21 }], 'lo e'),
    onDays('d', [{ hi: 20 }], 'hi d'),
  ];

  test('is told by the most days short, and beside it by the fewest claims', () => {
    const [only, ...others] = solveDates(network({ bounds, links })).contradictions();
    expect(told([only!, only!.smaller!])).toEqual([
      ['DATES', ['lo a', 'a>b', 'b>c', 'c>d', 'hi d'], 10],
      ['DATES', ['lo e', 'e>d', 'hi d'], 2],
    ]);
    expect(others).toEqual([]);
  });

  test('is told once where other dates add nothing to it', () => {
    const claimTwice = { ...link('a', 'b', 3, undefined, 'both'), by: ['both'] };
    const back = link('b', 'a', 2, undefined, 'both');
    const dates = solveDates(
      network({ bounds: [onDays('a', [{ lo: 0 }], 'lo'), onDays('b', [{ hi: 0 }], 'hi')], links: [claimTwice, back] }),
    );
    expect(told(dates.contradictions())).toEqual([['LOOP', ['both'], 5]]);
  });
});

describe('many contradictions', () => {
  const bounds = Array.from({ length: 5 }, (_, i) => dated(`v${i}`, '1764', `early ${i}`));
  const late = Array.from({ length: 5 }, (_, i) => dated(`v${i}`, '1765', `late ${i}`));

  test('are told up to a limit, which is said', () => {
    const all = solveDates(network({ bounds: [...bounds, ...late] }));
    expect([all.contradictions().length, all.more]).toEqual([5, false]);
    const some = solveDates(network({ bounds: [...bounds, ...late] }), { contradictions: 2, cases: 100 });
    expect([told(some.contradictions()), some.more]).toEqual([
      [
        ['DATES', ['late 0', 'early 0'], 1],
        ['DATES', ['late 1', 'early 1'], 1],
      ],
      true,
    ]);
  });

  test('leave dates that are not linked with them alone', () => {
    const dates = solveDates(
      network({
        bounds: [...bounds.slice(0, 1), ...late.slice(0, 1), dated('x', '1764')],
        links: [link('x', 'y', 30)],
      }),
    );
    expect([dates.days('v0').contradictory, inDays(dates.days('y').linked)]).toEqual([true, '1764-01-31..']);
  });
});

describe('a work by one of two hands', () => {
  const lived = (agent: string, born: string, died: string) => [
    dated(`${agent} born`, born),
    dated(`${agent} died`, died),
  ];
  const by = (agent: string) => ({
    links: [
      link(`${agent} born`, 'made', 4383, undefined, `by ${agent}`),
      link('made', `${agent} died`, 0, undefined, `by ${agent}`),
    ],
  });
  const choices = [oneOf('group', { 'by father': by('father'), 'by son': by('son') })];
  const bounds = [...lived('father', '1700', '1740'), ...lived('son', '1735', '1790')];

  test('was made in the grown life of either', () => {
    const dates = solveDates(network({ bounds, choices }));
    expect([inDays(dates.days('made').linked), dates.exact]).toEqual(['1712-01-02..1790-12-31', true]);
    expect(inLines(dates.why('made', 'FIRST'))).toEqual([
      'whichever of group',
      '- by father',
      '  father born not before 1700-01-01 (father born 1700)',
      '  father born to made at least 4383 (by father)',
      '- by son',
      '  son born not before 1735-01-01 (son born 1735)',
      '  son born to made at least 4383 (by son)',
    ]);
  });

  test('made between the two is by neither', () => {
    const dates = solveDates(network({ bounds: [...bounds, dated('made', '1742/1745')], choices }));
    const [only] = dates.contradictions();
    expect([only?.code, only?.daysShort]).toEqual(['NO_ALTERNATIVE', 366]);
    expect(only?.message).toBe(
      'no alternative fits: father died: not before 1742-01-01 and not after 1740-12-31, 366 days short; made: not before 1747-01-01 and not after 1745-12-31, 366 days short',
    );
    expect(dates.alternatives().map(({ claim, possible }) => [claim, possible])).toEqual([
      ['by father', false],
      ['by son', false],
    ]);
  });

  test('made late is by the son', () => {
    const dates = solveDates(network({ bounds: [...bounds, dated('made', '1760/1795')], choices }));
    expect(inDays(dates.days('made').linked)).toBe('1760-01-01..1790-12-31');
    expect(dates.alternatives().map(({ claim, possible, necessary }) => [claim, possible, necessary])).toEqual([
      ['by father', false, false],
      ['by son', true, true],
    ]);
  });

  test('is said to be inexact where not all cases may be tried: the days are then no narrower', () => {
    const dates = solveDates(network({ bounds: [...bounds, dated('made', '1760/1795')], choices }), {
      contradictions: 9,
      cases: 2,
    });
    expect([inDays(dates.days('made').linked), dates.exact]).toEqual(['1760-01-01..1795-12-31', false]);
  });
});

test('a variable that is not there is our own mistake', () => {
  const dates = solveDates(network({ bounds: [dated('a', '1764')] }));
  expect(() => dates.days('b')).toThrow(
    new PlatestemmaError('BROKEN_PROMISE', 'a variable that the network does not have is asked for: b'),
  );
});
