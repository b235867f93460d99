import { describe, expect, test } from 'vitest';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { checkStore } from '../../src/questions/check-store.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import { exportGraph } from '../../src/questions/export-graph.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore, WriteBatch } from '../../src/store/graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { engines } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';
import { randomPlaces } from '../support/random-graph.ts';
import { edition, work } from '../support/store-rows.ts';
import { temporaryStore } from '../support/temporary-store.ts';
import { testWorld } from '../support/test-world.ts';

const signed = { who: 'Ada', why: 'a test' };

async function linesOf(store: GraphStore): Promise<string> {
  const lines: string[] = [];
  for await (const line of exportGraph(store)) lines.push(line);
  return lines.join('\n');
}

async function take(store: GraphStore, lines: string, name: string, seed = 3) {
  const bytes = (async function* () {
    yield Buffer.from(`${lines}\n`);
  })();
  const options = { intake: name, ...signed };
  return applyGraphFile(store, testWorld(seed), readGraphFile(bytes, {}), emptyReport(name), options);
}

describe('two processes that write to one file', () => {
  /** Two stores over one file, as two processes have them. */
  async function twoStores(): Promise<readonly [GraphStore, GraphStore]> {
    const file = temporaryStore();
    const one = checkedGraphStore(await openSqliteStore(file, { create: true }));
    await writeRows(one, [...randomPlaces, work('birds'), edition('a'), edition('b')]);
    return [one, checkedGraphStore(await openSqliteStore(file))];
  }

  const imprint = (of: string, place: string) => ({
    kind: 'Imprint' as const,
    fields: { edition: `edition-of-${of}`, place: `place-of-${place}`, role: 'PUBLISHER' },
  });

  test('what is derived is right after both have said something of the same edition at once', async () => {
    const [one, other] = await twoStores();
    const others = commandStore(other, testWorld(11));
    let isFirst = true;
    // The other one writes when everything is worked out, and before it is written.
    const late = new Proxy(one, {
      get(target, name) {
        if (name !== 'write') return Reflect.get(target, name);
        return async (batch: WriteBatch) => {
          if (isFirst) {
            isFirst = false;
            await others.add(imprint('a', 'leipzig'), signed);
          }
          return target.write(batch);
        };
      },
    });
    await commandStore(late, testWorld(10)).add(imprint('a', 'london'), signed);
    const { faults, changeSets } = await checkStore(one, testWorld(), { rebuild: false });
    expect([faults, changeSets]).toEqual([[], 3]);
    for (const store of [one, other]) await store.close();
  });

  test('one of two edits of the same version is told that the row has moved', async () => {
    const stores = await twoStores();
    const edits = stores.map((store, i) =>
      commandStore(store, testWorld(i)).edit({ id: 'edition-of-a', seen: 1, fields: { title: `title ${i}` } }, signed),
    );
    const outcomes = await Promise.allSettled(edits);
    const refused = outcomes.flatMap(each =>
      each.status === 'rejected' ? [(each.reason as { code: string }).code] : [],
    );
    expect(refused).toEqual(['REVISION_MOVED']);
    expect(await stores[0].versions('edition-of-a')).toHaveLength(2);
    for (const store of stores) await store.close();
  });
});

describeOnEngines('undoing in %s', engine => {
  test('a batch that was undone can be taken in again', async () => {
    const source = await engines[engine]();
    await writeRows(source, [...randomPlaces, work('birds'), edition('a'), edition('b')]);
    const lines = await linesOf(source);
    await source.close();
    const store = await engines[engine]();
    const first = await take(store, lines, 'shelf');
    const commands = commandStore(store, testWorld());
    const undone = await commands.undo({ batch: 'shelf' }, signed);
    expect(undone).toMatchObject({ undone: [first.changeSet], restored: 0, removed: 9 });
    expect(await linesOf(store)).toBe('');
    expect(await commands.undo({ batch: 'shelf' }, signed)).toMatchObject({ undone: [], removed: 0 });

    expect((await take(store, lines, 'shelf again', 4)).taken).toBe(9);
    expect(await linesOf(store)).toBe(lines);
    expect((await checkStore(store, testWorld(), { rebuild: false })).faults).toEqual([]);
    expect(await store.versions('edition-of-a')).toHaveLength(2);
    await store.close();
  });
});
