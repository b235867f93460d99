/** Whether a text, or one in a list or object, has half a surrogate pair (Unicode D92), which UTF-8 cannot write. */
export function hasHalfCharacter(value: unknown): boolean {
  if (typeof value === 'string') return !value.isWellFormed();
  if (typeof value !== 'object' || value === null) return false;
  if (Array.isArray(value)) return value.some(hasHalfCharacter);
  const parts = value as Readonly<Record<string, unknown>>;
  for (const name in parts) if (!name.isWellFormed() || hasHalfCharacter(parts[name])) return true;
  return false;
}
