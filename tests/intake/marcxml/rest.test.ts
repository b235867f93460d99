import { describe, expect, it } from 'vitest';
import { restOf } from '../../../src/intake/marcxml/rest.ts';
import { view } from './marc-notation.ts';

const rest = (...lines: readonly string[]) => restOf(view(...lines));

describe('what no other part takes', () => {
  it('is kept by tag, subdivisions of subjects apart', () => {
    expect(
      rest(
        '650 #0$aBridges$zIndia$vPictorial works.',
        '650 #0$aRivers.',
        '655 #7$aViews.$2gmgpc',
        '852 41$aBritish Library$bHMNTS$j4705.c.24.',
      ),
    ).toEqual({
      columns: {
        'MARC 650': 'Bridges -- India -- Pictorial works. | Rivers.',
        'MARC 655': 'Views.',
        'MARC 852': 'British Library HMNTS 4705.c.24.',
      },
    });
  });

  it('is a note where it is one', () => {
    expect(rest('500 ##$aNo more published.', '505 0#$aPlate 1 -- Plate 2', '590 ##$aLocal use.')).toEqual({
      notes: ['No more published.', 'Plate 1 -- Plate 2'],
      columns: { 'MARC 590': 'Local use.' },
    });
  });

  // Examples of https://www.loc.gov/marc/bibliographic/bd534.html
  it('is both for what it says of an original or a reproduction', () => {
    const text = 'Original version: Morrisville, Pa.? : T.M. Fowler, 1886 (s.l. : A.E. Downs, lith.).';
    expect(
      rest('534 ##$pOriginal version:$cMorrisville, Pa.? : T.M. Fowler, 1886 (s.l. : A.E. Downs, lith.).'),
    ).toEqual({
      notes: [text],
      columns: { 'MARC 534': text },
    });
  });

  it('leaves out private notes and nonpublic subfields', () => {
    expect(rest('561 0#$aBought from a living person.', '541 0#$aPrice.', '583 0#$aTo be sold.')).toEqual({});
    expect(rest('561 1#$aFormerly owned by Ann Marlow.')).toEqual({ notes: ['Formerly owned by Ann Marlow.'] });
    expect(rest('852 ##$aLibrary$xshelved wrongly$zpublic')).toEqual({ columns: { 'MARC 852': 'Library public' } });
  });

  it('keeps other scripts that are no title or name', () => {
    expect(rest('260 ##$6880-03$aṾarsha', '880 ##$6260-03/(2/r$aווארשא')).toEqual({
      columns: { 'MARC 880': 'ווארשא' },
    });
    expect(rest('245 10$6880-01$aDer ḳliger', '880 10$6245-01/(2/r$aדער קליגער')).toEqual({});
    expect(rest('880 ##$6530-00/(2/r$aדער')).toEqual({ columns: { 'MARC 880': 'דער' } });
  });

  it('remembers the date of the original of a reissue', () => {
    expect(rest('008 850101r17661764pauaf         000 1 eng d')).toEqual({
      columns: { 'MARC 008': 'reissue or reproduction of 1764' },
    });
  });
});
