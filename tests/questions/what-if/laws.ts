import type { AnyRow } from '../../../src/domain/model/row.ts';
import { askStore } from '../../../src/questions/ask-store.ts';
import type { WhatIf, Without } from '../../../src/questions/what-if/what-if.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { type Dice, dice } from '../../support/random-graph.ts';
import {
  answerText,
  certainties,
  firstRows,
  nextRows,
  randomClaim,
  randomConvention,
  randomQuestions,
  randomRecord,
  writeAll,
} from '../../support/random-world.ts';
import { asDefault, writeAsIf } from './as-written.ts';

/** What a random question takes otherwise, of a graph that was written in some changes. */
export type WhatIfOf = (changes: readonly (readonly AnyRow[])[], roll: Dice) => WhatIf;

export const suppose: WhatIfOf = (changes, roll) => {
  const ids = new Set(changes.flat().map(({ id }) => id));
  const records = (['Plate', 'Edition', 'Detail', 'Motif', 'Alternatives'] as const).flatMap(kind =>
    roll.chance(0.25) ? [randomRecord(kind, 'new-one', roll)] : [],
  );
  const claims = Array.from({ length: 1 + roll.below(6) }, (_, i) => {
    const claim = randomClaim(`new-${i}`, roll);
    const named = Object.entries(claim).map(([name, value]) => {
      // Some say something of what is supposed itself; what stands in a group goes on to be about the same.
      const mayBeNew = claim.alternativeTo === undefined || (name === 'alternativeTo' && claim.kind === 'Copying');
      const isNew =
        mayBeNew && typeof value === 'string' && name !== 'id' && records.some(({ id }) => sameKind(id, value));
      return [name, isNew && roll.chance(0.6) ? records.find(({ id }) => sameKind(id, value))!.id : value];
    });
    return Object.fromEntries(named) as AnyRow;
  });
  return { suppose: [...records, ...claims].filter(({ id }) => !ids.has(id)).map(value => ({ value })) };
};

function sameKind(a: string, b: string): boolean {
  return a.slice(0, a.indexOf('-') + 1) === b.slice(0, b.indexOf('-') + 1);
}

export const withoutClaims: WhatIfOf = (changes, roll) => {
  const claims = [
    ...new Set(changes[0]!.filter(row => !('labels' in row) && /-any-\d+$|^(dating|imprint)/.test(row.id))),
  ]
    .map(({ id }) => id)
    .filter(id =>
      /^(copying|printedfrom|casting|editiondescent|appearance|dating|imprint|stay|attribution|access|depiction|sequence|madeat|follows)-/.test(
        id,
      ),
    );
  return { without: { claims: claims.filter(() => roll.chance(0.3)) } };
};

export const withoutOthers: WhatIfOf = (_changes, roll) => {
  const without: Without = {
    ...(roll.chance(0.5) ? { references: [`reference-any-${roll.below(2)}`] } : {}),
    ...(roll.chance(0.3) ? { saidBy: ['Ada'] } : {}),
    ...(roll.chance(0.3) ? { rules: ['a year'] } : {}),
    ...(roll.chance(0.3) ? { certainties: [roll.pick(certainties)] } : {}),
  };
  return { without: Object.keys(without).length === 0 ? { saidBy: ['Bo'] } : without };
};

/** Of a graph that has none of that key. */
export const supposeConvention: WhatIfOf = (changes, roll) => {
  const there = new Set(changes.flat().map(({ id }) => id));
  const convention = randomConvention(roll);
  return { suppose: there.has(convention.id) ? [] : [{ value: convention }] };
};

export const asOf: WhatIfOf = (changes, roll) => ({ asOf: { changeSet: 1 + roll.below(changes.length) } });

export const allAtOnce: WhatIfOf = (changes, roll) => ({
  ...suppose(changes, roll),
  ...(roll.chance(0.5) ? withoutClaims(changes, roll) : withoutOthers(changes, roll)),
  ...(roll.chance(0.5) ? asOf(changes, roll) : {}),
});

export interface Wrong {
  readonly seed: number;
  readonly question: string;
  readonly whatIf: string;
  readonly answer: string;
  readonly truth: string;
}

/**
 * Asks random graphs in a store what would be, and of a store in which it is so what is: the first answer that differs.
 * @param spoil makes what is asked another question: a planted fault
 */
export async function firstWrong(
  open: () => Promise<GraphStore>,
  whatIfOf: WhatIfOf,
  graphs: number,
  from: number,
  spoil: (whatIf: WhatIf, store: GraphStore) => readonly [WhatIf, GraphStore] = (whatIf, store) => [whatIf, store],
): Promise<Wrong | undefined> {
  for (let seed = from; seed < from + graphs; seed++) {
    const roll = dice(seed);
    const changes = [firstRows(roll), ...Array.from({ length: roll.below(4) }, () => nextRows(roll))];
    const store = await open();
    await writeAll(store, changes);
    for (let round = 0; round < 2; round++) {
      const whatIf = whatIfOf(changes, roll);
      const there = memoryStore();
      await writeAsIf(there, changes, whatIf);
      const [asked, of] = spoil(whatIf, store);
      const wrong = await differing(of, asked, there, roll, seed);
      if (wrong !== undefined) return wrong;
    }
    await store.close();
  }
  return undefined;
}

async function differing(
  store: GraphStore,
  whatIf: WhatIf,
  there: GraphStore,
  roll: Dice,
  seed: number,
): Promise<Wrong | undefined> {
  const graph = await askStore(store).given(whatIf);
  const now = { questions: askStore(there), store: there };
  const more = (whatIf.suppose ?? [])
    .map(({ value }) => (value as AnyRow).id)
    .filter(id => /^(plate|edition)-/.test(id));
  for (const question of randomQuestions(6, roll, more)) {
    const [answer, truth] = [await answerText(graph, question), await answerText(now, question)];
    const isSame =
      whatIf.without?.certainties === undefined ? answer === truth : withoutWeights(answer) === withoutWeights(truth);
    if (!isSame) return { seed, question: question.says, whatIf: JSON.stringify(whatIf), answer, truth };
  }
  return undefined;
}

/** The same for a basis: where others count, a store is asked in which these count by default. */
export async function firstWrongUnderBasis(
  open: () => Promise<GraphStore>,
  graphs: number,
  from: number,
  spoil: (basis: NonNullable<WhatIf['basis']>) => NonNullable<WhatIf['basis']> = basis => basis,
): Promise<Wrong | undefined> {
  for (let seed = from; seed < from + graphs; seed++) {
    const roll = dice(seed);
    const changes = [firstRows(roll), nextRows(roll)];
    const store = await open();
    await writeAll(store, changes);
    const basis = {
      stances: (['HELD', 'WEIGHED', 'REJECTED'] as const).filter((_, i) => i === 1 || roll.chance(0.5)),
      certaintyAtLeast: roll.pick(certainties),
    };
    const there = memoryStore();
    await writeAll(
      there,
      changes.map(rows => asDefault(rows, basis)),
    );
    const graph = await askStore(store).given({ basis: spoil(basis) });
    const now = { questions: askStore(there), store: there };
    for (const question of randomQuestions(6, roll)) {
      const answers = [await answerText(graph, question), await answerText(now, question)];
      const [answer = '', truth = ''] = answers.map(withoutWeights);
      if (answer !== truth) return { seed, question: question.says, whatIf: JSON.stringify({ basis }), answer, truth };
    }
    await store.close();
  }
  return undefined;
}

/** What is left out by its certainty is no less standing; the words for the basis are others. */
function withoutWeights(answer: string): string {
  return answer.replace(/,?"(?:standing|stance|certainty)":"[A-Z]+"/g, '').replace(/"basis":"claims[^"]*"/g, '');
}
