import type { Given } from '../../domain/acts/act.ts';
import { plateNumbers } from '../../domain/acts/plate-numbers.ts';
import type { plates } from '../../domain/acts/plates.ts';
import { type Planned, saidOf } from './act-parts.ts';
import type { Draft } from './draft.ts';
import { makersOf } from './makers.ts';
import { NamedRecords } from './named-record.ts';
import { platesIn } from './plates-in.ts';
import { refusal } from './refusal.ts';

type GivenPlates = Given<typeof plates.fields>;
type GivenPlate = NonNullable<GivenPlates['plates']>[number];

export async function planPlates(given: GivenPlates, draft: Draft): Promise<Planned> {
  const said = saidOf(given);
  const named = new NamedRecords(draft, given);
  const all = platesGiven(given);
  await refuseKnown(given, all, draft);
  const ids = all.map(({ caption, lettering, form, technique, size }) =>
    draft.add('Plate', {
      ...{ caption, lettering },
      form: form ?? given.form,
      technique: technique ?? given.technique,
      size: size ?? given.size,
    }),
  );
  const appearances = all.map(({ number, volume, page, colouring }, i) => ({
    ...{ plate: ids[i]!, edition: given.edition, presence: 'PRESENT' as const, number, page },
    volume: volume ?? given.volume,
    colouring: colouring ?? given.colouring,
  }));
  return {
    plates: ids,
    appearances: await draft.claims('Appearance', appearances, said),
    attributions: await draft.claims('Attribution', await makersOf(ids, given, named), said),
    named: named.ids,
  };
}

/** One a number, in the order of the numbers; then those whose number is none of them. */
function platesGiven({ numbers: text, captions, plates: single = [] }: GivenPlates): readonly GivenPlate[] {
  const numbers = text === undefined ? (captions ?? []).map((_, i) => String(i + 1)) : plateNumbers(text);
  if (numbers === undefined)
    throw refusal('numbers', `expected numbers such as 1-60 or 1-12, 14, each once, came "${text}"`);
  if (captions !== undefined && captions.length !== numbers.length)
    throw refusal('captions', `expected ${numbers.length}, one for each number, came ${captions.length}`);
  const all = new Map<string, GivenPlate>(
    numbers.map((number, i) => [number, { number, ...(captions === undefined ? {} : { caption: captions[i]! }) }]),
  );
  const seen = new Set<string>();
  for (const [i, plate] of single.entries()) {
    const { number } = plate;
    if (seen.has(number)) throw refusal(`plates[${i}].number`, `expected each number once, came "${number}" twice`);
    seen.add(number);
    all.set(number, { ...all.get(number), ...plate });
  }
  return [...all.values()];
}

/** Who records a plate twice has two of it: which of them is meant later nobody knows. */
async function refuseKnown(given: GivenPlates, all: readonly GivenPlate[], draft: Draft): Promise<void> {
  const { edition } = given;
  const place = (number: string | undefined, volume = given.volume) => JSON.stringify([edition, volume, number]);
  const there = await platesIn(draft.store, edition);
  const known = new Map(
    there.map(({ id, number, appearance }) => [JSON.stringify([edition, appearance?.volume, number]), id]),
  );
  for (const { number, volume } of all) {
    const id = known.get(place(number, volume));
    const isTwice = draft.count(place(number, volume), 1) > 0;
    if (id === undefined && !isTwice) continue;
    const came = isTwice ? 'which is given before' : `which is ${id}`;
    throw refusal('numbers', `expected numbers that no plate of the edition has yet, came "${number}", ${came}`);
  }
}
