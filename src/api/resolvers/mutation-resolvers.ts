import {
  claimKindNames,
  claimKinds,
  isRecordKind,
  type KindName,
  recordKindNames,
  recordKinds,
} from '../../domain/model/kinds.ts';
import { rowField } from '../../domain/model/sdl-commands.ts';
import type { Signed, Superseded, Undoing, Written } from '../../questions/commands.ts';
import type { Contradiction } from '../../questions/lineage-answer.ts';
import type { ApiContext } from '../context.ts';
import { Loaders } from '../loaders/loaders.ts';
import { given, type Nullable } from './given.ts';
import { loadGrounds } from './load.ts';

type Input = Readonly<Record<string, unknown>> &
  Signature & {
    readonly id?: string;
    readonly seen?: number | null;
    readonly merge?: boolean | null;
    readonly because?: string | null;
  };
type Command = (root: unknown, args: { readonly input: Input }, context: ApiContext) => Promise<unknown>;

interface Signature {
  readonly signed?: Nullable<Signed> | null | undefined;
}

/** Fields of Mutation, derived from the kinds. */
export const mutationResolvers = {
  ...Object.fromEntries([...recordKindNames, ...claimKindNames].flatMap(commandsOf)),
  undo: async (_root: unknown, { signed, ...what }: Undoing & Signature, context: ApiContext) => {
    const undone = await context.commands.undo(given(what), signedBy({ signed }, 'undone', context));
    forget(context);
    return undone;
  },
};

export const problemResolvers = {
  Problem: {
    involved: ({ involved }: Contradiction, _args: unknown, context: ApiContext) => loadGrounds(involved, context),
  },
};

function commandsOf(kind: KindName): [string, Command][] {
  const [one] = { ...recordKinds, ...claimKinds }[kind].words.en;
  const command = (
    name: 'add' | 'edit' | 'withdraw' | 'restore' | 'supersede',
    why: string,
    run: (input: Input, signed: Signed, context: ApiContext) => Promise<Written | Superseded>,
  ): [string, Command] => [
    `${name}${kind}`,
    async (_root, { input }, context) => {
      const { row, ...rest } = await run(input, signedBy(input, `${one}: ${why}`, context), context);
      forget(context);
      return { [rowField(kind)]: row ?? null, ...rest };
    },
  ];
  return [
    command('add', 'added', ({ id, ...input }, signed, { commands }) =>
      commands.add({ kind, ...(id == null ? {} : { id }), fields: fieldsOf(input) }, signed),
    ),
    command('edit', 'edited', (input, signed, { commands }) => commands.edit(editOf(kind, input), signed)),
    command('withdraw', 'withdrawn', ({ id, because, seen }, signed, { commands }) =>
      commands.withdraw({ id: id!, kind, ...given({ because, seen }) }, signed),
    ),
    command('restore', 'restored', ({ id }, signed, { commands }) => commands.restore({ id: id!, kind }, signed)),
    ...(isRecordKind(kind)
      ? []
      : [
          command('supersede', 'superseded', (input, signed, { commands }) =>
            commands.supersede(editOf(kind, input), signed),
          ),
        ]),
  ];
}

function editOf(kind: KindName, { id, seen, merge, ...input }: Input) {
  return { id: id!, kind, ...given({ seen, merge }), fields: fieldsOf(input) } as const;
}

/** Fields as a graph file has them; of one that is null it is said. */
function fieldsOf({ signed: _, columns, ...input }: Input): Readonly<Record<string, unknown>> {
  const fields = Object.fromEntries(Object.entries(input).map(([name, value]) => [name, withoutNull(value)]));
  if (columns === undefined) return fields;
  const pairs = (columns as readonly { readonly name: string; readonly text: string }[] | null) ?? [];
  return {
    ...fields,
    columns: pairs.length === 0 ? null : Object.fromEntries(pairs.map(({ name, text }) => [name, text])),
  };
}

/** Items that are given leave out what they say is null; an empty list is as none. */
function withoutNull(value: unknown): unknown {
  if (!Array.isArray(value)) return value;
  if (value.length === 0) return null;
  return value.map(item => {
    if (typeof item !== 'object' || item === null) return item;
    const parts = Object.entries(item as Readonly<Record<string, unknown>>).filter(([, part]) => part !== null);
    return Object.fromEntries(parts.map(([name, part]) => [name, withoutNull(part)]));
  });
}

function signedBy({ signed }: Signature, reason: string, context: ApiContext): Signed {
  return { who: signed?.who ?? context.who, why: signed?.why ?? reason };
}

/** What was read before a change may be otherwise now. */
function forget(context: ApiContext): void {
  context.loaders = new Loaders(context.store, context.questions);
}
