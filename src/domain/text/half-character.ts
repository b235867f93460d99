/** Whether a text, or one in a list or object, has half a surrogate pair (Unicode D92), which UTF-8 cannot write. */
export function hasHalfCharacter(value: unknown): boolean {
  if (typeof value === 'string') return !value.isWellFormed();
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(([name, part]) => !name.isWellFormed() || hasHalfCharacter(part));
}
