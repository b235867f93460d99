/** Private-use characters that stand for the angle brackets while the engine works: it reads them as markup. */
const openAngle = '\uE03C';
const closeAngle = '\uE03E';

/** The same value with the angle brackets of its texts out of the engine's sight. */
export function hideMarkup(value: unknown): unknown {
  if (typeof value === 'string') return value.toWellFormed().replaceAll('<', openAngle).replaceAll('>', closeAngle);
  if (Array.isArray(value)) return value.map(hideMarkup);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, hideMarkup(inner)]));
}

/**
 * What the engine wrote, as one line of plain text: angle brackets back, blocks joined, and the second of two stops
 * with nothing between them left out, which the ISO 690 styles leave where an author is missing.
 */
export function plainText(output: string): string {
  return output
    .replaceAll(openAngle, '<')
    .replaceAll(closeAngle, '>')
    .replace(/\s*\n\s*/g, ' ')
    .replace(/ {2,}/g, ' ')
    .replace(/(?<!\. ?)\. \.(?! ?\.)/g, '.')
    .trim();
}
