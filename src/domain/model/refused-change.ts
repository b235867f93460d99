import { PlatestemmaError } from '../../errors.ts';

/** A change names what is not there. */
export function notThere(id: string): PlatestemmaError {
  return new PlatestemmaError(
    'NOT_FOUND',
    `expected the id of a row that is in the store or in the same change, came "${id}"`,
    { place: { key: id } },
  );
}

/** A change is made from a version that is not the newest. @param since change set of the newest, if there is one */
export function movedOn(id: string, seen: number, since: number | undefined): PlatestemmaError {
  const now = since === undefined ? 'it is not there now' : `its newest is of change set ${since}`;
  return new PlatestemmaError('REVISION_MOVED', `${id}: expected its version of change set ${seen}, but ${now}`, {
    place: { key: id },
  });
}

/** A change takes out what a row that stays names. */
export function stillNamed(id: string, by: string): PlatestemmaError {
  return new PlatestemmaError('STILL_NAMED', `"${id}" cannot be taken out: ${by} names it`, { place: { key: id } });
}
