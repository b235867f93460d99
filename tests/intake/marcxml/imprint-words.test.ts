import { describe, expect, it } from 'vitest';
import { imprintParts } from '../../../src/intake/marcxml/imprint-words.ts';

const read = (words: string): string[] => imprintParts(words).map(({ role, name }) => `${role} ${name ?? '(nobody)'}`);

describe('words of an imprint', () => {
  // Forms found in field 260 $b of the British Library's sample records (CC0), and their like in other languages.
  it.each([
    ['Rivingtons,', ['PUBLISHER Rivingtons']],
    ['Harper & Bros.,', ['PUBLISHER Harper & Bros.']],
    ['Longman, Hurst, Rees, Orme, and Browne,', ['PUBLISHER Longman, Hurst, Rees, Orme, and Browne']],
    ['Longman & Co., etc.', ['PUBLISHER Longman & Co.']],
    ['W. Strange ; J. Duncombe', ['PUBLISHER W. Strange', 'PUBLISHER J. Duncombe']],
    ['Society for Promoting Christian Knowledge,', ['PUBLISHER Society for Promoting Christian Knowledge']],
    ['Strand Printing and Publishing Co.,', ['PUBLISHER Strand Printing and Publishing Co.']],
    ['printed for Thomas Boys,', ['PUBLISHER Thomas Boys']],
    ['Printed for X, sold by Y', ['PUBLISHER X', 'BOOKSELLER Y']],
    ['Printed by A for B', ['PRINTER A', 'PUBLISHER B']],
    ['Printed for the Author; sold by J. Johnston,', ['PUBLISHER (nobody)', 'BOOKSELLER J. Johnston']],
    ['printed for the Society by D. C. Chalmers & Co.,', ['PUBLISHER (nobody)', 'PRINTER D. C. Chalmers & Co.']],
    ['For the Author by Thornton & Collie,', ['PUBLISHER (nobody)', 'PRINTER Thornton & Collie']],
    ['Printed by C. Whittingham ;', ['PRINTER C. Whittingham']],
    ['sold by Thomas Tegg; R. Jennings ;', ['BOOKSELLER Thomas Tegg', 'BOOKSELLER R. Jennings']],
    [
      'printed by W. Thorne, and published by J. Callow; J. Hunter; and J. Ridgway,',
      ['PRINTER W. Thorne', 'PUBLISHER J. Callow', 'PUBLISHER J. Hunter', 'PUBLISHER J. Ridgway'],
    ],
    [
      'Printed and sold by J. Evans & Son; sold also by F. Collins; J. Nisbet,',
      ['PRINTER J. Evans & Son', 'BOOKSELLER J. Evans & Son', 'BOOKSELLER F. Collins', 'BOOKSELLER J. Nisbet'],
    ],
    [
      'printed by R. Watts, Broxbourn, Herts and sold by Longman, Hurst, Rees, and Orme,',
      ['PRINTER R. Watts, Broxbourn, Herts', 'BOOKSELLER Longman, Hurst, Rees, and Orme'],
    ],
    ['sold by T. Boys ... and by all the booksellers at Thetford', ['BOOKSELLER T. Boys']],
    ['Printed at the Secundra Orphan Press,', ['PRINTER Secundra Orphan Press']],
    ['Jarrold & Sons, printers,', ['PRINTER Jarrold & Sons']],
    ["De l'imprimerie de Didot", ['PRINTER imprimerie de Didot']],
    ['Imprimerie de C. O. Beauchemin & Valois,', ['PRINTER Imprimerie de C. O. Beauchemin & Valois']],
    ['chez la veuve Duchesne', ['PUBLISHER la veuve Duchesne']],
    ['en la imprenta de D. Manuel Muñoz Alvarez,', ['PRINTER imprenta de D. Manuel Muñoz Alvarez']],
    ['gedruckt bei J. G. Cotta', ['PRINTER J. G. Cotta']],
    ['Druck und Verlag von F. Vieweg', ['PRINTER F. Vieweg', 'PUBLISHER F. Vieweg']],
    ['in Commission bei T. O. Weigel', ['DISTRIBUTOR T. O. Weigel']],
    ['apud Johannem Blaeu', ['PUBLISHER Johannem Blaeu']],
    ['typis Societatis', ['PRINTER Societatis']],
  ])('"%s"', (words, expected) => {
    expect(read(words)).toEqual(expected);
  });

  it.each([
    ['The Author,'],
    ['Privately printed,'],
    ['[Printed for private circulation only,'],
    ['For the Booksellers,'],
    ['Published for the Proprietor,'],
    ['[publisher not identified],'],
    ['[s.n.],'],
    [''],
  ])('that name nobody give a part without a name: "%s"', words => {
    expect(read(words)).toEqual(['PUBLISHER (nobody)']);
  });

  it('are taken as a whole where they are too long to be names', () => {
    expect(imprintParts(`${'printed by '.repeat(500)}X`)).toHaveLength(1);
  });
});
