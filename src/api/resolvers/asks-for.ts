import { type GraphQLResolveInfo, Kind, type SelectionNode, type SelectionSetNode } from 'graphql';

/**
 * Whether a field asks for the field at a path below it, in any of its fragments. Says yes too where `@skip` or
 * `@include` will leave it out: what is worked out in vain is only time.
 */
export function asksFor(info: GraphQLResolveInfo, ...path: readonly string[]): boolean {
  return info.fieldNodes.some(node => node.selectionSet !== undefined && selects(node.selectionSet, path, info));
}

function selects(set: SelectionSetNode, path: readonly string[], info: GraphQLResolveInfo): boolean {
  const [name, ...rest] = path;
  return set.selections.some(selection => {
    if (selection.kind === Kind.FIELD) {
      if (selection.name.value !== name) return false;
      return rest.length === 0 || (selection.selectionSet !== undefined && selects(selection.selectionSet, rest, info));
    }
    const inner = innerOf(selection, info);
    return inner !== undefined && selects(inner, path, info);
  });
}

export function innerOf(
  fragment: Exclude<SelectionNode, { kind: typeof Kind.FIELD }>,
  info: GraphQLResolveInfo,
): SelectionSetNode | undefined {
  if (fragment.kind === Kind.INLINE_FRAGMENT) return fragment.selectionSet;
  return info.fragments[fragment.name.value]?.selectionSet;
}
