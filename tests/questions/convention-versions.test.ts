import { expect, test } from 'vitest';
import { conventionId } from '../../src/domain/conventions/convention-use.ts';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import type { Commands } from '../../src/questions/commands.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { engines } from '../support/demo-store.ts';
import { describeOnEngines, type Engine } from '../support/describe-on-engines.ts';
import { testWorld } from '../support/test-world.ts';

const kind = 'Convention';
const key = 'imprintAhead';
const id = conventionId(key);
const signed = { who: 'Ada', why: 'a find' };

interface Desk {
  readonly store: GraphStore;
  readonly commands: Commands;
  /** Value and version in force, now or as of a change set. */
  inForce(key: string, changeSet?: number): Promise<readonly [unknown, number]>;
}

async function desk(engine: Engine): Promise<Desk> {
  const store = checkedGraphStore(await engines[engine]());
  return {
    store,
    commands: commandStore(store, testWorld(5)),
    inForce: async (name, changeSet) => {
      const asOf = changeSet === undefined ? {} : { asOf: { changeSet } };
      const { questions } = await askStore(store).given(asOf);
      const found = (await questions.conventions()).find(each => each.key === name);
      return [found?.value, found?.version ?? 0];
    },
  };
}

const route = {
  ...{ from: { name: 'Delft', codes: ['ne'] }, to: { name: 'Leipzig', codes: ['gw'] } },
  ...{ bothWays: true, years: [null, 1800], least: 4, most: 90 },
};

describeOnEngines('the version of a convention in %s', engine => {
  test('counts up by itself with each change of it, from that of the program, and goes on when old values come back', async () => {
    const { store, commands, inForce } = await desk(engine);
    expect(await inForce(key)).toEqual([60, 1]);
    const added = await commands.add({ kind, fields: { key, value: 90, source: 'Bo' } }, signed);
    expect(added.row).toMatchObject({ id, version: 2 });
    const edited = await commands.edit({ id, fields: { value: 30 } }, signed);
    expect(await inForce(key)).toEqual([30, 3]);

    await commands.undo({ changeSet: edited.changeSet }, signed);
    expect(await inForce(key)).toEqual([90, 4]);
    expect((await commands.undo({ changeSet: edited.changeSet }, signed)).undone).toEqual([]);
    await commands.withdraw({ id }, signed);
    expect(await inForce(key)).toEqual([60, 1]);
    await commands.restore({ id }, signed);
    expect(await inForce(key)).toEqual([90, 5]);
    await commands.withdraw({ id }, signed);
    await commands.setConvention({ key, value: 7 }, signed);
    expect(await inForce(key)).toEqual([7, 6]);

    const last = await store.lastChangeSet();
    const told = await Promise.all(Array.from({ length: last + 1 }, (_, i) => inForce(key, i)));
    expect(told).toEqual([
      ...[
        [60, 1],
        [90, 2],
        [30, 3],
        [90, 4],
        [60, 1],
        [90, 5],
        [60, 1],
      ],
      [7, 6],
    ]);
    expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([]);
    await store.close();
  });

  test('is not changed by what changes nothing', async () => {
    const { store, commands, inForce } = await desk(engine);
    const { changeSet } = await commands.setConvention({ key, value: 7, source: 'Bo' }, signed);
    expect((await commands.setConvention({ key, value: 7, source: 'Bo' }, signed)).changeSet).toBe(changeSet);
    expect((await commands.edit({ id, fields: { value: 7 } }, signed)).changeSet).toBe(changeSet);
    expect(await inForce(key)).toEqual([7, 2]);
    expect((await commands.setConvention({ key, value: 7, source: 'Ada' }, signed)).row).toMatchObject({ version: 3 });
    await store.close();
  });

  test('is taken by hand where it follows, and refused where it does not', async () => {
    const { store, commands } = await desk(engine);
    const refusal = (field: string, message: string) => ({ code: 'INPUT_INVALID', message, place: { key: id, field } });
    const follows = (version: number, came: number) =>
      refusal('version', `${id}, field version: expected version ${version}, which follows, or none, came ${came}`);
    const fields = { key, value: 90, source: 'Bo' };
    await expect(commands.add({ kind, fields: { ...fields, version: 1 } }, signed)).rejects.toMatchObject(
      follows(2, 1),
    );
    await commands.add({ kind, fields: { ...fields, version: 2 } }, signed);
    await expect(commands.edit({ id, fields: { value: 1, version: 4 } }, signed)).rejects.toMatchObject(follows(3, 4));
    await expect(commands.edit({ id, fields: { value: 1, version: 2 } }, signed)).rejects.toMatchObject(follows(3, 2));
    expect((await commands.edit({ id, fields: { value: 1, version: 3 } }, signed)).row).toMatchObject({ version: 3 });
    expect(await store.lastChangeSet()).toBe(2);
    await store.close();
  });

  test('is of one record of a key alone', async () => {
    const { store, commands } = await desk(engine);
    const fields = { key, value: 90, source: 'Bo' };
    await commands.add({ kind, fields }, signed);
    await expect(commands.add({ kind, fields }, signed)).rejects.toMatchObject({
      code: 'INPUT_INVALID',
      message: `expected a key without a record, came "imprintAhead", which ${id} has: edit it`,
    });
    await expect(commands.add({ kind, id: 'convention-of-mine', fields }, signed)).rejects.toMatchObject({
      message: `convention-of-mine, field id: expected the id "${id}", which belongs to the key "imprintAhead", came "convention-of-mine"`,
    });
    await expect(commands.edit({ id, fields: { key: 'copy.minLag' } }, signed)).rejects.toMatchObject({
      message: `${id}, field key: expected the key "imprintAhead", which the record has, came "copy.minLag"`,
    });
    expect(await store.lastChangeSet()).toBe(1);
    await store.close();
  });

  test('of a route that is new begins with 1', async () => {
    const { store, commands, inForce } = await desk(engine);
    await commands.setConvention({ key: 'route.delft-leipzig', value: route }, signed);
    expect(await inForce('route.delft-leipzig')).toEqual([route, 1]);
    await commands.setConvention({ key: 'route.delft-leipzig', value: { ...route, least: 5 } }, signed);
    expect((await inForce('route.delft-leipzig'))[1]).toBe(2);
    await store.close();
  });

  test('may be any that is new where a graph file brings it, and goes on from there', async () => {
    const { store, commands, inForce } = await desk(engine);
    const line = (version: number, value: number, more = {}) =>
      JSON.stringify({ id, kind, key, value, source: 'a file', version, ...more });
    expect(await taken(store, line(1, 60))).toEqual([]);
    expect(await taken(store, line(1, 61))).toEqual([
      `${id}, field version: expected a version above 1, came 1 with another value`,
    ]);
    expect(await taken(store, line(5, 61))).toEqual([]);
    expect(await taken(store, line(4, 61))).toEqual([`${id}, field version: expected version 5 or more, came 4`]);
    expect(await taken(store, line(6, 7, { id: 'convention-of-mine' }))).toEqual([
      `convention-of-mine, field id: expected the id "${id}", which belongs to the key "imprintAhead", came "convention-of-mine"`,
    ]);
    expect(await inForce(key)).toEqual([61, 5]);
    await commands.setConvention({ key, value: 8 }, signed);
    expect(await inForce(key)).toEqual([8, 6]);
    expect(await taken(store, line(5, 61))).toEqual([
      `${id} differs from the file in source, value, version, and was changed here since it was taken: left as it is`,
    ]);
    await store.close();
  });

  test('that stands for two values, or is that of a second record, is found by a check', async () => {
    const { store } = await desk(engine);
    const row = { id, kind, key, value: 61, source: 'by force', version: 2 } as const;
    await writeRows(store, [row]);
    const changeSet = { moment: '2026-03-01T00:00:00.000Z', who: 'Bo', why: 'by force' };
    await applyChanges(store, { rows: [{ ...row, value: 62 }], added: new Set(), changeSet });
    await writeRows(store, [{ ...row, id: 'convention-of-mine', value: 63 }]);
    await writeRows(store, [{ ...row, id: 'convention-of-shares', key: 'share.cap', value: 'none' }]);
    expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([
      { id, message: 'version 2 stands for two values' },
      { id: 'convention-of-mine', message: `has the key "imprintAhead", which ${id} has too` },
      expect.objectContaining({
        id: 'convention-of-shares',
        message: expect.stringMatching(/^field key: .*no answer gives shares$/),
      }),
    ]);
    await store.close();
  });
});

/** Messages of what a graph file of one line is refused for. */
async function taken(store: GraphStore, line: string): Promise<readonly string[]> {
  const bytes = (async function* () {
    yield Buffer.from(`${line}\n`);
  })();
  const report = await applyGraphFile(store, testWorld(7), readGraphFile(bytes, {}), emptyReport('a file'), {
    ...{ intake: 'a file', who: 'Ada', why: 'a test' },
  });
  return report.problems.map(({ message }) => message);
}
