/** A list in a list in a list, so many deep. */
export function deepestJson(levels: number): unknown {
  let value: unknown = 'end';
  for (let level = 0; level < levels; level++) value = level % 2 === 0 ? [value] : { in: value };
  return value;
}
