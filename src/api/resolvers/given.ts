/** An input as GraphQL gives it: a name may be absent or null. */
export type Nullable<T> = { readonly [K in keyof T]?: T[K] | null };

/** What was given of an input: GraphQL's null means left out, in the questions a name is absent. */
export function given<T extends object>(input: T): { [K in keyof T]: Exclude<T[K], null | undefined> } {
  const entries = Object.entries(input).filter(([, value]) => value !== null && value !== undefined);
  return Object.fromEntries(entries) as { [K in keyof T]: Exclude<T[K], null | undefined> };
}
