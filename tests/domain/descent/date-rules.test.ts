import { describe, expect, test } from 'vitest';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { withOverrides } from '../../../src/domain/conventions/with-overrides.ts';
import { dateRules, sharedDateRules } from '../../../src/domain/descent/date-rules.ts';
import type { DateLink, DatesNetwork, DayBound } from '../../../src/domain/descent/dates-network.ts';
import type { NetworkOptions } from '../../../src/domain/descent/linked-records.ts';
import type { AnyRow, ClaimOf } from '../../../src/domain/model/row.ts';
import {
  appearance,
  casting,
  copying,
  detail,
  edition,
  editionDescent,
  imprint,
  plate,
  printedFrom,
  work,
} from '../../support/store-rows.ts';
import { dating, networkOf } from './claims.ts';
import { inDays } from './network.ts';

/** Everything that some rows say, a line each, without the words that lead ids. */
function said(rows: readonly AnyRow[], options: Partial<NetworkOptions> = {}): readonly string[] {
  return inLines(networkOf(rows, options)).map(line => line.replaceAll('-of-', '-'));
}

function inLines({ bounds, links, choices }: DatesNetwork): readonly string[] {
  return [
    ...bounds.map(boundLine),
    ...links.map(linkLine),
    ...choices.flatMap(({ group = '', open, options }) => [
      `one of ${group}${open ? ' or another' : ''}`,
      ...options.map(
        each => `- ${each.claim}: ${[...each.bounds.map(boundLine), ...each.links.map(linkLine)].join(' and ')}`,
      ),
    ]),
  ];
}

function boundLine({ rule, variable, days, by }: DayBound): string {
  return `${rule} ${variable} ${days.map(inDays).join(', ')} by ${by.join(', ')}`;
}

function linkLine({ rule, from, to, least = 0, most, by }: DateLink): string {
  const limits = `${least === 0 ? '' : ` +${least}`}${most === undefined ? '' : ` at most +${most}`}`;
  return `${rule} ${from}${limits} <= ${to} by ${by.join(', ')}`;
}

describe('x1: a dating', () => {
  test.each(['MADE', 'PUBLISHED', 'INTRODUCED', 'ACQUIRED', 'SEEN'] as const)('of what happens once, %s', event => {
    expect(said([dating('d', 'piece-of-p', event, '1764')])).toEqual([
      `x1 piece-p ${event.toLowerCase()} 1764-01-01..1764-12-31 by dating-d`,
    ]);
  });

  test('with gaps keeps them', () => {
    expect(said([dating('d', 'piece-of-p', 'MADE', '[1764,1769]')])).toEqual([
      'x1 piece-p made 1764-01-01..1764-12-31, 1769-01-01..1769-12-31 by dating-d',
    ]);
  });

  test('about a year has the slack in force', () => {
    expect(said([dating('d', 'piece-of-p', 'MADE', '1764~')])).toEqual([
      'x1 piece-p made 1759-01-01..1769-12-31 by dating-d',
    ]);
  });

  test.each([
    ['LIVED', 'born', 'died'],
    ['RAN', 'began', 'ended'],
  ] as const)('of what lasted, %s', (event, first, last) => {
    expect(said([dating('d', 'agent-of-a', event, '1720/1781')])).toEqual([
      `x1 agent-a ${first} 1720-01-01..1720-12-31 by dating-d`,
      `x1 agent-a ${last} 1781-01-01..1781-12-31 by dating-d`,
      `x1 agent-a ${first} <= agent-a ${last} by dating-d`,
    ]);
  });

  test('without a date says nothing, and one beyond the calendar nothing of days', () => {
    expect(said([{ id: 'dating-of-d', kind: 'Dating', of: 'piece-of-p', event: 'MADE', asWritten: 'of old' }])).toEqual(
      [],
    );
    expect(said([dating('d', 'piece-of-p', 'MADE', 'Y-17E7')])).toEqual(['x1 piece-p made .. by dating-d']);
  });

  test('by an imprint lets the edition be for sale earlier, and keeps what is recorded', () => {
    const rows = [edition('e'), work('birds'), dating('d', 'edition-of-e', 'PUBLISHED', '1765', { basis: 'IMPRINT' })];
    expect(said(rows)).toEqual(['x1 edition-e published 1764-11-02..1765-12-31 by dating-d']);
    const [bound] = networkOf(rows).bounds;
    expect([bound?.recorded?.map(inDays), bound?.earlyBy]).toEqual([
      ['1765-01-01..1765-12-31'],
      ['convention-imprint-ahead'],
    ]);
  });

  test('by the imprint of an annual lets it be for sale earlier still', () => {
    const annual = [edition('e'), work('birds', { form: 'ANNUAL' })];
    expect(said([...annual, dating('d', 'edition-of-e', 'PUBLISHED', '1765', { basis: 'IMPRINT' })])).toEqual([
      'x1 edition-e published 1764-09-03..1765-12-31 by dating-d',
    ]);
  });

  test('by a publication line is of the plate or the state', () => {
    const line = { basis: 'PUBLICATION_LINE' } as const;
    expect(said([dating('d', 'plate-of-p', 'PUBLISHED', '1793-05-01', line)])).toEqual([
      'x1 plate-p published 1793-05-01..1793-05-01 by dating-d',
    ]);
    expect(said([dating('d', 'state-of-s', 'PUBLISHED', '1793-05-01', line)])).toEqual([
      'x1 state-s published 1793-05-01..1793-05-01 by dating-d',
    ]);
  });
});

describe('x2', () => {
  test('nothing was published before it was made', () => {
    const rows = [dating('a', 'plate-of-p', 'MADE', '1764'), dating('b', 'plate-of-p', 'PUBLISHED', '1764')];
    expect(said(rows).slice(2)).toEqual(['x2 plate-p made <= plate-p published by ']);
  });

  test('no edition was anywhere before it was published', () => {
    expect(said([imprint('i', 'edition-of-e', 'place-of-p', { role: 'BOOKSELLER' })]).slice(1)).toEqual([
      'x2 edition-e published <= edition-e arrived place-p by ',
    ]);
  });
});

describe('x3: a copying', () => {
  const made = 'x3 artwork-s made <= motif-m made by copying-c';

  test.each([undefined, 'DIRECT', 'AT_SOME_REMOVE', 'UNKNOWN'] as const)('links source and copy, remove %s', remove => {
    const more = remove === undefined ? {} : { remove };
    expect(said([copying('c', 'motif-of-m', 'artwork-of-s', more)])).toEqual([made]);
  });

  test('links them by the least days in force', () => {
    const conventions = withOverrides(defaultConventions, [{ key: 'copy.minLag', value: 14, version: 2 }]);
    expect(said([copying('c', 'motif-of-m', 'artwork-of-s')], { conventions })).toEqual([
      'x3 artwork-s made +14 <= motif-m made by copying-c, convention-copy-min-lag',
    ]);
  });

  test('each source of a pastiche counts', () => {
    expect(said([copying('c', 'motif-of-m', 'artwork-of-s'), copying('d', 'motif-of-m', 'artwork-of-t')])).toEqual([
      made,
      'x3 artwork-t made <= motif-m made by copying-d',
    ]);
  });
});

describe('x3b: a copy of a plate comes after the plate in some form', () => {
  const copied = copying('c', 'motif-of-m', 'plate-of-p');
  const inA = appearance('a', 'plate-of-p', 'edition-of-a');
  const inB = appearance('b', 'plate-of-p', 'edition-of-b');
  const issued = (rows: readonly AnyRow[], options: Partial<NetworkOptions> = {}) =>
    said([plate('p'), ...rows], options).filter(line => /x3b|one of/.test(line));

  test('the one edition that it is in', () => {
    expect(issued([copied, inA])).toEqual([
      'x3b edition-a published <= motif-m made by appearance-a, copying-c, convention-copy-after-issue',
    ]);
  });

  test('one of several editions, or the plate by itself where it is dated', () => {
    expect(issued([copied, inA, inB, dating('d', 'plate-of-p', 'PUBLISHED', '1764')])).toEqual([
      'one of ',
      '- copying-c: x3b plate-p published <= motif-m made by copying-c, convention-copy-after-issue',
      '- appearance-a: x3b edition-a published <= motif-m made by appearance-a, copying-c, convention-copy-after-issue',
      '- appearance-b: x3b edition-b published <= motif-m made by appearance-b, copying-c, convention-copy-after-issue',
    ]);
  });

  test('a detail of a plate too', () => {
    expect(issued([detail('d', 'plate-of-p'), copying('c', 'motif-of-m', 'detail-of-d'), inA])).toHaveLength(1);
  });

  test('not where nothing says in what form, nor an edition that it is known not to be in', () => {
    expect(issued([copied])).toEqual([]);
    expect(issued([copied, appearance('a', 'plate-of-p', 'edition-of-a', { presence: 'ABSENT' })])).toEqual([]);
  });

  test('not from a proof or drawing, through an edition, from another picture, or with the convention off', () => {
    expect(issued([copying('c', 'motif-of-m', 'plate-of-p', { fromProof: true }), inA])).toEqual([]);
    expect(issued([copying('c', 'motif-of-m', 'plate-of-p', { through: 'edition-of-b' }), inA])).toEqual([]);
    expect(issued([copying('c', 'motif-of-m', 'artwork-of-p'), inA])).toEqual([]);
    const conventions = withOverrides(defaultConventions, [{ key: 'copy.afterIssue', value: false, version: 2 }]);
    expect(issued([copied, inA], { conventions })).toEqual([]);
  });
});

describe('x4: a copying through', () => {
  const through = (thing: string) => copying('c', 'motif-of-m', 'plate-of-p', { through: thing });
  const only = (rows: readonly AnyRow[], options: Partial<NetworkOptions> = {}) =>
    said(rows, options).filter(line => line.startsWith('x4'));

  test('an edition comes after it was published', () => {
    expect(only([edition('e'), through('edition-of-e')])).toEqual([
      'x4 edition-e published <= motif-m made by copying-c',
    ]);
  });

  test('an edition comes after it was on its way', () => {
    const asked: string[][] = [];
    const leastOnTheWay = (from: string, to: string) => {
      asked.push([from, to]);
      return { days: 80, by: ['convention-route-bengal'], keys: [] };
    };
    expect(only([edition('e'), through('edition-of-e')], { leastOnTheWay })).toEqual([
      'x4 edition-e published +80 <= motif-m made by copying-c, convention-route-bengal',
    ]);
    expect(asked).toEqual([['edition-of-e', 'motif-of-m']]);
  });

  test('an exemplar comes after its edition', () => {
    const exemplar: AnyRow = { id: 'exemplar-of-x', kind: 'Exemplar', edition: 'edition-of-e' };
    expect(only([exemplar, through('exemplar-of-x')])).toEqual(['x4 edition-e published <= motif-m made by copying-c']);
    expect(only([{ id: 'exemplar-of-x', kind: 'Exemplar' }, through('exemplar-of-x')])).toEqual([]);
  });

  test('a state comes after it was made', () => {
    const state: AnyRow = { id: 'state-of-s', kind: 'State', matrix: 'matrix-of-x', order: 1 };
    expect(only([state, through('state-of-s')])).toEqual(['x4 state-s made <= motif-m made by copying-c']);
  });
});

describe('plates, states and printing surfaces', () => {
  test('x5: a plate is no later than an edition that it is in', () => {
    expect(said([appearance('a', 'plate-of-p', 'edition-of-e')])).toEqual([
      'x5 plate-p made <= edition-e published by appearance-a',
    ]);
    expect(said([appearance('a', 'plate-of-p', 'edition-of-e', { presence: 'ABSENT' })])).toEqual([]);
  });

  test('x6: nor is its state there', () => {
    expect(said([appearance('a', 'plate-of-p', 'edition-of-e', { state: 'state-of-s' })])).toEqual([
      'x5 plate-p made <= edition-e published by appearance-a',
      'x6 state-s made <= edition-e published by appearance-a',
    ]);
  });

  test('x7: states of one surface follow each other', () => {
    const state = (name: string, matrix: string, order: number): AnyRow => ({
      id: `state-of-${name}`,
      kind: 'State',
      matrix,
      order,
    });
    const rows = [
      state('a', 'matrix-of-x', 1),
      state('d', 'matrix-of-x', 4),
      state('b', 'matrix-of-x', 2),
      state('o', 'matrix-of-y', 3),
    ];
    expect(said(rows)).toEqual([
      'x7 state-b made <= state-d made by state-b, state-d',
      'x7 state-a made <= state-b made by state-a, state-b',
    ]);
  });

  test('x8: a surface is no later than what was printed from it', () => {
    expect(said([printedFrom('f', 'plate-of-p', 'matrix-of-x')])).toEqual([
      'x8 matrix-x made <= plate-p made by printedfrom-f',
    ]);
  });

  test('x8: a design may be older than a surface that it was printed from', () => {
    expect(said([printedFrom('f', 'design-of-d', 'matrix-of-x')])).toEqual([]);
  });

  test('x9: nor than a cast of it', () => {
    expect(said([casting('c', 'matrix-of-cast', 'matrix-of-x')])).toEqual([
      'x9 matrix-x made <= matrix-cast made by casting-c',
    ]);
  });
});

describe('editions', () => {
  test('x10: one is no later than one made from it', () => {
    expect(said([editionDescent('d', 'edition-of-late', 'edition-of-early')])).toEqual([
      'x10 edition-early published <= edition-late published by editiondescent-d',
    ]);
  });

  const partOf = (part: string, whole: string): ClaimOf<'PartOf'> => ({
    id: 'partof-of-x',
    kind: 'PartOf',
    part,
    whole,
  });

  test('x11: a part is no later than its volume', () => {
    expect(said([partOf('edition-of-part', 'edition-of-volume')])).toEqual([
      'x11 edition-part published <= edition-volume published by partof-x',
    ]);
  });

  test('x11: a number comes while the serial runs', () => {
    const running = [
      'x11 work-serial began <= edition-part published by partof-x',
      'x11 edition-part published <= work-serial ended by partof-x',
    ];
    expect(said([partOf('edition-of-part', 'work-of-serial')])).toEqual(running);
    const dated = [
      partOf('edition-of-part', 'edition-of-serial'),
      dating('r', 'edition-of-serial', 'RAN', '1764/1780'),
    ];
    expect(said(dated).filter(line => line.startsWith('x11'))).toEqual(
      running.map(line => line.replace('work', 'edition')),
    );
  });

  test('x11: other parts say nothing of dates', () => {
    expect(said([partOf('piece-of-cup', 'piece-of-service'), partOf('plate-of-one', 'plate-of-series')])).toEqual([]);
  });

  test('x12: one is with a bookseller of its imprint no earlier than it was published', () => {
    expect(said([imprint('i', 'edition-of-e', 'place-of-p', { role: 'BOOKSELLER' })])[0]).toBe(
      'x12 edition-e published <= edition-e arrived place-p by imprint-i',
    );
    expect(said([imprint('i', 'edition-of-e', 'place-of-p', { role: 'PUBLISHER' })])).toEqual([]);
  });
});

describe('x13: who had an edition had it after it came', () => {
  const access = (more: Partial<ClaimOf<'Access'>> = {}): ClaimOf<'Access'> => ({
    ...{ id: 'access-of-a', kind: 'Access', who: 'workshop-of-w', what: 'edition-of-e' },
    ...{ manner: 'OWNED', when: '1770', ...more },
  });
  const day = 'x13 access-a seen 1770-01-01..1770-12-31 by access-a';

  test('at a place, less the days on the way', () => {
    const leastOnTheWay = () => ({ days: 16, by: ['convention-route'], keys: [] });
    const there = [
      day,
      'x13 edition-e published +16 <= edition-e arrived place-q by access-a, convention-route',
      'x13 edition-e arrived place-q <= access-a seen by access-a',
      'x2 edition-e published <= edition-e arrived place-q by ',
    ];
    expect(said([access({ at: 'place-of-q' })], { leastOnTheWay })).toEqual(there);
    expect(said([access({ who: 'place-of-q' })], { leastOnTheWay })).toEqual(there);
  });

  test.each(['OWNED', 'BORROWED', 'ON_SALE', 'SEEN'] as const)('wherever they were, %s', manner => {
    expect(said([access({ manner })])).toEqual([day, 'x13 edition-e published <= access-a seen by access-a']);
  });

  test('an exemplar is one of its edition', () => {
    const exemplar: AnyRow = { id: 'exemplar-of-x', kind: 'Exemplar', edition: 'edition-of-e' };
    expect(said([exemplar, access({ what: 'exemplar-of-x' })])).toEqual([
      day,
      'x13 edition-e published <= access-a seen by access-a',
    ]);
  });

  test.each(['SUBSCRIBED', 'ANNOUNCED'] as const)('%s says nothing', manner => {
    expect(said([access({ manner })])).toEqual([]);
  });

  test('some edition of a work says nothing of one', () => {
    expect(said([access({ what: 'work-of-w' })])).toEqual([]);
  });
});

describe('records', () => {
  test('x15: a piece is no later than its motifs', () => {
    expect(said([{ id: 'motif-of-m', kind: 'Motif', piece: 'piece-of-p' }])).toEqual([
      'x15 piece-p made <= motif-m made by motif-m',
    ]);
  });

  test('x19: a detail was made with its whole', () => {
    expect(said([detail('d', 'plate-of-p')])).toEqual(['x19 plate-p made at most +0 <= detail-d made by detail-d']);
  });
});

describe('x16: work of the hand', () => {
  const by = (record: string, role: string, agent = 'agent-of-a'): ClaimOf<'Attribution'> => ({
    ...{ id: 'attribution-of-x', kind: 'Attribution', record, agent, role },
  });
  const grown = (record: string) =>
    `x16 agent-a born +4383 <= ${record} made by attribution-x, convention-person-min-making-age`;
  const alive = (record: string) => `x16 ${record} made <= agent-a died by attribution-x`;

  test.each(['art', 'dln', 'egr', 'mfr'])('of a thing is done in the life of who did it, as %s', role => {
    expect(said([by('artwork-of-t', role)])).toEqual([grown('artwork-t'), alive('artwork-t')]);
  });

  test.each(['egr', 'etr', 'ltg', 'mte', 'prm', 'wdc', 'wde'])('of a plate by who cut it, as %s', role => {
    expect(said([by('plate-of-t', role)])).toEqual([grown('plate-t'), alive('plate-t')]);
  });

  test.each(['art', 'dsr', 'dln', 'ill'])('of a plate after a design may be done after his death, as %s', role => {
    expect(said([by('plate-of-t', role)])).toEqual([grown('plate-t')]);
  });

  test.each(['pbl', 'prt', 'bsl', 'aut'])('says nothing of who publishes, prints, sells or writes, as %s', role => {
    expect(said([by('plate-of-t', role)])).toEqual([]);
  });

  test('says nothing of firms, workshops and editions', () => {
    expect(said([{ id: 'agent-of-a', kind: 'Agent', form: 'FIRM' }, by('plate-of-t', 'egr')])).toEqual([]);
    expect(said([by('piece-of-t', 'art', 'workshop-of-w')])).toEqual([]);
    expect(said([by('edition-of-t', 'ill')])).toEqual([]);
  });
});

describe('x17: a stay', () => {
  const stay = (more: Partial<ClaimOf<'Stay'>>): ClaimOf<'Stay'> => ({
    ...{ id: 'stay-of-s', kind: 'Stay', who: 'agent-of-a', where: 'place-of-p', ...more },
  });

  test('lies within a life', () => {
    expect(said([stay({ from: '1758', to: '1763-05' })])).toEqual([
      'x17 stay-s began 1758-01-01..1758-12-31 by stay-s',
      'x17 stay-s ended 1763-05-01..1763-05-31 by stay-s',
      'x17 agent-a born <= stay-s began by stay-s',
      'x17 stay-s began <= stay-s ended by stay-s',
      'x17 stay-s ended <= agent-a died by stay-s',
    ]);
  });

  test('of a workshop ends no earlier than it began', () => {
    expect(said([stay({ who: 'workshop-of-w' })])).toEqual(['x17 stay-s began <= stay-s ended by stay-s']);
  });
});

describe('x20: a sequence', () => {
  const sequence = (more: Partial<ClaimOf<'Sequence'>> = {}): ClaimOf<'Sequence'> => ({
    ...{ id: 'sequence-of-s', kind: 'Sequence', earlier: 'piece-of-a', later: 'piece-of-b' },
    ...{ earlierEvent: 'MADE', laterEvent: 'ACQUIRED', ...more },
  });

  test('links two events by least and greatest days', () => {
    expect(said([sequence()])).toEqual(['x20 piece-a made <= piece-b acquired by sequence-s']);
    expect(said([sequence({ atLeast: 60, atMost: 365 })])).toEqual([
      'x20 piece-a made +60 at most +365 <= piece-b acquired by sequence-s',
    ]);
  });

  test('of what lasted is from the end of one to the beginning of the other', () => {
    expect(said([sequence({ earlierEvent: 'LIVED', laterEvent: 'RAN' })])).toEqual([
      'x20 piece-a died <= piece-b began by sequence-s',
    ]);
  });
});

describe('x22: records that are the same', () => {
  const same = (one: string, other: string, more: Partial<ClaimOf<'Identity'>> = {}): ClaimOf<'Identity'> => ({
    ...{ id: `identity-of-${one}`, kind: 'Identity', one, other, verdict: 'SAME', ...more },
  });
  const dated = dating('d', 'edition-of-a', 'PUBLISHED', '1764');

  test('have their days in common, over others too', () => {
    expect(said([dated, same('edition-of-a', 'edition-of-b'), same('edition-of-b', 'edition-of-c')]).slice(1)).toEqual([
      'x22 edition-a published at most +0 <= edition-b published by identity-edition-a',
      'x22 edition-b published at most +0 <= edition-c published by identity-edition-b',
    ]);
  });

  test('at the level of the work are not the same edition', () => {
    expect(said([dated, same('edition-of-a', 'edition-of-b', { level: 'WORK' })])).toHaveLength(1);
    expect(said([dated, same('edition-of-a', 'edition-of-b', { level: 'EDITION' })])).toHaveLength(2);
  });

  test('have nothing in common where they are said to be different', () => {
    expect(said([dated, same('edition-of-a', 'edition-of-b', { verdict: 'DIFFERENT' })])).toHaveLength(1);
  });

  test('bring together what x2 looks at', () => {
    const rows = [dating('m', 'plate-of-a', 'MADE', '1764'), dating('p', 'plate-of-b', 'PUBLISHED', '1765')];
    expect(said([...rows, same('plate-of-a', 'plate-of-b')]).filter(line => line.startsWith('x2 '))).toEqual([
      'x2 plate-b made <= plate-b published by ',
      'x2 plate-a made <= plate-a published by ',
    ]);
  });
});

test.each(['piece', 'motif'])('x14: a design was introduced no later than a %s that follows it was made', kind => {
  const follows: AnyRow = { id: 'follows-of-f', kind: 'Follows', record: `${kind}-of-a`, design: 'design-of-d' };
  expect(said([follows])).toEqual([`x14 design-d introduced <= ${kind}-a made by follows-f`]);
});

describe('x18: custody', () => {
  const custody = (thing: string, more: Partial<ClaimOf<'Custody'>> = {}): ClaimOf<'Custody'> => ({
    ...{ id: 'custody-of-c', kind: 'Custody', thing, holder: 'agent-of-h', ...more },
  });
  const exemplar: AnyRow = { id: 'exemplar-of-x', kind: 'Exemplar', edition: 'edition-of-e' };

  test.each(['artwork', 'piece', 'matrix'])('of a %s begins no earlier than it was made', kind => {
    expect(said([custody(`${kind}-of-t`, { acquired: '1801' })])).toEqual([
      'x18 custody-c acquired 1801-01-01..1801-12-31 by custody-c',
      `x18 ${kind}-t made <= custody-c acquired by custody-c`,
    ]);
  });

  test('of an exemplar begins no earlier than its edition was published', () => {
    expect(said([custody('exemplar-of-x'), exemplar])).toEqual([
      'x18 edition-e published <= custody-c acquired by custody-c',
    ]);
  });

  test('of an exemplar of which no edition is known bounds itself alone', () => {
    const line = 'x18 custody-c acquired 1801-01-01..1801-12-31 by custody-c';
    expect(said([custody('exemplar-of-x', { acquired: '1801' })])).toEqual([line]);
    const album: AnyRow = { id: 'exemplar-of-x', kind: 'Exemplar' };
    expect(said([custody('exemplar-of-x', { acquired: '1801' }), album])).toEqual([line]);
  });

  test('says nothing by when it ended', () => {
    expect(said([custody('piece-of-t', { parted: '1810' })])).toEqual([
      'x18 piece-t made <= custody-c acquired by custody-c',
    ]);
  });
});

describe('the table', () => {
  test('has each rule once, with what it says', () => {
    const rows = [...dateRules, ...sharedDateRules];
    expect(rows.map(({ id }) => id).sort()).toEqual([
      ...[
        'x1',
        'x10',
        'x11',
        'x12',
        'x13',
        'x14',
        'x15',
        'x16',
        'x17',
        'x18',
        'x19',
        'x2',
        'x20',
        'x22',
        'x3',
        'x3b',
        'x4',
        'x5',
      ],
      ...['x6', 'x7', 'x8', 'x9'],
    ]);
    expect(rows.filter(({ says }) => !says.endsWith('.'))).toEqual([]);
  });
});
