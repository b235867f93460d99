import { expect, test } from 'vitest';
import { formatDay } from '../../src/domain/dates/calendar.ts';
import type { RecordOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { reach } from '../../src/questions/reach.ts';
import { search } from '../../src/questions/search.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { demoStore } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';
import { testWorld } from '../support/test-world.ts';

const edition = 'edition-views-leipzig-1779';
const dating = 'dating-views-leipzig-1779';
const about = { [dating]: { date: '1779~' } };
const changeSet = { moment: '2026-02-01T00:00:00.000Z', who: 'Ada', why: 'narrower years' };

function convention(key: string, value: unknown): RecordOf<'Convention'> {
  return { id: 'convention-of-tests', kind: 'Convention', key, value, source: 'convention', version: 2 };
}

/** The days by which the edition is ordered, and whether it is found by a year. */
async function seen(store: GraphStore, year: string): Promise<readonly [string, string, boolean]> {
  const asked = { at: { placeName: 'Leipzig' }, by: '1790', page: { first: 99 }, order: 'DATE' } as const;
  const { rows } = await reach(store, asked);
  const { position } = rows.items.find(({ item }) => item.edition === edition)!;
  if (position.order !== 'DATE') throw new Error('expected the order of dates');
  const { hits } = await search(store, { dates: year, kinds: ['Edition'], page: { first: 99 } });
  const isFound = hits.items.some(({ item }) => item.id === edition);
  return [formatDay(position.first), formatDay(position.last), isFound];
}

describeOnEngines('the days of publication of an edition in %s', engine => {
  test('are kept as a date where they rest on how approximate dates are read', async () => {
    const store = await demoStore(engine, about);
    const [window] = await store.windowsOf([edition]);
    expect(window).toMatchObject({ dateClass: 'IMPRINT' });
    expect(JSON.parse(window!.detail!)).toEqual({ datings: [{ date: '1779~', imprint: true }], accesses: [] });
    expect(Object.keys(window!)).not.toContain('first');
    expect(await store.datedDaysOf([dating])).toEqual(['1779~']);
    await store.close();
  });

  test('are read by the conventions in force, whatever was in force when they were written', async () => {
    const store = await demoStore(engine, about);
    const before = [await store.windowsOf([edition]), await store.datedDaysOf([dating])];
    const row = convention('date.slack.year', 1);
    expect(await seen(store, '1774')).toEqual(['1774-01-01', '1784-12-31', true]);

    await applyChanges(store, { rows: [row], added: new Set([row.id]), changeSet });
    expect(await seen(store, '1774')).toEqual(['1778-01-01', '1780-12-31', false]);
    expect(await seen(store, '1778')).toEqual(['1778-01-01', '1780-12-31', true]);
    expect([await store.windowsOf([edition]), await store.datedDaysOf([dating])]).toEqual(before);
    expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([]);
    await store.close();
  });
});
