/** A text that stays on its line wherever it is printed: line ends and control characters as JSON would escape them. */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]/gu, escaped);
}

function escaped(character: string): string {
  const written = JSON.stringify(character).slice(1, -1);
  return written === character ? `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}` : written;
}
