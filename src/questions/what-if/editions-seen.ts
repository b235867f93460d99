import type { Basis } from '../../domain/model/counted.ts';
import type { AnyClaim, RecordOf } from '../../domain/model/row.ts';
import type { EditionWindow, GraphStore } from '../../store/graph-store.ts';
import { editionWindow, windowLinks } from '../edition-window.ts';

/** An edition with the claims about it, and the window that follows from them. */
export interface EditionSeen {
  readonly edition: RecordOf<'Edition'>;
  readonly claims: readonly AnyClaim[];
  readonly window: EditionWindow;
}

/** Works windows out from claims, as a store keeps them for the graph as it is now under the default basis. */
export async function editionsSeen(
  store: Pick<GraphStore, 'rows' | 'linked'>,
  editions: readonly RecordOf<'Edition'>[],
  basis: Basis,
): Promise<readonly EditionSeen[]> {
  const [found, rows] = await Promise.all([
    store.linked(
      editions.map(({ id }) => id),
      windowLinks,
    ),
    store.rows([...new Set(editions.map(({ work }) => work))]),
  ]);
  const works = new Map(rows.flatMap(row => (row?.kind === 'Work' ? [[row.id, row]] : [])));
  return editions.map((edition, i) => {
    const claims = found[i] as readonly AnyClaim[];
    return { edition, claims, window: editionWindow(edition, works.get(edition.work), claims, basis) };
  });
}
