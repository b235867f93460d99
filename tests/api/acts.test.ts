import { beforeAll, expect, test } from 'vitest';
import { type Api, createApi } from '../../src/api/create-api.ts';
import { type ActName, actNames, acts } from '../../src/domain/acts/acts.ts';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import { exportGraph } from '../../src/questions/export-graph.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { actCases } from '../support/act-cases.ts';
import { describeOnEngines, type Engine } from '../support/describe-on-engines.ts';
import { faultyStore } from '../support/faulty-store.ts';
import { rowsPut } from '../support/readable-rows.ts';
import { changed } from '../support/store-faults/fault.ts';
import { testWorld } from '../support/test-world.ts';
import { type Answer, ask, data } from './ask.ts';
import { demoApi } from './demo-api.ts';

/** Does an act as a client would. */
async function record(api: Api, act: ActName, input: object): Promise<Answer> {
  const type = `${act.charAt(0).toUpperCase()}${act.slice(1)}Input`;
  const answers = Object.keys(acts[act].answers).map(name => `${name} { ... on Node { id } }`);
  const query = `mutation ($input: ${type}!) { ${act}(input: $input) { ${answers.join(' ')} changeSet problems { code } } }`;
  return ask(api, query, { input });
}

async function done(api: Api, act: ActName, input: object): Promise<Done> {
  const { data, errors } = await record(api, act, input);
  if (errors !== undefined) throw new Error(errors.map(({ message }) => message).join('; '));
  return (data as Record<string, Done>)[act]!;
}

type Done = Readonly<Record<string, readonly object[] | object | null>> & {
  readonly changeSet: number;
  readonly problems: readonly unknown[];
};

async function bytes(store: GraphStore): Promise<string> {
  const lines: string[] = [];
  for await (const line of exportGraph(store)) lines.push(line);
  return lines.join('\n');
}

/** A server that has just started takes its time: it plans each statement once. */
const patient = { limits: { time: 60_000 } };

async function warm(engine: Engine): Promise<void> {
  for (let tries = 0; tries < 5; tries++) {
    const { api, store } = await demoApi(patient, engine);
    const { errors } = await record(api, 'recordPiece', actCases[0]!.given);
    await store.close();
    if (errors === undefined) return;
  }
}

test('every act has a case', () => {
  expect(actCases.map(({ act }) => act)).toEqual(actNames);
});

describeOnEngines('acts through the API in %s', engine => {
  beforeAll(async () => {
    if (engine === 'Neo4j') await warm(engine);
  });

  test.each(actCases)(
    '$act writes its rows in one change set, and undone all is as it was',
    async ({ act, given, rows, answers }) => {
      const { api, store } = await demoApi(patient, engine);
      const before = await bytes(store);
      const last = await store.lastChangeSet();
      const { changeSet, problems, ...found } = await done(api, act, {
        ...given,
        signed: { who: 'Ada', why: 'a find' },
      });
      expect([changeSet, problems]).toEqual([last + 1, []]);
      expect(await rowsPut(store, changeSet)).toEqual(rows);
      expect((await store.changeSets([changeSet]))[0]).toMatchObject({ who: 'Ada', why: 'a find' });
      const counted = Object.entries(found).map(([name, value]) => [name, value === null ? 0 : [value].flat().length]);
      expect(Object.fromEntries(counted)).toEqual(answers);

      expect(await bytes(store)).not.toBe(before);
      await data(api, `mutation { undo(changeSet: ${changeSet}) { undone removed } }`);
      expect(await bytes(store)).toBe(before);
      await store.close();
    },
  );

  test.each(actCases)('$act writes nothing where the last of its rows cannot be written', async ({ act, given }) => {
    const { api, store } = await brokenApi(engine);
    const [before, last] = [await bytes(store), await store.lastChangeSet()];
    const { errors = [] } = await record(api, act, given);
    expect(errors.map(({ extensions }) => extensions?.['code'])).toEqual(['NOT_FOUND']);
    expect([await bytes(store), await store.lastChangeSet()]).toEqual([before, last]);
    await store.close();
  });

  test('what is said already is not said again', async () => {
    const { api, store } = await demoApi(patient, engine);
    const again: readonly ActName[] = ['recordCopies', 'recordLooking'];
    for (const { act, given } of actCases.filter(({ act }) => again.includes(act))) {
      const { changeSet, ...first } = await done(api, act, given);
      const { changeSet: last, ...second } = await done(api, act, given);
      expect([last, second]).toEqual([changeSet, first]);
    }
    const same = { edition: 'edition-shore-london-1764', as: 'edition-shore-amsterdam-1768' };
    const { appearances } = await done(api, 'recordSamePlates', same);
    expect(appearances).toEqual([{ id: 'appearance-menders-london-1764' }]);
    // Another person says the same.
    const { changeSet } = await done(api, 'recordSamePlates', { ...same, by: 'Berta' });
    expect(await rowsPut(store, changeSet)).toEqual({
      'appearance 1': {
        ...{
          plate: 'plate-shore-4-net-menders',
          edition: 'edition-shore-london-1764',
          presence: 'PRESENT',
          number: '4',
        },
        by: 'Berta',
      },
    });
    await store.close();
  });

  test('contradictions that an act brings are told, and never refused', async () => {
    const { api, store } = await demoApi(patient, engine);
    const { problems, changeSet } = await done(api, 'recordPiece', {
      ...{ pieceName: 'Mug', motif: 'A pilot', picture: 'plate-pilot-mezzotint', decorated: '1770' },
    });
    expect([changeSet, problems]).toEqual([2, [{ code: 'DATES' }]]);
    await store.close();
  });
});

/** An API that gives its store one row too many with whatever it writes: a claim that names nothing. */
async function brokenApi(engine: Engine): Promise<{ readonly api: Api; readonly store: GraphStore }> {
  const { store, questions } = await demoApi(patient, engine);
  const row = { id: 'copying-of-nothing', kind: 'Copying', copy: 'plate-that-is-none', source: 'plate-that-is-none' };
  const broken = faultyStore(store, {
    fault: 'one row too many',
    spoil: s => changed(s, batch => ({ ...batch, put: [...batch.put, { row: row as AnyRow, isNew: true }] })),
  });
  const api = createApi({ store, questions, commands: commandStore(broken, testWorld(7)), log: () => {}, ...patient });
  return { api, store };
}
