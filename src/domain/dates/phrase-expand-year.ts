/**
 * The year that a shortened one means beside a full year: `1860` and `66` give 1866, `1896` and `9` give 1899, `1798`
 * and `802` give 1802. `back` allows a lower number up to ten years earlier (`1899, 98`). Undefined where the number
 * would run backwards otherwise: 98 after 1902 may be 1898 or 1998.
 */
export function expandYear(year: string, short: string, back = false): string | undefined {
  if (short.length >= 4) return short;
  const full = `${year.slice(0, 4 - short.length)}${short}`;
  const step = Number(full) - Number(year.slice(0, 4));
  if (step >= 0 || (back && step >= -10)) return full;
  if (short.length < 3) return undefined;
  return String(Number(full) + 1000).padStart(4, '0');
}
