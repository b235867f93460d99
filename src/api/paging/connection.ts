import type { Page, PageAsked } from '../../questions/page.ts';
import { encodeCursor, type ListDigest } from './cursor.ts';

/** A connection as the default resolvers read it: GraphQL Cursor Connections Specification. */
export interface Connection<Node> {
  readonly edges: readonly { readonly node: Node; readonly cursor: string }[];
  readonly nodes: readonly Node[];
  readonly pageInfo: {
    readonly hasNextPage: boolean;
    readonly hasPreviousPage: false;
    readonly startCursor: string | null;
    readonly endCursor: string | null;
  };
}

export function connection<Node, Position>(page: Page<Node, Position>, list: ListDigest): Connection<Node> {
  const cursorAt = (at: number): string | null => {
    const found = page.items.at(at);
    return found === undefined ? null : encodeCursor(list, found.position);
  };
  return {
    // Most ask for nodes alone.
    get edges() {
      return page.items.map(({ item, position }) => ({ node: item, cursor: encodeCursor(list, position) }));
    },
    nodes: page.items.map(({ item }) => item),
    pageInfo: {
      hasNextPage: page.more,
      hasPreviousPage: false,
      startCursor: cursorAt(0),
      endCursor: cursorAt(-1),
    },
  };
}

/** A page out of a whole list that is ordered by id. */
export function pageById<Item extends { readonly id: string }>(
  all: readonly Item[],
  asked: PageAsked<string>,
): Page<Item, string> {
  const { after } = asked;
  const found = after === undefined ? 0 : all.findIndex(item => item.id > after);
  const from = found < 0 ? all.length : found;
  const items = all.slice(from, from + asked.first).map(item => ({ item, position: item.id }));
  return { items, more: from + items.length < all.length };
}
