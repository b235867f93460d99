import { counts } from '../../domain/model/counted.ts';
import { labelOf } from '../../domain/model/label.ts';
import type { AnyRecord, AnyRow, ClaimOf, RecordOf } from '../../domain/model/row.ts';
import { type Planned, saidOf } from './act-parts.ts';
import { dated } from './dated.ts';
import type { Draft } from './draft.ts';
import type { GivenSame, SamePlate } from './plan-same-plates.ts';
import { refusal } from './refusal.ts';

export interface PlannedStates {
  /** The new state by the id of the plate. */
  readonly of: ReadonlyMap<string, string>;
  readonly planned: Planned;
}

/** Whether anything is said of a new state. */
export function saysOfState(given: GivenSame, same: readonly SamePlate[]): boolean {
  const { newState, changes, lettering, order, made, madeAsWritten, madeBasis, matrixForm } = given;
  const all = [changes, lettering, order, made, madeAsWritten, madeBasis, matrixForm];
  const isSaid = all.some(value => value !== undefined) || same.some(({ said }) => said.changes ?? said.lettering);
  if (isSaid && newState === false) throw refusal('newState', 'expected yes, or nothing said of a new state, came no');
  return isSaid || newState === true;
}

/** A new state of the printing surface of each plate. A surface is made where none is recorded. */
export async function planStates(same: readonly SamePlate[], given: GivenSame, draft: Draft): Promise<PlannedStates> {
  const said = saidOf(given);
  const made = dated('madeAsWritten', given.made, given.madeAsWritten, given.madeBasis);
  const surfaces = await surfacesOf(same, draft);
  const bare = same.filter(({ id }) => surfaces.get(id) === undefined);
  const captions = await captionsOf(bare, draft);
  const matrices = bare.map((_, i) => draft.add('Matrix', { form: given.matrixForm, labels: captions[i] }));
  const printings = bare.map(({ id }, i) => ({ picture: id, matrix: matrices[i]! }));
  const matrixOf = new Map([...surfaces, ...bare.map(({ id }, i) => [id, matrices[i]!] as const)]);
  const states = await newStates(same, matrixOf, given, draft);
  const of = new Map(same.map(({ id }, i) => [id, states[i]!]));
  const datings =
    made === undefined ? [] : [...new Set(states)].map(state => ({ of: state, event: 'MADE' as const, ...made }));
  return {
    of,
    planned: {
      matrices,
      printings: await draft.claims('PrintedFrom', printings, said),
      states: [...new Set(states)],
      datings: await draft.claims('Dating', datings, said),
    },
  };
}

/** The one surface that each plate was printed from, by claims that count. @throws INPUT_INVALID if there are several */
async function surfacesOf(same: readonly SamePlate[], { store }: Draft): Promise<ReadonlyMap<string, string>> {
  const ids = same.map(({ id }) => id);
  const found = await store.linked(ids, [{ kind: 'PrintedFrom', name: 'picture' }]);
  const surfaces = new Map<string, string>();
  for (const [i, rows] of found.entries()) {
    const claims = rows.filter((row): row is typeof row & ClaimOf<'PrintedFrom'> => row.kind === 'PrintedFrom');
    const matrices = [...new Set(claims.filter(claim => counts(claim)).map(({ matrix }) => matrix))];
    if (matrices.length > 1)
      throw refusal(
        'except',
        `expected plates of one printing surface each, came "${ids[i]}", which has ${matrices.join(' and ')}`,
      );
    if (matrices[0] !== undefined) surfaces.set(ids[i]!, matrices[0]);
  }
  return surfaces;
}

async function captionsOf(plates: readonly SamePlate[], { store }: Draft) {
  const rows = await store.rows(plates.map(({ id }) => id));
  return rows.map(row => {
    const text = row === undefined ? undefined : labelOf(row as AnyRow as AnyRecord);
    return text === undefined ? undefined : [{ text }];
  });
}

/** Plates of one surface share its state. */
async function newStates(
  same: readonly SamePlate[],
  matrixOf: ReadonlyMap<string, string>,
  given: GivenSame,
  draft: Draft,
): Promise<readonly string[]> {
  const matrices = [...new Set(matrixOf.values())];
  const found = await draft.store.linked(matrices, [{ kind: 'State', name: 'matrix' }]);
  const last = new Map(
    matrices.map((matrix, i) => [matrix, Math.max(1, ...found[i]!.map(row => (row as RecordOf<'State'>).order))]),
  );
  const made = new Map<string, string>();
  return same.map(({ id, said }) => {
    const matrix = matrixOf.get(id)!;
    const order = given.order ?? last.get(matrix)! + 1;
    if (
      given.order !== undefined &&
      found[matrices.indexOf(matrix)]!.some(row => (row as RecordOf<'State'>).order === order)
    )
      throw refusal('order', `expected a state that is not recorded, came ${order}, which "${matrix}" has`);
    const state =
      made.get(matrix) ??
      draft.add('State', {
        ...{ matrix, order },
        lettering: said.lettering ?? given.lettering,
        changes: said.changes ?? given.changes,
      });
    made.set(matrix, state);
    return state;
  });
}
