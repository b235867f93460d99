/** A stretch of a list with one total order. A position holds the keys of the order: what stands after it can be asked for. */
export interface Page<Item, Position> {
  readonly items: readonly { readonly item: Item; readonly position: Position }[];
  /** There is at least one more item after the last. */
  readonly more: boolean;
}

/** `first` items (0 or more) from after a position. */
export interface PageAsked<Position> {
  readonly first: number;
  readonly after?: Position | undefined;
}
