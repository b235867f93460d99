import { hasHalfCharacter } from './half-character.ts';

/** Levels of lists and objects in a text that comes from outside. What looks at a value calls itself for each. */
export const deepestJson = 100;

/** @throws SyntaxError if it is no JSON, deeper than anything that is meant, or has half a surrogate pair (Unicode D92) */
export function parseJson(text: string): unknown {
  const value: unknown = JSON.parse(text);
  if (isDeeper(value, deepestJson))
    throw new SyntaxError(`it has more than ${deepestJson} levels of lists and objects`);
  // Only an escape can write one.
  if (text.includes('\\u') && hasHalfCharacter(value)) throw new SyntaxError('it has half a surrogate pair');
  return value;
}

function isDeeper(value: unknown, levels: number): boolean {
  if (typeof value !== 'object' || value === null) return false;
  return levels === 0 || Object.values(value).some(part => isDeeper(part, levels - 1));
}
