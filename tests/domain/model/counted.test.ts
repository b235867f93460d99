import { describe, expect, test } from 'vitest';
import {
  type Basis,
  basisWords,
  certaintiesOf,
  counts,
  defaultBasis,
  isSameBasis,
} from '../../../src/domain/model/counted.ts';
import { copying } from '../../support/store-rows.ts';

const claim = (more: object = {}) => copying('a', 'plate-of-a', 'plate-of-b', more);
const all: Basis = { stances: ['HELD', 'WEIGHED', 'REJECTED'], certaintyAtLeast: 'DOUBTFUL' };

describe('a claim counts', () => {
  test.each<readonly [object, Basis, boolean]>([
    [{}, defaultBasis, true],
    [{ certainty: 'POSSIBLE' }, defaultBasis, true],
    [{ certainty: 'DOUBTFUL' }, defaultBasis, false],
    [{ stance: 'WEIGHED' }, defaultBasis, false],
    [{ stance: 'WEIGHED', certainty: 'DOUBTFUL' }, all, true],
    [{ standing: 'WITHDRAWN' }, all, false],
    [{ certainty: 'PROBABLE' }, { ...all, exceptCertainties: ['PROBABLE'] }, false],
    [{ certainty: 'DOUBTFUL' }, { ...all, exceptCertainties: ['PROBABLE'] }, true],
    [{}, { ...defaultBasis, exceptCertainties: ['CERTAIN'] }, false],
  ])('%j under %j: %s', (more, basis, expected) => {
    expect(counts(claim(more), basis)).toBe(expected);
  });

  test('by certainties from surest to least sure', () => {
    expect(certaintiesOf(defaultBasis)).toEqual(['CERTAIN', 'PROBABLE', 'POSSIBLE']);
    expect(certaintiesOf({ ...defaultBasis, exceptCertainties: ['PROBABLE'] })).toEqual(['CERTAIN', 'POSSIBLE']);
  });
});

test('a basis in words', () => {
  expect(basisWords(defaultBasis)).toBe('claims still said, held, and at least possible');
  expect(basisWords({ stances: ['WEIGHED', 'HELD'], certaintyAtLeast: 'CERTAIN' })).toBe(
    'claims still said, held or weighed, and certain',
  );
  expect(basisWords({ ...all, exceptCertainties: ['PROBABLE'] })).toBe(
    'claims still said, held, weighed or rejected, and at least doubtful, but none that are probable',
  );
});

test('two bases are the same if the same claims count', () => {
  expect(isSameBasis(defaultBasis, { stances: ['HELD', 'HELD'], certaintyAtLeast: 'POSSIBLE' })).toBe(true);
  expect(isSameBasis(defaultBasis, { ...defaultBasis, certaintyAtLeast: 'DOUBTFUL' })).toBe(false);
  expect(
    isSameBasis(defaultBasis, { ...defaultBasis, certaintyAtLeast: 'DOUBTFUL', exceptCertainties: ['DOUBTFUL'] }),
  ).toBe(true);
  expect(isSameBasis(defaultBasis, { ...defaultBasis, exceptCertainties: ['POSSIBLE'] })).toBe(false);
});
