import { defaultBasis } from '../domain/model/counted.ts';
import { foundBy } from '../domain/model/found-by.ts';
import { isRecordKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRow, RecordOf, Stamped } from '../domain/model/row.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { StoreFault } from './check-store.ts';
import { editionWindow, windowLinks } from './edition-window.ts';
import type { WindowCounts } from './window-counts.ts';
import { daysText, editionWindowText } from './window-text.ts';

/**
 * Orders of records, days of datings and windows of editions that do not follow from what the store says now.
 * @param rebuild what is wrong is about to be made anew: the counts are of what should be, not of what is
 */
export async function wrongDerived(
  store: GraphStore,
  rows: readonly Stamped<AnyRow>[],
  rebuild: boolean,
  counts: WindowCounts,
): Promise<readonly StoreFault[]> {
  const windows = await windowsBeside(store, rows);
  for (const { stored, expected } of windows) counts.add(rebuild ? expected : stored);
  return [
    ...(await wrongOrders(store, rows)),
    ...(await wrongDays(store, rows)),
    ...windows.flatMap(({ stored, expected }) => {
      const found = stored === undefined ? '(none)' : editionWindowText(stored);
      const right = editionWindowText(expected);
      const message = `stands among days of publication ${found}, expected ${right}`;
      return found === right ? [] : [{ id: expected.edition, message }];
    }),
  ];
}

async function wrongOrders(store: GraphStore, rows: readonly Stamped<AnyRow>[]): Promise<readonly StoreFault[]> {
  const records = rows.filter(row => isRecordKind(row.kind));
  const sorts = await store.sortKeysOf(records.map(row => row.id));
  return records.flatMap((row, i) => {
    const { sort } = foundBy(row);
    if (sorts[i] === sort) return [];
    return [{ id: row.id, message: `is ordered by "${sorts[i] ?? ''}", expected "${sort ?? ''}"` }];
  });
}

async function wrongDays(store: GraphStore, rows: readonly Stamped<AnyRow>[]): Promise<readonly StoreFault[]> {
  const datings = rows.filter(row => row.kind === 'Dating');
  const days = await store.datedDaysOf(datings.map(row => row.id));
  return datings.flatMap((row, i) => {
    const { days: expected } = foundBy(row);
    const [found, right] = [days[i], expected].map(each => (each === undefined ? '(none)' : daysText(each)));
    return found === right ? [] : [{ id: row.id, message: `is found by days ${found}, expected ${right}` }];
  });
}

async function windowsBeside(store: GraphStore, rows: readonly Stamped<AnyRow>[]) {
  const editions = rows.filter(row => row.kind === 'Edition') as unknown as readonly RecordOf<'Edition'>[];
  const ids = editions.map(edition => edition.id);
  const [stored, claims, works] = await Promise.all([
    store.windowsOf(ids),
    store.linked(ids, windowLinks),
    store.rows(editions.map(edition => edition.work)),
  ]);
  return editions.map((edition, i) => {
    const work = works[i] as RecordOf<'Work'> | undefined;
    const expected = editionWindow(edition, work, claims[i] as readonly AnyClaim[], defaultBasis);
    return { stored: stored[i], expected };
  });
}
