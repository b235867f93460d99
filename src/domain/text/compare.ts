/** Order of texts by code point, which is also the order of their UTF-8 bytes: what every engine can do alike. */
export function compareText(a: string, b: string): number {
  const length = Math.min(a.length, b.length);
  for (let i = 0; i < length; i++) {
    const x = a.charCodeAt(i);
    const y = b.charCodeAt(i);
    if (x !== y) return isSurrogate(x) === isSurrogate(y) ? x - y : isSurrogate(x) ? 1 : -1;
  }
  return a.length - b.length;
}

function isSurrogate(unit: number): boolean {
  return unit >= 0xd800 && unit <= 0xdfff;
}
