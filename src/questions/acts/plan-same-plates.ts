import type { Given } from '../../domain/acts/act.ts';
import type { samePlates } from '../../domain/acts/same-plates.ts';
import { type Planned, saidOf } from './act-parts.ts';
import type { Draft } from './draft.ts';
import { planStates, saysOfState } from './plan-states.ts';
import { chosen, type InSet, pick, platesIn } from './plates-in.ts';
import { refusal } from './refusal.ts';

export type GivenSame = Given<typeof samePlates.fields>;

/** A plate that two editions have, and what is said of it alone. */
export interface SamePlate extends InSet {
  readonly said: Partial<NonNullable<GivenSame['plates']>[number]>;
}

export async function planSamePlates(given: GivenSame, draft: Draft): Promise<Planned> {
  const { edition, as } = given;
  if (edition === as) throw refusal('as', `expected another edition than "${edition}", came the same`);
  const there = await platesIn(draft.store, as);
  if (there.length === 0)
    throw refusal('as', `expected an edition whose plates are recorded, came "${as}", which has none`);
  const absent = chosen(there, given.absent, 'absent');
  const except = chosen(there, given.except, 'except');
  const only = given.only === undefined ? new Set(there) : chosen(there, given.only, 'only');
  const same = withSaid(
    there.filter(plate => only.has(plate) && !except.has(plate) && !absent.has(plate)),
    there,
    given,
  );
  if (same.length + absent.size === 0)
    throw refusal('except', `expected at least one plate that is left, came all ${there.length} of them`);
  const states = saysOfState(given, same) ? await planStates(same, given, draft) : undefined;
  const appearances = [
    ...same.map(({ id, number, appearance, said }) => ({
      ...{ plate: id, edition, presence: 'PRESENT' as const, state: states?.of.get(id) },
      ...{ number: said.number ?? number, volume: said.volume, page: said.page, cover: appearance?.cover },
    })),
    ...[...absent].map(({ id }) => ({ plate: id, edition, presence: 'ABSENT' as const })),
  ];
  return {
    appearances: await draft.claims('Appearance', appearances, saidOf(given)),
    ...(states?.planned ?? { matrices: [], printings: [], states: [], datings: [] }),
  };
}

function withSaid(same: readonly InSet[], there: readonly InSet[], { plates = [] }: GivenSame): readonly SamePlate[] {
  const said = new Map<InSet, SamePlate['said']>();
  for (const [i, each] of plates.entries()) {
    const field = `plates[${i}].plate`;
    const plate = pick(there, each.plate, field);
    if (!same.includes(plate))
      throw refusal(field, `expected a plate that is left, came "${each.plate}", which is not`);
    if (said.has(plate)) throw refusal(field, `expected each plate once, came "${each.plate}" twice`);
    said.set(plate, each);
  }
  return same.map(plate => ({ ...plate, said: said.get(plate) ?? {} }));
}
