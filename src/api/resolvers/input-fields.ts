/** What the inputs of all kinds have beside the fields of the kind. */
export type Input = Readonly<Record<string, unknown>>;

/** Fields of an input as a graph file has them; of one that is null it is said. */
export function inputFields({ signed: _, columns, ...input }: Input): Readonly<Record<string, unknown>> {
  const fields = Object.fromEntries(Object.entries(input).map(([name, value]) => [name, withoutNull(value)]));
  if (columns === undefined) return fields;
  const pairs = (columns as readonly { readonly name: string; readonly text: string }[] | null) ?? [];
  return {
    ...fields,
    columns: pairs.length === 0 ? null : Object.fromEntries(pairs.map(({ name, text }) => [name, text])),
  };
}

/** Items that are given leave out what they say is null; an empty list is as none. */
export function withoutNull(value: unknown): unknown {
  if (!Array.isArray(value)) return value;
  if (value.length === 0) return null;
  return value.map(item => {
    if (typeof item !== 'object' || item === null) return item;
    const parts = Object.entries(item as Readonly<Record<string, unknown>>).filter(([, part]) => part !== null);
    return Object.fromEntries(parts.map(([name, part]) => [name, withoutNull(part)]));
  });
}
