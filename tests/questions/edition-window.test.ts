import { expect, test } from 'vitest';
import { parseDay } from '../../src/domain/dates/calendar.ts';
import type { RecordOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { demoStore } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';
import { testWorld } from '../support/test-world.ts';

const edition = 'edition-views-leipzig-1779';
const about = { 'dating-views-leipzig-1779': { date: '1779~' } };
const slackOfYears = (years: number): RecordOf<'Convention'> => ({
  id: 'convention-slack-of-years',
  kind: 'Convention',
  key: 'date.slack.year',
  value: years,
  unit: 'y',
  source: 'convention',
  version: 2,
});
const days = (from: string, to: string) => [expect.objectContaining({ first: parseDay(from), last: parseDay(to) })];

describeOnEngines('the days of publication of an edition in %s', engine => {
  test('lie as far around an approximate year as the conventions of the program say', async () => {
    const store = await demoStore(engine, about);
    expect(await store.windowsOf([edition])).toEqual(days('1774-01-01', '1784-12-31'));
    await store.close();
  });

  test('lie as far as a convention says that is written with it', async () => {
    const store = await demoStore(engine, about, [slackOfYears(1)]);
    expect(await store.windowsOf([edition])).toEqual(days('1778-01-01', '1780-12-31'));
    expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([]);
    await store.close();
  });

  test('lie as far as a convention of the store says, and are made anew where it came later', async () => {
    const store = await demoStore(engine, about);
    const changeSet = { moment: '2026-02-01T00:00:00.000Z', who: 'Ada', why: 'narrower years' };
    const convention = slackOfYears(2);
    await applyChanges(store, { rows: [convention], added: new Set([convention.id]), changeSet });
    const { faults } = await checkStore(store, testWorld(), { rebuild: true });
    expect(faults.map(({ id }) => id)).toEqual(['dating-views-leipzig-1779', edition]);
    expect(await store.windowsOf([edition])).toEqual(days('1777-01-01', '1781-12-31'));

    await applyChanges(store, { rows: [{ ...convention, value: 3, version: 3 }], added: new Set(), changeSet });
    const [stamped] = await store.rows([edition]);
    const { since: _since, until: _until, ...row } = stamped!;
    await applyChanges(store, {
      rows: [{ ...row, extent: '12 plates' } as RecordOf<'Edition'>],
      added: new Set(),
      changeSet,
    });
    expect(await store.windowsOf([edition])).toEqual(days('1776-01-01', '1782-12-31'));
    await store.close();
  });
});
