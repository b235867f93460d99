import type { Stamped } from './row.ts';

/** A row by itself, whenever it is valid: as it can be put. */
export function withoutStamps<T extends object>(row: T | Stamped<T>): T {
  const { since: _since, until: _until, ...fields } = row as Stamped<T>;
  return fields as unknown as T;
}
