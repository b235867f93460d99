import { countryCodesInForce } from './country-codes.ts';

/**
 * True if a place filed under `code` may be meant where a record says `said`: the same code, a part of the country that
 * `said` names (`xxu` covers `nyu`), a country of which `said` is a part (a record may know the state where the place
 * is filed under the country alone), or a successor of a discontinued code. Ireland covers Northern Ireland, as it did until 1921.
 */
export function countryCovers(said: string, code: string): boolean {
  return countryCodesInForce(said).some(
    one => one === code || wholeOf(code).includes(one) || wholeOf(one).includes(code),
  );
}

const parts: Readonly<Record<string, readonly string[]>> = {
  enk: ['xxk'],
  stk: ['xxk'],
  wlk: ['xxk'],
  nik: ['xxk', 'ie'],
  uik: ['xxk'],
};
const australian = new Set('aca qea tma vra wea xga xna xoa xra'.split(' '));
const notAState = new Set(['xxu']);

/** The wider codes that hold a code. Three letters with a last `u` are states of the US, with `c` provinces of Canada. */
function wholeOf(code: string): readonly string[] {
  if (code in parts) return parts[code]!;
  if (australian.has(code)) return ['at'];
  if (code.length !== 3 || notAState.has(code)) return [];
  if (code.endsWith('u')) return ['xxu'];
  return code.endsWith('c') && code !== 'xxc' ? ['xxc'] : [];
}
