import {
  type ASTVisitor,
  type FieldNode,
  GraphQLError,
  type GraphQLField,
  type GraphQLNamedType,
  getNamedType,
  getNullableType,
  isInterfaceType,
  isListType,
  isObjectType,
  Kind,
  type SelectionSetNode,
  type ValidationContext,
  type ValidationRule,
} from 'graphql';
import type { Plugin } from 'graphql-yoga';
import type { ApiContext } from '../context.ts';
import { defaultPage, largestPage } from '../paging/page-args.ts';
import type { Limits } from './limits.ts';

interface Measure {
  readonly depth: number;
  readonly aliases: number;
  readonly cost: number;
}

const nothing: Measure = { depth: 0, aliases: 0, cost: 0 };

/** The whole schema takes many levels of a bounded answer: it is charged as a whole. */
const introspectionCost = 5_000;

/** Refuses what is over the limits before anything is executed. */
export function limitsGuard(limits: Limits): Plugin<ApiContext> {
  const rule = limitsRule(limits);
  return { onValidate: ({ addValidationRule }) => addValidationRule(rule) };
}

/** Validation rule: refuses an operation that is deeper, wider or larger than the limits. Looks at no variable: one that says how many counts as the largest page. */
function limitsRule(limits: Limits): ValidationRule {
  return function LimitsRule(context: ValidationContext): ASTVisitor {
    const measurer = new Measurer(context);
    return {
      OperationDefinition(operation) {
        const root = context.getSchema().getRootType(operation.operation) ?? undefined;
        const measured = measurer.selections(operation.selectionSet, root);
        for (const name of ['depth', 'aliases', 'cost'] as const) {
          if (measured[name] <= limits[name]) continue;
          const message = `expected a query with ${words[name]} of at most ${limits[name]}, came ${measured[name]}`;
          const extensions = { code: 'QUERY_TOO_COSTLY' };
          context.reportError(new GraphQLError(message, { nodes: operation, extensions }));
        }
        return false;
      },
    };
  };
}

const words = { depth: 'a depth', aliases: 'a number of aliases', cost: 'a cost (fields if every page is full)' };

class Measurer {
  readonly #context: ValidationContext;
  /** Each fragment is measured once; while it is, it counts nothing: another rule refuses cycles. */
  readonly #fragments = new Map<string, Measure>();

  constructor(context: ValidationContext) {
    this.#context = context;
  }

  selections(set: SelectionSetNode, type: GraphQLNamedType | undefined): Measure {
    let { depth, aliases, cost } = nothing;
    for (const selection of set.selections) {
      const part =
        selection.kind === Kind.FIELD
          ? this.#field(selection, type)
          : selection.kind === Kind.INLINE_FRAGMENT
            ? this.selections(selection.selectionSet, this.#type(selection.typeCondition?.name.value) ?? type)
            : this.#fragment(selection.name.value);
      depth = Math.max(depth, part.depth);
      aliases += part.aliases;
      cost += part.cost;
    }
    return { depth, aliases, cost };
  }

  #field(node: FieldNode, type: GraphQLNamedType | undefined): Measure {
    const name = node.name.value;
    const alias = node.alias === undefined ? 0 : 1;
    if (name === '__schema' || name === '__type') return { depth: 1, aliases: alias, cost: introspectionCost };
    const field = isObjectType(type) || isInterfaceType(type) ? type.getFields()[name] : undefined;
    if (node.selectionSet === undefined) return { depth: 1, aliases: alias, cost: 1 };
    const inner = this.selections(node.selectionSet, field === undefined ? undefined : getNamedType(field.type));
    const many = isLong(name, type) ? largestPage : times(node, field);
    return { depth: 1 + inner.depth, aliases: alias + inner.aliases, cost: 1 + many * inner.cost };
  }

  #fragment(name: string): Measure {
    const known = this.#fragments.get(name);
    if (known !== undefined) return known;
    this.#fragments.set(name, nothing);
    const fragment = this.#context.getFragment(name);
    if (fragment === undefined || fragment === null) return nothing;
    const measured = this.selections(fragment.selectionSet, this.#type(fragment.typeCondition.name.value));
    this.#fragments.set(name, measured);
    return measured;
  }

  #type(name: string | undefined): GraphQLNamedType | undefined {
    return name === undefined ? undefined : this.#context.getSchema().getType(name);
  }
}

/** Lists without pages that are as long as the graph has it: they count as a full page. */
const longLists: ReadonlySet<string> = new Set([
  'LineageLinks.nodes',
  'LineageLinks.steps',
  'Descent.editions',
  'Descent.steps',
]);

function isLong(field: string, type: GraphQLNamedType | undefined): boolean {
  return longLists.has(`${type?.name}.${field}`);
}

/** How many times the selection of a field may come in the answer: the page asked for, or the ids given. */
function times(node: FieldNode, field: GraphQLField<unknown, unknown> | undefined): number {
  const counted = field?.args.find(
    ({ name, type }) => name === 'first' || ((name === 'ids' || name === 'of') && isListType(getNullableType(type))),
  );
  if (counted === undefined) return 1;
  const value = node.arguments?.find(arg => arg.name.value === counted.name)?.value;
  if (value === undefined) return defaultPage;
  if (value.kind === Kind.INT) return Math.max(0, Number(value.value));
  if (value.kind === Kind.LIST) return value.values.length;
  return value.kind === Kind.NULL ? defaultPage : largestPage;
}
