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
import { inputFields } from './input-fields.ts';
import { loadGrounds } from './load.ts';

type Input = Readonly<Record<string, unknown>> &
  Signature & {
    readonly id?: string;
    readonly seen?: number | null;
    readonly merge?: boolean | null;
    readonly because?: string | null;
  };
type Command = (root: unknown, args: { readonly input: Input }, context: ApiContext) => Promise<unknown>;

export interface Signature {
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
    involved: ({ involved }: Contradiction, _args: unknown, context: ApiContext) => loadGrounds(involved, context.now),
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
      commands.add({ kind, ...(id == null ? {} : { id }), fields: inputFields(input) }, signed),
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
  return { id: id!, kind, ...given({ seen, merge }), fields: inputFields(input) } as const;
}

export function signedBy({ signed }: Signature, reason: string, context: ApiContext): Signed {
  return { who: signed?.who ?? context.who, why: signed?.why ?? reason };
}

/** What was read before a change may be otherwise now. */
export function forget(context: ApiContext): void {
  const { store, questions } = context.now;
  context.now = { store, questions, loaders: new Loaders(store, questions) };
}
