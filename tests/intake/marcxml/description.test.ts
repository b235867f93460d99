import { describe, expect, it } from 'vitest';
import { describe as describeEdition } from '../../../src/intake/marcxml/description.ts';
import { view } from './marc-notation.ts';

const described = (...lines: readonly string[]) => describeEdition(view(...lines));

describe('the description of an edition', () => {
  it('has extent, illustrations and format of field 300', () => {
    expect(described('300 ##$a1 v. (unpaged) :$bill. (some col.) ;$c26 cm.')).toEqual({
      extent: '1 v. (unpaged)',
      illustration: 'ill. (some col.)',
      format: '26 cm.',
      illustrated: true,
    });
  });

  it.each([['8º.'], ['obl. fol.'], ['24 cm.']])('has a size that stands for the extent as format: "%s"', size => {
    expect(described(`300 ##$a${size}`)).toEqual({ format: size });
  });

  it('has edition statement and series as transcribed', () => {
    expect(
      described('250 ##$a2nd ed. /$brevised.', '490 1#$aGolden rules series ;$vno. 2', '830 #0$aGolden rules ;$v2.'),
    ).toEqual({ statement: '2nd ed. / revised.', series: ['Golden rules series ; no. 2'] });
    expect(described('830 #0$aGolden rules ;$v2.')).toEqual({ series: ['Golden rules ; 2.'] });
  });

  it('has the numbers it is known by', () => {
    expect(
      described(
        '010 ##$a   92005291 ',
        '020 ##$a0152038655 :',
        '022 0#$a0081-0819',
        '024 7#$a10.1000/1$2doi',
        '035 ##$a(OCoLC)25094712',
      ),
    ).toEqual({
      identifiers: [
        { scheme: 'LCCN', value: '92005291' },
        { scheme: 'ISBN', value: '0152038655' },
        { scheme: 'ISSN', value: '0081-0819' },
        { scheme: 'doi', value: '10.1000/1' },
        { scheme: 'OCoLC', value: '25094712' },
      ],
    });
  });

  it('has the addresses of digital copies, not of related things', () => {
    expect(
      described('856 41$uhttps://example.org/scan', '856 42$uhttps://example.org/review', '856 40$unot an address'),
    ).toEqual({ digitalCopies: ['https://example.org/scan'] });
  });
});

describe('illustrations', () => {
  const illustrated = (...lines: readonly string[]) => described(...lines).illustrated;

  it.each([
    ['300 ##$a20 p. :$bport.'],
    ['300 ##$a20 S. :$bmit 12 Kupfern'],
    ['300 ##$a20 p. :$bpl. col.'],
    ['300 ##$a20 S. :$bAbb.'],
    ['300 ##$a20 с. :$bс рис.'],
    ['300 ##$axii, 20 p., [12] leaves of plates'],
    ['008 850101r17661764pauaf         000 1 eng d'],
    ['008 850101m17661767enkf          000 1 eng d'],
    ['245 10$aTravels. [With plates and a map.]'],
    ['245 10$aThe Railways of England ... With 56 illustrations.'],
    ['245 10$aTales. Illustrated with 288 engravings.'],
  ])('are there where the record says so: %s', line => {
    expect(illustrated(line)).toBe(true);
  });

  it.each([
    ['300 ##$a20 p. ;$c8º.'],
    ['300 ##$a1 score :$bmusic'],
    ['008 850101s1834    enkg          000 1 eng d'],
    ['245 10$aA history of syntax illustrated'],
    ['245 10$aHarmony. [With musical illustrations.]'],
  ])('are not denied where it does not: %s', line => {
    expect(illustrated(line)).toBeUndefined();
  });

  // 008/18-21 of a serial are frequency, regularity and type: https://www.loc.gov/marc/bibliographic/bd008s.html
  it('are not read from the codes of a serial', () => {
    expect(
      illustrated('Leader 00000cas a2200000 a 4500', '008 850101d18321845enkwr p       0   a0eng d'),
    ).toBeUndefined();
  });
});
