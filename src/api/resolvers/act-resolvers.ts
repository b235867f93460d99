import type { Act, ActAnswer } from '../../domain/acts/act.ts';
import { type ActName, actNames, acts } from '../../domain/acts/acts.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { RecordedAct } from '../../questions/commands.ts';
import type { ApiContext } from '../context.ts';
import { withoutNull } from './input-fields.ts';
import { forget, type Signature, signedBy } from './mutation-resolvers.ts';

type Input = Readonly<Record<string, unknown>> & Signature;

/** Fields of Mutation that are acts, derived from their declarations. */
export const actResolvers = Object.fromEntries(actNames.map(name => [name, recordAct(name)]));

function recordAct(name: ActName) {
  const { answers, command }: Act = acts[name];
  return async (_root: unknown, { input }: { readonly input: Input }, context: ApiContext) => {
    const signed = signedBy(input, `${command} recorded`, context);
    const recorded = await context.commands.record([{ act: name, given: givenOf(input) }], signed);
    const [refused] = recorded.refusals;
    if (refused !== undefined) {
      const { code, field, message } = refused;
      throw new PlatestemmaError(code, field === undefined ? message : `${field}: ${message}`, {
        ...(field === undefined ? {} : { place: { field } }),
      });
    }
    forget(context);
    const { changeSet, problems, acts: done } = recorded;
    return { ...answered(answers, done[0]!), changeSet, problems };
  };
}

/** A field that is null, and an empty list, are as if they were not given. */
function givenOf({ signed: _, ...input }: Input): Readonly<Record<string, unknown>> {
  const given = Object.entries(input).map(([field, value]) => [field, withoutNull(value)]);
  return Object.fromEntries(given.filter(([, value]) => value !== null && value !== undefined));
}

function answered(answers: Readonly<Record<string, ActAnswer>>, done: RecordedAct) {
  return Object.fromEntries(
    Object.entries(answers).map(([field, { many }]) => [field, done[field] ?? (many === true ? [] : null)]),
  );
}
