import type { GraphQLResolveInfo } from 'graphql';
import { claimKindNames, type KindName, recordKindNames } from '../../domain/model/kinds.ts';
import { rowField } from '../../domain/model/sdl-commands.ts';
import { PlatestemmaError } from '../../errors.ts';
import { isGiven, type Supposed, type WhatIf } from '../../questions/what-if/what-if.ts';
import type { ApiContext } from '../context.ts';
import { type Graph, topOf } from '../graph.ts';
import { Loaders } from '../loaders/loaders.ts';
import { given, type Nullable } from './given.ts';
import { type Input, inputFields } from './input-fields.ts';

/** Arguments of a field that may be asked of the graph as it was, or as it would be. */
export interface WhatIfArgs {
  readonly basis?: Nullable<NonNullable<WhatIf['basis']>> | null | undefined;
  readonly suppose?: readonly Readonly<Record<string, Input>>[] | null | undefined;
  readonly without?: Nullable<NonNullable<WhatIf['without']>> | null | undefined;
  readonly asOf?: Nullable<NonNullable<WhatIf['asOf']>> | null | undefined;
}

/** The graph that a field at the top asks about. All fields below it are resolved from it too. */
export async function graphAsked(args: WhatIfArgs, info: GraphQLResolveInfo, context: ApiContext): Promise<Graph> {
  const whatIf = whatIfOf(args);
  if (!isGiven(whatIf)) return context.now;
  const { store, questions } = await context.now.questions.given(whatIf, context.ending.signal);
  const graph = { store, questions, loaders: new Loaders(store, questions) };
  context.otherwise.set(topOf(info.path), graph);
  return graph;
}

function whatIfOf({ basis, suppose, without, asOf }: WhatIfArgs): WhatIf {
  return {
    ...(basis == null ? {} : { basis: given(basis) }),
    ...(suppose == null ? {} : { suppose: suppose.map(supposedOf) }),
    ...(without == null ? {} : { without: given(without) }),
    ...(asOf == null ? {} : { asOf: given(asOf) }),
  };
}

const kinds: ReadonlyMap<string, KindName> = new Map(
  [...recordKindNames, ...claimKindNames].map(kind => [rowField(kind), kind]),
);

/** The row as a graph file has it. */
function supposedOf(one: Readonly<Record<string, Input>>, i: number): Supposed {
  const [[name, { signed, ...input }]] = Object.entries(one) as [[string, Input]];
  if (signed != null)
    throw new PlatestemmaError('INPUT_INVALID', 'suppose: expected no signature, since nothing is written, came one', {
      place: { record: i + 1, field: 'signed' },
    });
  const fields = Object.entries(inputFields(input)).filter(([, value]) => value !== null);
  return { value: { kind: kinds.get(name), ...Object.fromEntries(fields) } };
}
