import type { AnyRow, ClaimOf } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { demoStore, type engines } from './demo-store.ts';
import { copying, plate, walkFrom } from './store-rows.ts';

export const changeSetOf = (why: string, batch?: string) => ({
  moment: '2026-02-01T00:00:00.000Z',
  who: 'Ada',
  why,
  ...(batch === undefined ? {} : { batch }),
});

/** The demo world, then edited: a claim withdrawn, a date changed twice, a plate added, and what intakes leave behind. */
export async function editedStore(engine: keyof typeof engines): Promise<GraphStore> {
  const store = await demoStore(engine);
  const edit = async (id: string, fields: object, why: string) => {
    const { since: _since, until: _until, ...row } = (await store.rows([id]))[0]!;
    await applyChanges(store, {
      rows: [{ ...row, ...fields } as AnyRow],
      added: new Set(),
      changeSet: changeSetOf(why),
    });
  };
  await edit('copying-mezzotint-drawing', { standing: 'WITHDRAWN', withdrawnBecause: 'the rope' }, 'looked again');
  await edit('dating-views-leipzig-1779', { date: '1778' }, 'a second look at the imprint');
  await edit('dating-views-leipzig-1779', { date: '1779?' }, 'and a third');
  const added = [plate('lost'), copying('lost', 'plate-of-lost', 'plate-pilot-mezzotint')];
  const origin = { source: 'DLC', key: '7' };
  await applyChanges(store, {
    rows: added,
    added: new Set(added.map(({ id }) => id)),
    changeSet: changeSetOf('a plate', 'run-7'),
    origins: [{ ...origin, id: 'plate-of-lost', digest: 'd1' }],
    await: [waiting('b'), waiting('a')],
    checkpoint: {
      intake: 'marcxml-1',
      records: 3,
      report: { taken: 2, batch: 'run-7', remarks: { 9: 'x', a: [null] } },
    },
  });
  return store;
}

function waiting(name: string) {
  const claim = { id: `copying-of-${name}`, kind: 'Copying', copy: 'plate-of-lost' } as ClaimOf<'Copying'>;
  return { origin: { source: 'DLC', key: '8' }, claim, role: 'source' };
}

/** Everything that a reader can be told, as text. */
export async function answersOf(store: GraphStore): Promise<readonly string[]> {
  const questions = askStore(store);
  const of = 'motif-table-fish-market';
  const answers: unknown[] = [
    await questions.search({ text: 'shore', page: { first: 50 } }),
    await questions.reach({ piece: 'piece-shore-dish', page: { first: 50 } }),
    await questions.lineage({ of }),
    await store.windowsOf(['edition-views-leipzig-1779']),
    await store.datedDaysOf(['dating-views-leipzig-1779']),
    await store.awaited([{ source: 'DLC', key: '8' }]),
    await store.checkpoint('marcxml-1'),
  ];
  for (let asOf = 1; asOf <= (await store.lastChangeSet()); asOf++) {
    answers.push(await store.walk(walkFrom([of], { view: { asOf } })));
  }
  return answers.map(answer => JSON.stringify(answer));
}
