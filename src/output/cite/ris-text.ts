import type { CslName } from './csl-item.ts';
import { singleLine } from './single-line.ts';

/** A tag with its value on one line, as readers begin a new value at a line that has a tag; none for an empty value. */
export function risLine(tag: string, value: string | undefined): readonly string[] {
  const text = singleLine(value ?? '');
  return text === '' ? [] : [`${tag}  - ${text}`];
}

/**
 * `Family, Given, Suffix`. RIS knows a person by the comma and has no way to hide one: a name that stays whole is
 * written without its commas.
 */
export function risName({ family, given, suffix, literal }: CslName): string {
  if (family === undefined) return (literal ?? '').replaceAll(',', '');
  return [family, given, suffix]
    .map(part => part?.replaceAll(',', ' '))
    .filter(Boolean)
    .join(', ');
}
