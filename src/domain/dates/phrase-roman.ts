/**
 * The year of a Roman numeral as printers set it: dots, commas and spaces between the letters, J for I and U for V,
 * additive forms (LXXXX, MCCCCC), and the apostrophus (CIↃ for M, IↃ for D) with a turned C or a bracket. Undefined
 * for anything else, for a single letter, and for years outside 1000 to 2100, which no imprint bears.
 */
export function romanYear(text: string): number | undefined {
  const letters = text
    .replace(/[ↄɔƆↃ)]/gu, 'Ↄ')
    .replace(/[Cc(][IiJj|]Ↄ/gu, 'M')
    .replace(/[IiJj|]Ↄ/gu, 'D')
    .replace(/[., ]/g, '')
    .replaceAll('J', 'I')
    .replaceAll('U', 'V');
  const match = letters.length < 2 || letters.length > 24 ? null : numeral.exec(letters);
  if (match === null) return undefined;
  const year = match.slice(1).reduce((sum, part) => sum + worth(part), 0);
  return year >= 1000 && year <= 2100 ? year : undefined;
}

const numeral = /^(M{1,2})(CM|CD|DC{0,5}|C{0,5})(XC|XL|LX{0,5}|X{0,5})(IX|IV|IIX|VI{0,5}|I{0,5})$/;
const worths: Readonly<Record<string, number>> = { M: 1000, D: 500, C: 100, L: 50, X: 10, V: 5, I: 1 };

/** Letters before a greater one are taken away, all others added. */
function worth(part: string): number {
  const values = [...part].map(letter => worths[letter] ?? 0);
  const greatest = Math.max(0, ...values);
  const at = values.indexOf(greatest);
  return values.reduce((sum, value, index) => (index < at ? sum - value : sum + value), 0);
}

const small = /^(X{0,3})(IX|IV|VI{0,4}|I{0,4})$/i;

/** The number of a small Roman numeral (I to XXXIX) as in `an VII` or `XVIIIe siècle`; undefined for anything else. */
export function smallRoman(text: string): number | undefined {
  const match = text.length === 0 || text.length > 8 ? null : small.exec(text);
  return match?.slice(1).reduce((sum, part) => sum + worth(part.toUpperCase()), 0);
}
