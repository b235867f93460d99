import { describe, expect, test } from 'vitest';
import type { HandednessLink } from '../../../src/domain/descent/handedness-link.ts';
import { handednessLinksOf } from '../../../src/domain/descent/handedness-links-of.ts';
import { handednessRules } from '../../../src/domain/descent/handedness-rules.ts';
import { relateHandedness } from '../../../src/domain/descent/relate-handedness.ts';
import type { AnyRow, ClaimOf } from '../../../src/domain/model/row.ts';
import { casting, copying, detail, printedFrom } from '../../support/store-rows.ts';
import { apart } from './claims.ts';

/** What some rows say, a line each, without the words that lead ids. */
function said(...rows: readonly AnyRow[]): readonly string[] {
  return handednessLinksOf(apart(rows)).map(inLine);
}

function inLine({ one, other, reversed, rule, by }: HandednessLink): string {
  const words = reversed === undefined ? 'not known against' : reversed ? 'reverse of' : 'as';
  return `${rule}: ${one} ${words} ${other} by ${by.join(', ')}`.replaceAll('-of-', '-');
}

test.each([
  ['SAME', 'as'],
  ['REVERSED', 'reverse of'],
  ['UNKNOWN', 'not known against'],
  [undefined, 'not known against'],
] as const)('a copying of handedness %s', (handedness, words) => {
  const more = handedness === undefined ? {} : { handedness };
  expect(said(copying('c', 'plate-of-a', 'plate-of-b', more))).toEqual([
    `copying: plate-a ${words} plate-b by copying-c`,
  ]);
});

test.each([
  ['plate', undefined, 'reverse of'],
  ['plate', 'DIRECT', 'reverse of'],
  ['plate', 'COUNTERPROOF', 'as'],
  ['plate', 'TRANSFER', 'not known against'],
  ['motif', undefined, 'not known against'],
  ['motif', 'DIRECT', 'reverse of'],
  ['motif', 'COUNTERPROOF', 'as'],
  ['motif', 'TRANSFER', 'as'],
] as const)('a %s printed from a surface, manner %s', (kind, manner, words) => {
  const more = manner === undefined ? {} : { manner };
  expect(said(printedFrom('f', `${kind}-of-a`, 'matrix-of-x', more))).toEqual([
    `printing: ${kind}-a ${words} matrix-x by printedfrom-f`,
  ]);
});

test('a cast is as the surface it was cast from', () => {
  expect(said(casting('c', 'matrix-of-cast', 'matrix-of-x'))).toEqual([
    'casting: matrix-cast as matrix-x by casting-c',
  ]);
});

test('a state is as its surface, and a detail as its whole', () => {
  const state: AnyRow = { id: 'state-of-s', kind: 'State', matrix: 'matrix-of-x', order: 2 };
  expect(said(state)).toEqual(['state: state-s as matrix-x by state-s']);
  expect(said(detail('d', 'plate-of-a'))).toEqual(['detail: detail-d as plate-a by detail-d']);
});

test.each([
  ['SAME', ['comparison: motif-a as plate-b by comparison-c']],
  ['REVERSED', ['comparison: motif-a reverse of plate-b by comparison-c']],
  ['UNKNOWN', ['comparison: motif-a not known against plate-b by comparison-c']],
  [undefined, []],
] as const)('pictures looked at side by side, and seen to be %s', (handedness, lines) => {
  const seen: AnyRow = {
    ...{ id: 'comparison-of-c', kind: 'Comparison', picture: 'motif-of-a', against: 'plate-of-b' },
    ...(handedness === undefined ? {} : { handedness }),
  };
  expect(said(seen)).toEqual(lines);
});

test('records of the same thing are alike, those of one work or edition need not be', () => {
  const same = (more: Partial<ClaimOf<'Identity'>>): ClaimOf<'Identity'> => ({
    ...{ id: 'identity-of-i', kind: 'Identity', one: 'plate-of-a', other: 'plate-of-b', verdict: 'SAME', ...more },
  });
  expect(said(same({}))).toEqual(['identity: plate-a as plate-b by identity-i']);
  expect(said(same({ level: 'WORK' }), same({ verdict: 'DIFFERENT' }))).toEqual([]);
});

test('a claim that does not count, or is one of several alternatives, says nothing', () => {
  const reversed = { handedness: 'REVERSED' } as const;
  expect(said(copying('c', 'plate-of-a', 'plate-of-b', { ...reversed, stance: 'WEIGHED' }))).toEqual([]);
  const either = { ...reversed, alternativeTo: 'alternatives-of-x' };
  const [one, other] = [
    copying('c', 'plate-of-a', 'plate-of-b', either),
    copying('d', 'plate-of-a', 'plate-of-c', either),
  ];
  expect(said(one, other)).toEqual([]);
  expect(said(one)).toEqual(['copying: plate-a reverse of plate-b by copying-c']);
  expect(said({ id: 'alternatives-of-x', kind: 'Alternatives', open: true }, one)).toEqual([]);
});

describe('each rule', () => {
  test('stands once in the table, with what it says', () => {
    expect(handednessRules.map(({ id }) => id)).toEqual([
      'copying',
      'printing',
      'casting',
      'state',
      'detail',
      'comparison',
      'identity',
    ]);
    expect(handednessRules.filter(({ says }) => !says.endsWith('.'))).toEqual([]);
  });
});

test('D6: ware printed from a cast of a surface after a sheet from that surface is in reverse of the sheet', () => {
  const rows = [
    printedFrom('sheet', 'plate-of-sheet', 'matrix-of-x'),
    casting('c', 'matrix-of-cast', 'matrix-of-x'),
    printedFrom('ware', 'motif-of-ware', 'matrix-of-cast', { manner: 'TRANSFER' }),
  ];
  const { handedness, links } = relateHandedness(handednessLinksOf(apart(rows))).between(
    'plate-of-sheet',
    'motif-of-ware',
  );
  expect([handedness, links.flatMap(({ by }) => by)]).toEqual([
    'REVERSED',
    ['printedfrom-of-sheet', 'casting-of-c', 'printedfrom-of-ware'],
  ]);
});
