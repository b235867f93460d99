import { expect, test } from 'vitest';
import { certainty, matrixKind } from '../../../src/domain/model/vocabularies.ts';
import { type ScalarField, scalarOf } from '../../../src/intake/table/scalar.ts';

const order: ScalarField = { type: 'integer', least: 1, doc: '' };
const latitude: ScalarField = { type: 'number', unit: 'degrees', least: -90, most: 90, doc: '' };
const of = (type: 'text' | 'uri' | 'language' | 'edtf' | 'flag'): ScalarField => ({ type, doc: '' });

test.each<[string, ScalarField, string, unknown]>([
  ['text', of('text'), ' a ', ' a '],
  ['an address', of('uri'), 'ark:/81055/vdc_1', 'ark:/81055/vdc_1'],
  ['a code of MARC', of('language'), 'ger', 'de'],
  ['a tag', of('language'), 'zh-Hant', 'zh-Hant'],
  ['a date', of('edtf'), '1793-05~', '1793-05~'],
  ['a whole number', order, '12', 12],
  ['a number', latitude, '-52.5', -52.5],
  ['yes', of('flag'), 'Yes', true],
  ['0', of('flag'), '0', false],
  ['a word by name', { type: 'word', of: matrixKind, doc: '' }, 'STEEL_PLATE', 'STEEL_PLATE'],
  ['a word as people read it', { type: 'word', of: matrixKind, doc: '' }, 'Steel plate', 'STEEL_PLATE'],
])('%s', (_what, field, text, value) => {
  expect(scalarOf(field, text)).toEqual({ value });
});

test.each<[ScalarField, string, string]>([
  [of('uri'), 'www.example.org', 'an absolute address'],
  [of('language'), 'und', 'a language code of MARC or a tag of BCP 47'],
  [of('edtf'), '1 May 1793', 'a date as EDTF writes it'],
  [order, '12a', 'a whole number'],
  [order, '1.5', 'a whole number'],
  [order, '0', 'at least 1'],
  [latitude, '52,5', 'a number'],
  [latitude, '91', 'at most 90'],
  [of('flag'), 'perhaps', 'yes or no'],
  [
    { type: 'word', of: certainty, doc: '' },
    'probabel',
    'one of CERTAIN, PROBABLE, POSSIBLE, DOUBTFUL (is it "PROBABLE"?)',
  ],
])('%j is not %s', (field, text, expected) => {
  expect(scalarOf(field, text)).toEqual({ expected });
});
