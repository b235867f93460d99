import neo4j from 'neo4j-driver';
import { linkKind } from '../../domain/model/links.ts';
import type { AnyRow, Stamped } from '../../domain/model/row.ts';
import { compareText } from '../../domain/text/compare.ts';
import type { Around, Surroundings } from '../graph-store.ts';
import { surroundingsText } from './around-statements.ts';
import type { Ask, Values } from './connection.ts';
import { decodeRow, type ReadProperties } from './row-codec.ts';

/** Stands for any number of rows. */
const anyNumber = Number.MAX_SAFE_INTEGER;

type ReadRounds = readonly (readonly ReadProperties[])[];

/** What stands around rows now, by one statement. */
export async function surroundings(ask: Ask, ids: readonly string[], around: Around): Promise<Surroundings> {
  const { rounds } = knownIn(around);
  const [found] = await ask<[readonly ReadProperties[], ReadRounds]>(surroundingsText(rounds), {
    ids,
    ...roundsValues(around),
  });
  const own = rowsById(found![0]);
  return { own, rounds: roundsOf(found![1], around) };
}

/** Only links that there are: the names of others are none in the database. */
export function knownIn(around: Around): Around {
  const rounds = around.rounds.map(via => via.filter(({ kind, name }) => linkKind(kind, name) !== undefined));
  return { ...around, rounds };
}

export function roundsValues({ most = anyNumber }: Around): Values {
  return { most: neo4j.int(most) };
}

/** @param found rounds, of which those that were left out come empty */
export function roundsOf(found: ReadRounds, { most = anyNumber }: Around): Surroundings['rounds'] {
  const last = found.findIndex(round => round.length > most);
  return (last < 0 ? found : found.slice(0, last + 1)).map(rowsById);
}

function rowsById(properties: readonly ReadProperties[]): Stamped<AnyRow>[] {
  return properties.map(decodeRow).sort((a, b) => compareText(a.id, b.id));
}
