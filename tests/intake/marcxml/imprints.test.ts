import { describe, expect, it } from 'vitest';
import { bundleOf, datingsOf, imprintsOf, rowsOf } from './bundles.ts';

const imprints = (...lines: readonly string[]): string[] => imprintsOf(bundleOf(...lines));

describe('imprints', () => {
  // The Library of Congress' own examples of field 264, as reproduced by the Helsinki University Library's MARC pages
  it('of publication and manufacture are told apart by the second indicator of 264', () => {
    expect(
      imprints('264 #1$aBoston :$b[publisher not identified],$c2010.', '264 #3$aCambridge :$bKinsey Printing Company'),
    ).toEqual(['Boston / - / PUBLISHER', 'Cambridge / Kinsey Printing Company / PRINTER']);
  });

  it('pair several places with the one publisher that follows', () => {
    expect(imprints('264 #1$aHeidelberg ;$aNew York ;$aDordrecht ;$aLondon :$bSpringer,$c[2014]')).toEqual([
      'Heidelberg / Springer / PUBLISHER',
      'New York / Springer / PUBLISHER',
      'Dordrecht / Springer / PUBLISHER',
      'London / Springer / PUBLISHER',
    ]);
  });

  it('pair each place with the publishers up to the next place', () => {
    expect(imprints('260 ##$aLondon :$bA. Bell ;$bC. Dilly ;$aEdinburgh :$bW. Creech,$c1764.')).toEqual([
      'London / A. Bell / PUBLISHER',
      'London / C. Dilly / PUBLISHER',
      'Edinburgh / W. Creech / PUBLISHER',
    ]);
  });

  it('take the roles from the words', () => {
    expect(imprints('260 ##$aLondon :$bPrinted by J. Turner ;$bsold by R. S. Kirby: ,$c1805.')).toEqual([
      'London / J. Turner / PRINTER',
      'London / R. S. Kirby / BOOKSELLER',
    ]);
  });

  it('have the manufacturer of 260 $e and $f as printer', () => {
    expect(imprints('260 ##$aParis :$bDidot,$c1801$e(London :$fTwyn,$g1802)')).toEqual([
      'Paris / Didot / PUBLISHER',
      'London / Twyn / PRINTER',
    ]);
  });

  it('name distributors by 264, second indicator 2, and take none from production and copyright notices', () => {
    expect(imprints('264 #0$aYork :$bJ. Smith', '264 #2$aLondon :$bTegg', '264 #4$c©2002')).toEqual([
      'London / Tegg / DISTRIBUTOR',
    ]);
  });

  it('keep their words, order, rule and place in the record', () => {
    const [first] = rowsOf(bundleOf('260 ##$aLondon :$bJ. Murray,$c1834.'), 'Imprint');
    expect(first).toEqual({
      kind: 'Imprint',
      id: '@imprint-1',
      edition: '@edition',
      place: '@place-1',
      agent: '@agent-1',
      role: 'PUBLISHER',
      order: 1,
      asWritten: 'London : J. Murray',
      rule: 'imprint town',
      evidence: [{ reference: '@catalogue', locator: '17 260$a$b' }],
    });
  });

  it('without a name or without a place are claims all the same', () => {
    expect(imprints('260 ##$aParis,$c1887.')).toEqual(['Paris / - / PUBLISHER']);
    expect(imprints('260 ##$bDidot,$c1887.')).toEqual(['- / Didot / PUBLISHER']);
    expect(imprints('260 ##$c1887.')).toEqual([]);
    expect(imprints('260 ##$a[S.l. :$bs.n.],$c1887.')).toEqual(['- / - / PUBLISHER']);
  });

  it('in doubt are probable', () => {
    const [first] = rowsOf(bundleOf('260 ##$a[Edinburgh?],$c1834.'), 'Imprint');
    expect(first?.certainty).toBe('PROBABLE');
  });

  it('have locators that tell them apart', () => {
    const bundle = bundleOf('260 ##$aLondon ;$aParis :$bX,$c1834.', '260 3#$aLondon :$bY,$c1835.');
    expect(rowsOf(bundle, 'Imprint').map(claim => claim.evidence?.[0]?.locator)).toEqual([
      '17 260$a$b',
      '17 260$a$b #2',
      '17 260$a$b #3',
    ]);
  });
});

// Fields 260 of the British Library's sample records (CC0), converted from a printed catalogue
describe('an imprint in one string', () => {
  it('gives names with their places, date and extent', () => {
    const bundle = bundleOf('260 ##$app. vi. 225. Whittaker & Co.; Ward & Lock: London, [1863.]');
    expect(imprintsOf(bundle)).toEqual(['London / Whittaker & Co. / PUBLISHER', 'London / Ward & Lock / PUBLISHER']);
    expect(datingsOf(bundle)).toEqual(['1863 IMPRINT HELD']);
    expect(rowsOf(bundle, 'Edition')[0]).toMatchObject({
      extent: 'pp. vi. 225',
      imprint: 'pp. vi. 225. Whittaker & Co.; Ward & Lock: London, [1863.]',
    });
    expect(rowsOf(bundle, 'Dating')[0]?.evidence).toEqual([{ reference: '@catalogue', locator: '17 260$a' }]);
  });

  it('may name only a place and a date', () => {
    const bundle = bundleOf('260 ##$a[Lisbon, 1808].');
    expect(imprintsOf(bundle)).toEqual(['Lisbon / - / PUBLISHER']);
    expect(datingsOf(bundle)).toEqual(['1808 IMPRINT HELD']);
  });

  it('that cannot be taken apart is kept whole and reported', () => {
    const bundle = bundleOf('260 ##$aJudaeo-Span. [Smyrna, 1878.]');
    expect(imprintsOf(bundle)).toEqual([]);
    expect(rowsOf(bundle, 'Edition')[0]?.imprint).toBe('Judaeo-Span. [Smyrna, 1878.]');
    expect(bundle.remarks.map(remark => remark.message)).toEqual([
      'expected a place, or an imprint that can be taken apart, came "Judaeo-Span. [Smyrna, 1878.]"',
    ]);
  });
});

describe('places of an imprint', () => {
  it('carry coordinates, country and a key of their own where they are known', () => {
    const bundle = bundleOf('260 ##$a[Londini,$c1764]');
    expect(bundle.rows.find(({ row }) => row.kind === 'Place')).toMatchObject({
      row: { kind: 'Place', labels: [{ text: 'London' }], country: 'enk' },
      origin: { source: 'XX', key: 'place:enk-london' },
    });
    expect(bundle.remarks).toEqual([]);
  });

  it('are chosen by the country code of the record', () => {
    const inKent = bundleOf('008 850101s1834    enk           000 1 eng d', '260 ##$aRochester :$bX,$c1834.');
    const inNewYork = bundleOf('008 850101s1834    nyu           000 1 eng d', '260 ##$aRochester :$bX,$c1834.');
    expect(rowsOf(inKent, 'Place')[0]?.country).toBe('enk');
    expect(rowsOf(inNewYork, 'Place')[0]?.country).toBe('nyu');
    expect(rowsOf(inNewYork, 'Imprint')[0]?.rule).toBe('country code');
  });

  it('where only printing was done do not go with the publisher', () => {
    expect(imprints('260 ##$aLondon; Nuremberg printed :$bE. Nister,$c1890.')).toEqual([
      'London / E. Nister / PUBLISHER',
      'Nürnberg / - / PRINTER',
    ]);
    expect(imprints('260 ##$aParis, Berlin [printed],$c1890.')).toEqual([
      'Paris / - / PUBLISHER',
      'Berlin / - / PRINTER',
    ]);
  });

  it('may name their country themselves', () => {
    const bundle = bundleOf('008 850101s1834    enk           000 1 eng d', '260 ##$aCambridge, Mass. :$bX,$c1834.');
    expect(rowsOf(bundle, 'Place').map(({ labels, country }) => `${labels?.[0]?.text} ${country}`)).toEqual([
      expect.stringMatching(/^Cambridge.* mau$/),
    ]);
  });

  it('that are countries have their code, but no coordinates', () => {
    const bundle = bundleOf('260 ##$aGermany,$c1834.');
    expect(rowsOf(bundle, 'Place')).toEqual([
      { kind: 'Place', id: '@place-1', labels: [{ text: 'Germany' }], country: 'gw' },
    ]);
    expect(bundle.remarks.map(remark => remark.message)).toEqual([
      'expected a town that is known, came "Germany": it names a country',
    ]);
  });

  it('that may be several towns have no coordinates, and the record says why', () => {
    const bundle = bundleOf('260 ##$aRochester :$bX,$c1834.');
    expect(rowsOf(bundle, 'Place')).toEqual([{ kind: 'Place', id: '@place-1', labels: [{ text: 'Rochester' }] }]);
    expect(bundle.remarks.map(({ code, place }) => `${code} ${place.field}`)).toEqual(['INPUT_INVALID 260$a']);
    expect(bundle.remarks[0]?.message).toContain('it may be Rochester');
  });

  it('beyond the first are not bound to the country of the record', () => {
    const bundle = bundleOf('008 850101s1834    gw            000 1 ger d', '260 ##$aLeipzig ;$aLondon :$bX,$c1834.');
    expect(rowsOf(bundle, 'Place').map(place => place.country)).toEqual(['gw', 'enk']);
  });
});
