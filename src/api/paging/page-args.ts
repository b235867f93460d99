import { PlatestemmaError } from '../../errors.ts';
import type { PageAsked } from '../../questions/page.ts';
import { decodeCursor, type ListDigest } from './cursor.ts';

/** Arguments of every connection. */
export interface PageArgs {
  readonly first?: number | null;
  readonly after?: string | null;
}

export const defaultPage = 25;
export const largestPage = 200;

/** @throws INPUT_INVALID if `first` is out of bounds, CURSOR_INVALID */
export function pageAsked<Position>(
  args: PageArgs,
  list: ListDigest,
  isPosition: (value: unknown) => value is Position,
): PageAsked<Position> {
  const first = pageSize(args.first);
  const { after } = args;
  if (after === undefined || after === null) return { first };
  return { first, after: decodeCursor(after, list, isPosition) };
}

export function pageSize(first: number | null | undefined): number {
  const size = first ?? defaultPage;
  if (size >= 0 && size <= largestPage) return size;
  throw new PlatestemmaError('INPUT_INVALID', `first: expected 0 to ${largestPage}, came ${size}`, {
    place: { field: 'first' },
  });
}

export function isText(value: unknown): value is string {
  return typeof value === 'string';
}

export function isNumber(value: unknown): value is number {
  return typeof value === 'number';
}
