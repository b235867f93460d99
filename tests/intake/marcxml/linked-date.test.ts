import { describe, expect, it } from 'vitest';
import { dateOfLinked } from '../../../src/intake/marcxml/linked-date.ts';

describe('the date of a linked edition', () => {
  // Subfields 775 and 787 $d of the British Library's sample records (CC0)
  it.each([
    ['pp. 720. W. Tegg & Co.: London, 1857. 12º.', '1857'],
    ['pp. 36. P. D. Hardy & Sons: Dublin, [1850 ?] 12º.', '1850?'],
    ['pp. 73. The Author: London, 1882 [1881]. 8º.', '1881'],
    ['pp. 4. pl. x. Paris, 1836. obl. fol.', '1836'],
    ['2 tom. Berolini, 1864, 66. 8º.', '1864/1866'],
    ['London: John Murray, 1841. pp. xv, 473. 8º.', '1841'],
    ['Charles C. Little & James Brown: Boston, 1850. pp. lxii. 1008. 8º.', '1850'],
    ['London: Bradbury, Agnew & Co., [ca. 1880]. pp. xviii, 304. 22 cm.', '1880~'],
    ['London: Ward, Lock & Tyler, [not before 1865, not after 1873]. pp. 312: plate. 19 cm.', '[1865..1873]'],
  ])('"%s" is %s', (words, date) => {
    expect(dateOfLinked(words)).toBe(date);
  });

  it.each([['pp. 300. London. 8º.'], [''], ['x'.repeat(100_000)]])('may be wanting', words => {
    expect(dateOfLinked(words)).toBeUndefined();
  });
});
