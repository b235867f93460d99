import { describe, expect, test } from 'vitest';
import { solveDates } from '../../../src/domain/descent/solve-dates.ts';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import { appearance, copying, edition, plate, work } from '../../support/store-rows.ts';
import { dating, networkOf } from './claims.ts';
import { daysLeft, inDays, inLines, told } from './network.ts';

const group = (open = false): AnyRow => ({ id: 'alternatives-of-x', kind: 'Alternatives', open });
const either = { alternativeTo: 'alternatives-of-x' };

describe('C11: which datings count', () => {
  const rows = [
    dating('certain', 'piece-of-p', 'MADE', '1764', { certainty: 'CERTAIN' }),
    dating('doubtful', 'piece-of-p', 'MADE', '1770', { certainty: 'DOUBTFUL' }),
    dating('rejected', 'piece-of-p', 'MADE', '1768', { stance: 'REJECTED' }),
  ];

  test('by default the one that is held and possible', () => {
    const dates = solveDates(networkOf(rows));
    expect(daysLeft(dates)).toEqual({ 'piece-of-p made': '1764-01-01..1764-12-31' });
    expect(dates.contradictions()).toEqual([]);
  });

  test('down to doubtful the two that are held: they contradict', () => {
    const basis = { stances: ['HELD'], certaintyAtLeast: 'DOUBTFUL' } as const;
    expect(told(solveDates(networkOf(rows, { basis })).contradictions())).toEqual([
      ['DATES', ['dating-of-doubtful', 'dating-of-certain'], 1827],
    ]);
  });

  test('what is withdrawn never', () => {
    const withdrawn = dating('w', 'piece-of-p', 'MADE', '1764', { standing: 'WITHDRAWN' });
    expect(networkOf([withdrawn]).bounds).toEqual([]);
  });
});

describe('a group of alternatives', () => {
  const early = dating('early', 'piece-of-p', 'MADE', '1760/1762', either);
  const late = dating('late', 'piece-of-p', 'MADE', '1764/1766', either);
  const days = (rows: readonly AnyRow[]) => solveDates(networkOf(rows)).days('piece-of-p made').parts.map(inDays);

  test('leaves the days of either', () => {
    expect(days([group(), early, late])).toEqual(['1760-01-01..1762-12-31', '1764-01-01..1766-12-31']);
  });

  test('that is open leaves all days', () => {
    expect(days([group(true), early, late])).toEqual(['..']);
    const dates = solveDates(networkOf([group(true), early, late, dating('n', 'piece-of-p', 'MADE', '../1763')]));
    expect(dates.alternatives().map(({ claim, possible, necessary }) => [claim, possible, necessary])).toEqual([
      ['dating-of-early', true, false],
      ['dating-of-late', false, false],
    ]);
  });

  test('of which one counts asserts that one, unless it is open', () => {
    const rejected = { ...late, stance: 'REJECTED' } as const;
    expect(days([group(), early, rejected])).toEqual(['1760-01-01..1762-12-31']);
    expect(days([group(true), early, rejected])).toEqual(['..']);
  });

  test('of copyings leaves what comes after either', () => {
    const rows = [
      ...[
        group(),
        copying('a', 'motif-of-m', 'artwork-of-a', either),
        copying('b', 'motif-of-m', 'artwork-of-b', either),
      ],
      ...[dating('a', 'artwork-of-a', 'MADE', '1765/1767'), dating('b', 'artwork-of-b', 'MADE', '1761/1762')],
    ];
    const dates = solveDates(networkOf(rows));
    expect(inDays(dates.days('motif-of-m made').linked)).toBe('1761-01-01..');
    expect(inLines(dates.why('motif-of-m made', 'FIRST'))).toEqual([
      'whichever of alternatives-of-x',
      '- copying-of-a',
      '  artwork-of-a made not before 1765-01-01 (dating-of-a)',
      '  artwork-of-a made to motif-of-m made at least 0 (copying-of-a)',
      '- copying-of-b',
      '  artwork-of-b made not before 1761-01-01 (dating-of-b)',
      '  artwork-of-b made to motif-of-m made at least 0 (copying-of-b)',
    ]);
  });

  test('of copyings of a plate leaves each in the forms that it was for sale in', () => {
    const rows = [
      ...[group(), plate('p'), plate('q')],
      ...[copying('p', 'motif-of-m', 'plate-of-p', either), copying('q', 'motif-of-m', 'plate-of-q', either)],
      ...[appearance('p1', 'plate-of-p', 'edition-of-a'), appearance('p2', 'plate-of-p', 'edition-of-b')],
    ];
    expect(networkOf(rows).choices.map(({ options }) => options.map(({ claim }) => claim))).toEqual([
      ['copying-of-p', 'copying-of-p', 'copying-of-q'],
    ]);
  });
});

describe('a print that is dated', () => {
  const rows = [
    ...[plate('p'), edition('e'), edition('f'), work('birds'), copying('c', 'motif-of-m', 'plate-of-p')],
    ...[appearance('e', 'plate-of-p', 'edition-of-e'), appearance('f', 'plate-of-p', 'edition-of-f')],
    dating('e', 'edition-of-e', 'PUBLISHED', '1770'),
    dating('f', 'edition-of-f', 'PUBLISHED', '1775'),
  ];

  test('lets its copies be no earlier than the first of its editions', () => {
    const dates = solveDates(networkOf(rows));
    expect(daysLeft(dates)).toEqual({
      'edition-of-e published': '1770-01-01..1770-12-31',
      'edition-of-f published': '1775-01-01..1775-12-31',
      'motif-of-m made': '1770-01-01..',
      'plate-of-p made': '..1770-12-31',
    });
  });

  test('comes too late for a motif that is earlier', () => {
    const dates = solveDates(networkOf([...rows, dating('m', 'motif-of-m', 'MADE', '1766/1769')]));
    const [contradiction] = dates.contradictions();
    expect([contradiction?.code, contradiction?.daysShort]).toEqual(['DATES', 1]);
    expect(inLines(contradiction!.reasons)).toEqual([
      'whichever of these',
      '- appearance-of-e',
      '  edition-of-e published not before 1770-01-01 (dating-of-e)',
      '  edition-of-e published to motif-of-m made at least 0 (appearance-of-e, copying-of-c, convention-copy-after-issue)',
      '- appearance-of-f',
      '  edition-of-f published not before 1775-01-01 (dating-of-f)',
      '  edition-of-f published to motif-of-m made at least 0 (appearance-of-f, copying-of-c, convention-copy-after-issue)',
      'motif-of-m made not after 1769-12-31 (dating-of-m)',
    ]);
  });

  test('is in time for one of its last year, which then comes from the first edition and is the last day of that', () => {
    const dates = solveDates(networkOf([...rows, dating('m', 'motif-of-m', 'MADE', '1766/1770-06')]));
    expect(inDays(dates.days('motif-of-m made').linked)).toBe('1770-01-01..1770-06-30');
    expect(inDays(dates.days('edition-of-e published').linked)).toBe('1770-01-01..1770-06-30');
    expect(inLines(dates.why('edition-of-e published', 'LAST')).at(0)).toBe(
      'motif-of-m made not after 1770-06-30 (dating-of-m)',
    );
  });
});

describe('an imprint that runs ahead', () => {
  const book = [edition('e'), work('birds'), dating('e', 'edition-of-e', 'PUBLISHED', '1765', { basis: 'IMPRINT' })];
  const copied = copying('c', 'motif-of-m', 'artwork-of-a', { through: 'edition-of-e' });

  test('shows the year recorded, and hands its early start on to others', () => {
    const dates = solveDates(networkOf([...book, copied]));
    expect(daysLeft(dates)).toEqual({
      'artwork-of-a made': '..',
      'edition-of-e published': '1765-01-01..1765-12-31',
      'motif-of-m made': '1764-11-02..',
    });
    expect(dates.why('motif-of-m made', 'FIRST')[0]).toEqual({
      ...{ kind: 'BOUND', variable: 'edition-of-e published', end: 'FIRST', day: -74934, ahead: 60 },
      ...{ rule: 'x1', by: ['dating-of-e', 'convention-imprint-ahead'] },
    });
  });

  test('is in time for a motif of the last weeks before, and shows the day that is left', () => {
    const dates = solveDates(networkOf([...book, copied, dating('m', 'motif-of-m', 'MADE', '1764-12-20')]));
    expect(dates.contradictions()).toEqual([]);
    expect(inDays(dates.days('edition-of-e published').linked)).toBe('1764-11-02..1764-12-20');
  });
});
