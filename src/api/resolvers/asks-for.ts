import { type GraphQLResolveInfo, Kind, type SelectionNode, type SelectionSetNode } from 'graphql';

/**
 * Whether a field asks for the field at a path below it, in any of its fragments. Says yes too where `@skip` or
 * `@include` will leave it out: what is worked out in vain is only time.
 */
export function asksFor(info: GraphQLResolveInfo, ...path: readonly string[]): boolean {
  return info.fieldNodes.some(node => node.selectionSet !== undefined && selects(node.selectionSet, path, info));
}

/** Whether the items of a connection are asked for what other rows say: for a field with fields of its own, or for a sentence. */
export function asksForNamed(info: GraphQLResolveInfo): boolean {
  const sets = info.fieldNodes.flatMap(({ selectionSet }) => selectionSet ?? []);
  return sets.some(set => asksDeeper(set, 'connection', info));
}

function asksDeeper(set: SelectionSetNode, of: 'connection' | 'edge' | 'item', info: GraphQLResolveInfo): boolean {
  return set.selections.some(selection => {
    if (selection.kind !== Kind.FIELD) {
      const inner = innerOf(selection, info);
      return inner !== undefined && asksDeeper(inner, of, info);
    }
    const { name, selectionSet } = selection;
    if (of === 'item') return selectionSet !== undefined || name.value === 'says';
    if (selectionSet === undefined || name.value === 'pageInfo') return false;
    return asksDeeper(selectionSet, name.value === 'edges' ? 'edge' : 'item', info);
  });
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

function innerOf(
  fragment: Exclude<SelectionNode, { kind: typeof Kind.FIELD }>,
  info: GraphQLResolveInfo,
): SelectionSetNode | undefined {
  if (fragment.kind === Kind.INLINE_FRAGMENT) return fragment.selectionSet;
  return info.fragments[fragment.name.value]?.selectionSet;
}
