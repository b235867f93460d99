import { describe, expect, test } from 'vitest';
import { readImprintPlaces } from '../../../src/domain/conventions/imprint-place-text.ts';
import { processorTime } from '../../support/processor-time.ts';

const read = (text: string) =>
  readImprintPlaces(text).map(place =>
    [
      place.name,
      place.country,
      place.supplied && 'supplied',
      place.uncertain && 'uncertain',
      place.role,
      !place.known && 'not known',
    ]
      .filter(Boolean)
      .join(' | '),
  );

describe('places in the words of an imprint', () => {
  test.each([
    ['London :', ['London']],
    ['[London?,', ['London | supplied | uncertain']],
    ['[Aberdeen],', ['Aberdeen | supplied']],
    ['Amst[erdam,', ['Amsterdam']],
    ['Cambridge [Mass.] :', ['Cambridge | mau']],
    ['Albany [N.Y.]', ['Albany | nyu']],
    ['Salem, Mass.,', ['Salem | mau']],
    ['Holt, Norfolk', ['Holt | enk']],
    ['Kingston, Jamaica :', ['Kingston | jm']],
    ['Smallville, Kans. :', ['Smallville | ksu | not known']],
    ['Frankfurt a. M.,', ['Frankfurt a. M.']],
    ['London, etc. :', ['London']],
    ['Italia,', ['Italia | it']],
    ['Lipsiae [i.e. Halle]', ['Halle | supplied']],
  ])('%s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test.each([
    ['Oxford & London :', ['Oxford', 'London']],
    ['Stuttgart u. Tübingen', ['Stuttgart', 'Tübingen']],
    ['London, New York', ['London', 'New York']],
    ['Boston, Mass.; New York, N.Y.', ['Boston | mau', 'New York | nyu']],
    ['Paris, Berlin [printed],', ['Paris', 'Berlin | printer']],
    ['London; Nuremberg printed :', ['London', 'Nuremberg | printer']],
    ['London; Cambridge, Mass., printed', ['London', 'Cambridge | mau | printer']],
    ['London; [Boston printed]', ['London', 'Boston | supplied | printer']],
    ['London; manufactured in Germany :', ['London', 'Germany | gw | manufacturer']],
    ['Leipzig, Wien, Teschen; Wien [printed]', ['Leipzig', 'Wien', 'Teschen', 'Wien | printer']],
  ])('several: %s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test.each([
    '[S.l.]',
    '[s.l. :',
    'S. l.',
    '[place of publication not identified]',
    'o. O.',
    '[n.p.]',
    '[c. 1800.]',
    '1845,',
    '',
    ' : ',
  ])('%j names no place', text => {
    expect(read(text)).toEqual([]);
  });

  test.each([
    ['Marcus Ward & Co. :', ['Marcus Ward & Co. | not known']],
    ['Montpeyroux, Montpellier', ['Montpeyroux, Montpellier | not known']],
    ['Stow-on-the-Wold and Nether Wallop', ['Stow-on-the-Wold and Nether Wallop | not known']],
  ])('what is not known to be places stays whole: %s', (text, expected) => {
    expect(read(text)).toEqual(expected);
  });

  test('hostile texts are left as they are in little time', () => {
    const texts = ['['.repeat(490), ', '.repeat(240), 'a '.repeat(50_000), `${'London, '.repeat(60)}x`];
    const start = processorTime();
    expect(texts.map(text => readImprintPlaces(text).length)).toEqual([0, 0, 1, 1]);
    expect(processorTime() - start).toBeLessThan(500);
  });
});
