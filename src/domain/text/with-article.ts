/** The name of a kind after "a" or "an". */
export function withArticle(kind: string): string {
  return /^[AEIOU]/.test(kind) ? `an ${kind}` : `a ${kind}`;
}
