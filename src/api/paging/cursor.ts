import { createHash } from 'node:crypto';
import { PlatestemmaError } from '../../errors.ts';

/** Says which list a cursor belongs to: the field, what it hangs on, and its arguments but for those of paging. */
export type ListDigest = string;

export function listDigest(field: string, args: object, of = ''): ListDigest {
  const { first: _first, after: _after, ...others } = args as Readonly<Record<string, unknown>>;
  return createHash('sha256')
    .update(JSON.stringify([field, of, canonical(others)]))
    .digest('base64url')
    .slice(0, 8);
}

export function encodeCursor(list: ListDigest, position: unknown): string {
  return Buffer.from(JSON.stringify([list, position])).toString('base64url');
}

/**
 * The position that a cursor names in a list.
 * @throws CURSOR_INVALID if it was made for another list or other arguments, or not by this program
 */
export function decodeCursor<Position>(
  cursor: string,
  list: ListDigest,
  isPosition: (value: unknown) => value is Position,
): Position {
  const value = read(cursor);
  if (Array.isArray(value) && value.length === 2 && value[0] === list && isPosition(value[1])) return value[1];
  throw new PlatestemmaError(
    'CURSOR_INVALID',
    `expected a cursor of this list with the same arguments, came "${cursor.slice(0, 60)}"`,
    { place: { field: 'after' } },
  );
}

function read(cursor: string): unknown {
  try {
    return JSON.parse(Buffer.from(cursor, 'base64url').toString('utf8'));
  } catch {
    return undefined;
  }
}

/** Without what is null, and by name: two ways to write the same arguments are the same list. */
function canonical(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(canonical);
  if (typeof value !== 'object' || value === null) return value;
  const given = Object.entries(value).filter(([, part]) => part !== null && part !== undefined);
  return given.sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, part]) => [name, canonical(part)]);
}
