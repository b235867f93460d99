import { afterEach, expect, test } from 'vitest';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import type { SearchAnswer, SearchQuestion } from '../../src/questions/questions.ts';
import { search } from '../../src/questions/search.ts';
import type { GraphStore, SearchPosition } from '../../src/store/graph-store.ts';
import { engines } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';

const work = (id: string, ...names: readonly string[]): AnyRow => ({
  id: `work-${id}`,
  kind: 'Work',
  labels: names.map(text => ({ text })),
});
const agent = (id: string, name: string): AnyRow => ({
  id: `agent-${id}`,
  kind: 'Agent',
  labels: [{ text: name }],
  form: 'PERSON',
});

const found = ({ hits }: SearchAnswer) => hits.items.map(({ item }) => [item.id, item.match]);
const ids = ({ hits }: SearchAnswer) => hits.items.map(({ item }) => item.id);

describeOnEngines('search in %s', engine => {
  let store: GraphStore;
  afterEach(() => store.close());

  async function shelf(...rows: readonly AnyRow[]): Promise<void> {
    store = await engines[engine]();
    await applyChanges(store, {
      rows,
      added: new Set(rows.map(row => row.id)),
      changeSet: { moment: '2026-01-01T00:00:00.000Z', who: 'Ada', why: 'a shelf' },
    });
  }
  const ask = (text: string, more: Partial<SearchQuestion> = {}) =>
    search(store, { text, page: { first: 25 }, ...more });

  test('gives the whole name first, then its beginning, all words, the last one begun, and some words', async () => {
    await shelf(
      work('some-a', 'Birds of passage'),
      work('prefix-a', 'On landbirds and sea birdsong'),
      work('words-a', 'A book of birds, sea and land'),
      work('beginning-a', 'Sea birds of the north'),
      work('whole-a', 'Sea birds'),
      work('other-a', 'Flowers'),
    );
    expect(found(await ask('Sea birds'))).toEqual([
      ['work-whole-a', 'WHOLE'],
      ['work-beginning-a', 'BEGINNING'],
      ['work-words-a', 'WORDS'],
      ['work-prefix-a', 'PREFIX'],
      ['work-some-a', 'SOME'],
    ]);
  });

  test('orders a class by name, then by id', async () => {
    await shelf(
      work('views-d', 'Views of Delft'),
      work('views-c', 'Views of Ålborg'),
      work('views-b', 'Views of Delft'),
      work('views-a', 'Views of Zwolle'),
    );
    expect(ids(await ask('views'))).toEqual(['work-views-c', 'work-views-b', 'work-views-d', 'work-views-a']);
  });

  test.each([
    ['fayencemaler zwolf', 'Zwölf Fayencemaler'],
    ['ZWÖLF', 'Zwölf Fayencemaler'],
    ['oeuvre', 'Œuvre gravé'],
    ['grave', 'Œuvre gravé'],
    ['vniversal', 'Universal magazine'],
    ['Jconologia', 'Iconologia'],
    ['congress', 'Congreſs of birds'],
    ['strasse', 'Die Straße'],
  ])('finds by "%s" what is named "%s"', async (text, name) => {
    await shelf(work('named-so', name), work('named-otherwise', 'Qqqq'));
    expect(ids(await ask(text))).toEqual(['work-named-so']);
  });

  test('keeps to the kinds asked for', async () => {
    await shelf(work('braam-a', 'Braam'), agent('braam-b', 'Braam'));
    expect(ids(await ask('braam'))).toEqual(['agent-braam-b', 'work-braam-a']);
    expect(ids(await ask('braam', { kinds: ['Agent'] }))).toEqual(['agent-braam-b']);
  });

  test('pages hold each hit once, in the order of one page of all', async () => {
    const names = ['Views', 'Views of Delft', 'Old views', 'More viewpoints', 'Views', 'Gardens'];
    await shelf(...names.map((name, i) => work(`number-${i}`, name)));
    const all = ids(await ask('old views'));
    const paged: string[] = [];
    for (let after: SearchPosition | undefined, more = true; more; ) {
      const { hits } = await ask('old views', { page: { first: 2, after } });
      paged.push(...hits.items.map(({ item }) => item.id));
      [after, more] = [hits.items.at(-1)?.position, hits.more];
    }
    expect(all).toHaveLength(4);
    expect(paged).toEqual(all);
  });

  test('looks through as many of a class as the convention says', async () => {
    const limit = { key: 'limit.search', value: 2, source: 'convention', version: 2 };
    await shelf(...['a', 'b', 'c'].map(id => work(`views-${id}`, 'Old views')));
    expect(await ask('views')).toMatchObject({ cut: false });
    const convention = { id: 'convention-limit-search', kind: 'Convention', ...limit } as const;
    await applyChanges(store, {
      rows: [convention],
      added: new Set([convention.id]),
      changeSet: { moment: '2026-01-02T00:00:00.000Z', who: 'Ada', why: 'less patience' },
    });
    const cut = await ask('views');
    expect([ids(cut).length, cut.cut]).toEqual([2, true]);
  });

  test('finds by what a record was edited to, and no longer by what it was', async () => {
    await shelf(work('views-a', 'Views'));
    await applyChanges(store, {
      rows: [work('views-a', 'Prospects')],
      added: new Set(),
      changeSet: { moment: '2026-01-02T00:00:00.000Z', who: 'Ada', why: 'renamed' },
    });
    expect([ids(await ask('views')), ids(await ask('prospects'))]).toEqual([[], ['work-views-a']]);
  });

  test.each(['', '   ', '…', '--'])('refuses "%s", which has no letter or digit', async text => {
    await shelf();
    await expect(ask(text)).rejects.toMatchObject({ code: 'INPUT_INVALID' });
  });
});
