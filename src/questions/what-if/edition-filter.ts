import { type Basis, counts } from '../../domain/model/counted.ts';
import type { AnyClaim } from '../../domain/model/row.ts';
import { traitsPass } from '../../domain/reach/traits-pass.ts';
import type { EditionFilter, GraphStore } from '../../store/graph-store.ts';
import type { EditionSeen } from './editions-seen.ts';

/** Those of some editions that pass a filter, where claims count as a basis has it. */
export async function editionsThatPass(
  store: Pick<GraphStore, 'linked'>,
  editions: readonly EditionSeen[],
  filter: EditionFilter,
  basis: Basis,
): Promise<readonly EditionSeen[]> {
  const { work, place, subject } = filter;
  const passing = editions.filter(
    ({ edition, claims, window }) =>
      traitsPass(filter, window) &&
      (work === undefined || edition.work === work) &&
      (place === undefined || claims.some(claim => names(claim, place) && counts(claim, basis))),
  );
  if (subject === undefined || passing.length === 0) return passing;
  return withSubject(store, passing, subject, basis);
}

function names(claim: AnyClaim, place: string): boolean {
  return claim.kind === 'Imprint' && claim.place === place;
}

/** Depicted with a notation or a narrower one: the edition, its work, or a plate that is present in it. */
async function withSubject(
  store: Pick<GraphStore, 'linked'>,
  editions: readonly EditionSeen[],
  subject: string,
  basis: Basis,
): Promise<readonly EditionSeen[]> {
  const ids = editions.map(({ edition }) => edition.id);
  const appearances = await store.linked(ids, [{ kind: 'Appearance', name: 'edition' }]);
  const pictures = editions.map(({ edition }, i) => [
    edition.id,
    edition.work,
    ...appearances[i]!.flatMap(row =>
      row.kind === 'Appearance' && row.presence === 'PRESENT' && counts(row, basis) ? [row.plate] : [],
    ),
  ]);
  const all = [...new Set(pictures.flat())];
  const depictions = await store.linked(all, [{ kind: 'Depiction', name: 'picture' }]);
  const depicted = new Set(
    depictions
      .flat()
      .flatMap(row =>
        row.kind === 'Depiction' && row.iconclass?.startsWith(subject) === true && counts(row, basis)
          ? [row.picture]
          : [],
      ),
  );
  return editions.filter((_, i) => pictures[i]!.some(id => depicted.has(id)));
}
