import type { ClaimOf } from './row.ts';

/** Where in an edition a plate is, in words: `vol. 2, p. 117, no. 4, on the cover`. Undefined where nothing says it. */
export function appearanceLocator({ volume, page, number, cover }: ClaimOf<'Appearance'>): string | undefined {
  const parts = [
    ...named('vol. ', volume),
    ...named('p. ', page),
    ...named('no. ', number),
    ...(cover === true ? ['on the cover'] : []),
  ];
  return parts.length === 0 ? undefined : parts.join(', ');
}

/** A number is led by what it counts; other words stand as they are. */
function named(lead: string, text: string | undefined): readonly string[] {
  if (text === undefined) return [];
  return [/^[\d\p{Lu}]+(?:[-–]\d+)?$/u.test(text) ? lead + text : text];
}
