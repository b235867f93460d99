import { describe, expect, it } from 'vitest';
import { titlesOf } from '../../../src/intake/marcxml/titles.ts';
import { view } from './marc-notation.ts';

const titles = (...lines: readonly string[]) => titlesOf(view(...lines), ['zh']);

describe('titles', () => {
  it('lose the mark that leads over to the statement of responsibility', () => {
    expect(titles('245 10$aArithmetic /$cCarl Sandburg ; illustrated by Ted Rand.')).toEqual({
      title: 'Arithmetic',
      responsibility: 'Carl Sandburg ; illustrated by Ted Rand.',
      number: undefined,
      labels: undefined,
      work: 'Arithmetic',
    });
  });

  it('keep the marks within, and their full stop', () => {
    expect(titles('245 10$aDélices royales :$bou, Le jeu des échecs.')?.title).toBe(
      'Délices royales : ou, Le jeu des échecs.',
    );
  });

  // MARC 21 leader/18 `c`: ISBD punctuation omitted
  it('get the marks of ISBD where the record leaves them out', () => {
    expect(titles('Leader 00000cam a2200000 c 4500', '245 10$aFaust$bein Fragment$n2$pNacht$cvon Goethe')?.title).toBe(
      'Faust : ein Fragment. 2, Nacht',
    );
  });

  it('of parts give the number of the part', () => {
    expect(titles('245 00$aAnnals.$nPart 2,$pThe plates /')).toMatchObject({
      title: 'Annals. Part 2, The plates',
      number: 'Part 2',
    });
  });

  it('leave out what names the medium', () => {
    expect(titles('245 04$aThe Texas ranger$h[sound recording] /$cSung by Beale D. Taylor.')?.title).toBe(
      'The Texas ranger',
    );
  });

  // British Library sample records (CC0): the title of an edition that was catalogued before stands in brackets.
  it.each([
    ['[The Siamese Twins; a drama.]', 'The Siamese Twins; a drama.'],
    ['[Sacred Allegories. [With a memoir of the author.]]', 'Sacred Allegories. [With a memoir of the author.]'],
    [
      '[From Savagery to Civilization.] The Canadian North-West.',
      '[From Savagery to Civilization.] The Canadian North-West.',
    ],
    ['A letter [signed: A.]', 'A letter [signed: A.]'],
  ])('name the work without supplied brackets: "%s"', (title, work) => {
    expect(titles(`245 10$a${title}`)).toMatchObject({ title, work });
  });

  it('name the work by the uniform title, unless that is a collective one', () => {
    expect(titles('240 10$aLe Roi des Montagnes.', '245 14$aThe King of the Mountains')?.work).toBe(
      'Le Roi des Montagnes',
    );
    expect(titles('240 10$aLetters', '245 10$aLetters of Abelard')?.work).toBe('Letters of Abelard');
    expect(titles('240 10$aAppendix. II. Miscellaneous', '245 10$aOn Italy')?.work).toBe('On Italy');
  });

  // $6 as in https://www.loc.gov/marc/bibliographic/bd880.html
  it('have their variants and the other script as labels', () => {
    expect(
      titles(
        '245 10$6880-02$aHung Jen-kan /$cShen Wei-pin chu.',
        '246 14$aA cover title',
        '880 10$6245-02/Hani$a洪仁玕 /$c沈渭滨著.',
      )?.labels,
    ).toEqual([{ text: 'Hung Jen-kan' }, { text: 'A cover title' }, { text: '洪仁玕', language: 'zh-Hani' }]);
  });

  it('are wanting where field 245 is', () => {
    expect(titles('246 10$aA variant')).toBeUndefined();
    expect(titles('245 10$cNobody')).toBeUndefined();
  });
});
