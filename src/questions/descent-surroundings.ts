import type { LinkedRecords } from '../domain/descent/linked-records.ts';
import { deepestWalk } from '../domain/descent/walk-steps.ts';
import type { Basis } from '../domain/model/counted.ts';
import type { ClaimOf, RecordOf } from '../domain/model/row.ts';
import type { GraphStore, Via } from '../store/graph-store.ts';
import { FoundRows } from './found-rows.ts';

/** Editions with their works and plates, and the claims about them. */
export type DescentFound = LinkedRecords;

const aboutEditions: readonly Via[] = [
  { kind: 'Dating', name: 'of' },
  { kind: 'Appearance', name: 'edition' },
  { kind: 'PartOf', name: 'part' },
  { kind: 'Sequence', name: 'earlier' },
  { kind: 'Sequence', name: 'later' },
];

const aboutPlates: readonly Via[] = [
  { kind: 'Dating', name: 'of' },
  { kind: 'PrintedFrom', name: 'picture' },
  { kind: 'Copying', name: 'copy' },
];

/** Asks the store five times, however much there is. */
export async function descentSurroundings(
  store: GraphStore,
  editions: readonly RecordOf<'Edition'>[],
  descents: readonly ClaimOf<'EditionDescent'>[],
  basis: Basis,
): Promise<DescentFound> {
  const found = new FoundRows([...editions, ...descents]);
  found.take(
    (
      await store.linked(
        editions.map(edition => edition.id),
        aboutEditions,
      )
    ).flat(),
  );
  const plates = found.missing(found.rows().flatMap(row => (row.kind === 'Appearance' ? [row.plate] : [])));
  const [about, rows] = await Promise.all([
    store.linked(plates, aboutPlates),
    store.rows([...plates, ...found.missing(editions.map(edition => edition.work))]),
  ]);
  found.take([...about.flat(), ...rows]);
  const surfaces = found.claims().flatMap(claim => (claim.kind === 'PrintedFrom' ? [claim.matrix] : []));
  const cast = await store.walk({
    from: [...new Set(surfaces)],
    steps: ['Casting'],
    direction: 'SOURCES',
    depth: deepestWalk,
    limit: Math.max(1, 2 * surfaces.length),
    basis,
  });
  found.take([...cast.records, ...cast.claims]);
  found.take(await store.rows(found.missing(found.claims().flatMap(claim => claim.alternativeTo ?? []))));
  return { records: found.records(), claims: found.claims() };
}
