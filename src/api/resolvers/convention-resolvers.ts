import { shippedConvention } from '../../domain/conventions/convention-form.ts';
import type { RecordOf } from '../../domain/model/row.ts';
import type { SetConvention } from '../../questions/commands.ts';
import type { ApiContext } from '../context.ts';
import { given, type Nullable } from './given.ts';
import { forget, type Signature, signedBy } from './mutation-resolvers.ts';

type ConventionRow = RecordOf<'Convention'>;

/** Fields of Convention beside those of its kind. */
export const conventionResolvers = {
  unit: ({ key, unit }: ConventionRow) => unit ?? shippedConvention(key)?.unit ?? null,
  shipped: ({ key }: ConventionRow) => shippedConvention(key) ?? null,
  fixed: ({ key }: ConventionRow) => shippedConvention(key)?.fixed ?? null,
};

type Input = Pick<SetConvention, 'key' | 'value'> & Nullable<Pick<SetConvention, 'source' | 'seen'>> & Signature;

/** Fields of Mutation for what is named by a key. */
export const conventionMutations = {
  setConvention: async (_root: unknown, { input }: { readonly input: Input }, context: ApiContext) => {
    const { signed, key, value, ...rest } = input;
    const signature = signedBy({ signed }, `convention ${key}: changed`, context);
    const { row, ...written } = await context.commands.setConvention({ key, value, ...given(rest) }, signature);
    forget(context);
    return { convention: row ?? null, ...written };
  },
};
