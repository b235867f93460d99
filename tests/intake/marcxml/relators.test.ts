import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { relatorCode } from '../../../src/intake/marcxml/relators.ts';
import { describeWithData } from '../../support/outside-data.ts';

describe('a relator', () => {
  // https://www.loc.gov/marc/relators/relaterm.html
  it.each([
    ['ill.', 'ill'],
    ['ill', 'ill'],
    ['illustrator', 'ill'],
    ['Illustrator,', 'ill'],
    ['http://id.loc.gov/vocabulary/relators/ill', 'ill'],
    ['engraver.', 'egr'],
    ['wood-engraver', 'wde'],
    ['wood engraver', 'wde'],
    ['sculp.', 'egr'],
    ['del.', 'dln'],
    ['lith.', 'ltg'],
    ['dedicatee.', 'dte'],
    ['Former owner', 'fmo'],
    ['publisher.', 'pbl'],
    ['author of introduction, etc.', 'aui'],
    ['joint author', 'aut'],
    ['Hrsg.', 'edt'],
    ['Übers.', 'trl'],
    ['Kupferstecher', 'egr'],
    ['traducteur', 'trl'],
    ['graveur', 'egr'],
    ['(ed.)', 'edt'],
  ])('"%s" has the code %s', (words, code) => {
    expect(relatorCode(words)).toBe(code);
  });

  it('for authors quoted is not one for aquatint, and unknown words have none', () => {
    expect(relatorCode('aqt')).toBe('aqt');
    expect(relatorCode('aquatinter')).toBeUndefined();
    expect(relatorCode('arist.')).toBeUndefined();
    expect(relatorCode('main entry')).toBeUndefined();
    expect(relatorCode('x'.repeat(10_000))).toBeUndefined();
  });
});

describeWithData('relators of the Library of Congress', 'marc-codes/relatorcodes.tsv', path => {
  const rows = readFileSync(path, 'utf8').trim().split('\n').slice(1);

  it('have the code of the list, by code and by term', () => {
    const entries = rows.map(row => row.split('\t') as [string, string]);
    expect(entries.length).toBe(268);
    expect(entries.map(([code]) => relatorCode(code))).toEqual(entries.map(([code]) => code));
    expect(entries.map(([, term]) => relatorCode(term))).toEqual(entries.map(([code]) => code));
  });
});
