import { type GraphQLOutputType, getNamedType, isObjectType } from 'graphql';
import { describe, expect, test } from 'vitest';
import { type Api, createApi } from '../../src/api/create-api.ts';
import { makeSchema } from '../../src/api/schema.ts';
import { claimKindNames, isRecordKind, type KindName, recordKindNames } from '../../src/domain/model/kinds.ts';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { rowField } from '../../src/domain/model/sdl-commands.ts';
import { askStore } from '../../src/questions/ask-store.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { writeRows } from '../support/all-kinds-store.ts';
import { engines } from '../support/demo-store.ts';
import { enginesOfRun } from '../support/describe-on-engines.ts';
import { dice } from '../support/random-graph.ts';
import { randomRows } from '../support/random-rows.ts';
import { seedOfRun } from '../support/runs.ts';
import { comparison, copying, edition, feature, plate, work } from '../support/store-rows.ts';
import { testWorld } from '../support/test-world.ts';
import { ask, data } from './ask.ts';

const schema = makeSchema();
const seed = seedOfRun();

interface ApiOfRows {
  readonly api: Api;
  readonly store: GraphStore;
  readonly rows: readonly AnyRow[];
}

/** Two rows of every kind, and an API that writes. */
function allKinds(): Promise<ApiOfRows> {
  return apiOf(randomRows(2, dice(seed)));
}

async function apiOf(rows: readonly AnyRow[]): Promise<ApiOfRows> {
  const store = checkedGraphStore(await engines[enginesOfRun[0]!]());
  await writeRows(store, rows);
  const commands = commandStore(store, testWorld(9));
  const api = createApi({ store, questions: askStore(store), commands, who: 'a tester', log: () => {} });
  return { api, store, rows };
}

/** The fields of a row as its inputs take them. */
function inputOf(row: AnyRow): Readonly<Record<string, unknown>> {
  const {
    id: _id,
    kind: _kind,
    standing: _,
    withdrawnBecause: _w,
    supersededBy: _s,
    columns,
    ...fields
  } = row as AnyRow & Readonly<Record<string, unknown>>;
  const pairs = Object.entries((columns ?? {}) as Readonly<Record<string, string>>);
  return { ...fields, ...(columns === undefined ? {} : { columns: pairs.map(([name, text]) => ({ name, text })) }) };
}

async function write(api: Api, mutation: string, kind: KindName, input: object, more = ''): Promise<Written> {
  const type = mutation === 'withdraw' || mutation === 'restore' ? title(mutation) : `${title(verb(mutation))}${kind}`;
  const field = `${mutation}${kind}`;
  const query = `mutation ($input: ${type}Input!) {
    ${field}(input: $input) { ${rowField(kind)} { id } ${more} changeSet problems { code message involved { ... on Node { id } } } }
  }`;
  const answer = (await data(api, query, { input })) as Record<string, Written>;
  return answer[field]!;
}

type Written = Readonly<Record<string, { readonly id: string } | null>> & { readonly changeSet: number };

function verb(mutation: string): string {
  return mutation === 'supersede' ? 'edit' : mutation;
}

function title(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}

function plain(row: object | undefined): object {
  const { since: _since, until: _until, ...fields } = row as Record<string, unknown>;
  return fields;
}

describe(`what can be written of every kind, seed ${seed}`, () => {
  test('it is added, edited, withdrawn, restored, and undone', async () => {
    const { api, store, rows } = await allKinds();
    for (const kind of [...recordKindNames, ...claimKindNames]) {
      const like = rows.find(row => row.kind === kind)!;
      // Versions of conventions count up by themselves.
      const key = kind === 'Convention' ? { key: 'limit.depth', value: 9, unit: 'steps', version: null } : {};
      const isAs = async (expected: object) => {
        const [row] = await store.rows([id]);
        expect(plain(row), id).toEqual(kind === 'Convention' ? { ...expected, version: expect.any(Number) } : expected);
      };
      const added = await write(api, 'add', kind, { ...inputOf(like), ...key, signed: { why: 'a find', who: 'Ada' } });
      const { id } = added[rowField(kind)]!;
      await isAs({ ...spoken(like), ...key, id });
      expect((await store.changeSets([added.changeSet]))[0]).toMatchObject({ who: 'Ada', why: 'a find' });

      const change = isRecordKind(kind) ? { notes: ['seen again'] } : { by: 'Berta', on: '2026-02-03' };
      const edited = await write(api, 'edit', kind, { id, ...change, seen: added.changeSet });
      await isAs({ ...spoken(like), ...key, id, ...change });

      const withdrawn = await write(api, 'withdraw', kind, { id, because: 'it was another' });
      const [gone] = await store.rows([id]);
      if (isRecordKind(kind)) expect([gone, withdrawn[rowField(kind)]]).toEqual([undefined, null]);
      else expect(gone).toMatchObject({ standing: 'WITHDRAWN', withdrawnBecause: 'it was another' });

      await write(api, 'restore', kind, { id });
      await isAs({ ...spoken(like), ...key, id, ...change });
      for (const { changeSet } of [...(await history(api, id))].reverse()) {
        await data(api, `mutation { undo(changeSet: ${changeSet.number}, signed: {why: "a slip"}) { undone } }`);
      }
      expect(await store.rows([id])).toEqual([undefined]);
      expect((await history(api, id)).map(({ what }) => what)).toEqual([
        ...['ADDED', 'EDITED', ...(isRecordKind(kind) ? ['REMOVED', 'RESTORED'] : ['EDITED', 'EDITED'])],
        ...(isRecordKind(kind) ? ['REMOVED', 'RESTORED'] : ['EDITED', 'EDITED']),
        ...['EDITED', 'REMOVED'],
      ]);
      expect(edited.changeSet).toBe(added.changeSet + 1);
    }
  }, 120_000);

  test('a claim takes the place of another', async () => {
    const { api, store, rows } = await allKinds();
    for (const kind of claimKindNames) {
      const old = rows.find(row => row.kind === kind)!;
      const input = { id: old.id, by: 'Berta', signed: { why: 'a better reading' } };
      const answer = await write(api, 'supersede', kind, input, 'superseded { id standing supersededBy { id } }');
      const { id } = answer[rowField(kind)]!;
      expect(answer['superseded']).toEqual({ id: old.id, standing: 'WITHDRAWN', supersededBy: { id } });
      const [now, before] = await store.rows([id, old.id]);
      expect(plain(now)).toEqual({ ...spoken(old), id, by: 'Berta' });
      const said = { standing: 'WITHDRAWN', withdrawnBecause: 'a better reading', supersededBy: id };
      expect(plain(before)).toEqual({ ...plain(old), ...said });
    }
  }, 60_000);

  test('every mutation of a kind is one of these', () => {
    const kinds: readonly KindName[] = [...recordKindNames, ...claimKindNames];
    const expected = kinds.flatMap(kind => {
      const names = ['add', 'edit', 'withdraw', 'restore', ...(isRecordKind(kind) ? [] : ['supersede'])];
      return names.map(name => `${name}${kind}`);
    });
    const found = Object.keys(schema.getMutationType()!.getFields()).filter(
      name => !/^(undo|setConvention|record[A-Z])/.test(name),
    );
    expect(found.toSorted()).toEqual(expected.toSorted());
    for (const kind of kinds) expect(fieldsOfAnswer(`add${kind}`)).toContain(rowField(kind));
  });
});

function fieldsOfAnswer(mutation: string): readonly string[] {
  const type: GraphQLOutputType = schema.getMutationType()!.getFields()[mutation]!.type;
  const named = getNamedType(type);
  return isObjectType(named) ? Object.keys(named.getFields()) : [];
}

/** A row as it is when a claim is said. */
function spoken(row: AnyRow): object {
  const { standing: _, withdrawnBecause: _w, supersededBy: _s, ...fields } = row as AnyRow & Record<string, unknown>;
  return plain(fields);
}

interface Happened {
  readonly what: string;
  readonly changeSet: { readonly number: number };
}

async function history(api: Api, id: string): Promise<readonly Happened[]> {
  const query = 'query ($id: ID!) { history(of: $id) { nodes { what changeSet { number } } } }';
  return ((await data(api, query, { id })) as { history: { nodes: Happened[] } }).history.nodes;
}

describe('what cannot be written is refused, and nothing is', () => {
  const cases: readonly (readonly [says: string, mutation: string, code: string, message: RegExp])[] = [
    [
      'a name of nothing',
      'addCopying(input: {copy: "plate-any-0", source: "plate-that-is-none"}) { changeSet }',
      'NOT_FOUND',
      /plate-that-is-none/,
    ],
    [
      'evidence that is not there',
      'editPlate(input: {id: "plate-any-0", notes: ["x"]}) { changeSet } two: editCopying(input: {id: "copying-any-0", evidence: [{reference: "reference-that-is-none"}]}) { changeSet }',
      'NOT_FOUND',
      /copying-any-0.*reference-that-is-none/,
    ],
    [
      'a record of another kind',
      'addCopying(input: {copy: "plate-any-0", source: "edition-any-0"}) { changeSet }',
      'KIND_MISMATCH',
      /edition-any-0/,
    ],
    [
      'a date that cannot be read',
      'addDating(input: {of: "plate-any-0", event: MADE, date: "about 1790"}) { changeSet }',
      'DATE_UNREADABLE',
      /about 1790/,
    ],
    [
      'an edit of another kind',
      'editPlate(input: {id: "edition-any-0", notes: []}) { changeSet }',
      'KIND_MISMATCH',
      /edition-any-0/,
    ],
    [
      'an edit of what is not there',
      'editPlate(input: {id: "plate-that-is-none", notes: []}) { changeSet }',
      'NOT_FOUND',
      /plate-that-is-none/,
    ],
    ['an id that is there', 'addPlate(input: {id: "plate-any-0"}) { changeSet }', 'INPUT_INVALID', /plate-any-0/],
    [
      'what was not withdrawn',
      'restorePlate(input: {id: "plate-any-0"}) { changeSet }',
      'INPUT_INVALID',
      /plate-any-0/,
    ],
    ['no change set', 'undo(changeSet: 99) { changeSet }', 'NOT_FOUND', /99/],
    ['neither', 'undo { changeSet }', 'INPUT_INVALID', /both or neither/],
    ['no batch', 'undo(batch: "none") { changeSet }', 'NOT_FOUND', /none/],
    [
      'a required field made empty',
      'editEdition(input: {id: "edition-any-0", work: null}) { changeSet }',
      'INPUT_INVALID',
      /edition-any-0, field work/,
    ],
  ];
  test.each(cases)('%s', async (_, mutation, code, message) => {
    const { api, store } = await allKinds();
    const before = await store.lastChangeSet();
    const { errors = [] } = await ask(api, `mutation { ${mutation} }`);
    expect(errors).toHaveLength(1);
    expect(errors[0]).toMatchObject({ extensions: { code }, message: expect.stringMatching(message) });
    expect(await store.lastChangeSet()).toBe(before + (mutation.includes('two:') ? 1 : 0));
  });

  test('a record that a role, a field, evidence, a group or an item names cannot be taken out', async () => {
    const { api, store } = await apiOf([
      ...[work('birds'), edition('a'), plate('a'), plate('b'), feature('dog', 'the dog')],
      { id: 'reference-of-a', kind: 'Reference', csl: { type: 'book', title: 'A catalogue' } } as unknown as AnyRow,
      { id: 'alternatives-of-a', kind: 'Alternatives' },
      copying('b', 'plate-of-b', 'plate-of-a', { alternativeTo: 'alternatives-of-a' }),
      comparison('b', 'plate-of-b', 'plate-of-a', {
        points: [{ feature: 'feature-of-dog', agreement: 'SHARED' }],
        evidence: [{ reference: 'reference-of-a' }, { record: 'edition-of-a' }],
      }),
    ]);
    const named = [
      'Work-of-birds',
      'Edition-of-a',
      'Plate-of-a',
      'Reference-of-a',
      'Alternatives-of-a',
      'Feature-of-dog',
    ];
    for (const id of named) {
      const mutation = `withdraw${id.split('-')[0]}(input: {id: "${id.toLowerCase()}"}) { changeSet }`;
      const { errors = [] } = await ask(api, `mutation { ${mutation} }`);
      expect(
        errors.map(error => error.extensions?.['code']),
        id,
      ).toEqual(['STILL_NAMED']);
    }
    expect(await store.lastChangeSet()).toBe(1);
  });

  test('a claim of another kind or about something else than the others of its group of alternatives', async () => {
    const alternativeTo = 'alternatives-of-b';
    const { api, store } = await apiOf([
      ...[plate('a'), plate('b'), plate('c')],
      { id: alternativeTo, kind: 'Alternatives' },
      copying('b', 'plate-of-b', 'plate-of-a', { alternativeTo }),
    ]);
    const inGroup = `alternativeTo: "${alternativeTo}"`;
    const refused = [
      `addCopying(input: {copy: "plate-of-c", source: "plate-of-a", ${inGroup}}) { changeSet }`,
      `addDating(input: {of: "plate-of-b", event: MADE, date: "1750", ${inGroup}}) { changeSet }`,
    ];
    for (const mutation of refused) {
      const { errors = [] } = await ask(api, `mutation { ${mutation} }`);
      expect(errors[0]).toMatchObject({
        message: expect.stringContaining(
          `expected what copying-of-b in "${alternativeTo}" is, a Copying of "plate-of-b"`,
        ),
        extensions: { code: 'INPUT_INVALID', place: { field: 'alternativeTo' } },
      });
    }
    expect(await store.lastChangeSet()).toBe(1);
    const other = `addCopying(input: {copy: "plate-of-b", source: "plate-of-c", ${inGroup}}) { copying { id } changeSet }`;
    const { addCopying } = (await data(api, `mutation { ${other} }`)) as { addCopying: { copying: { id: string } } };
    // Alone in the group it may be about anything.
    const { id } = addCopying.copying;
    await data(api, 'mutation { withdrawCopying(input: {id: "copying-of-b"}) { changeSet } }');
    await data(api, `mutation { editCopying(input: {id: "${id}", copy: "plate-of-a"}) { changeSet } }`);
    const back = await ask(api, 'mutation { restoreCopying(input: {id: "copying-of-b"}) { changeSet } }');
    expect(back.errors?.[0]?.extensions?.['code']).toBe('INPUT_INVALID');
  });

  test('where nothing can be written, nothing is', async () => {
    const { store } = await allKinds();
    const api = createApi({ store, questions: askStore(store), log: () => {} });
    const { errors = [] } = await ask(
      api,
      'mutation { editPlate(input: {id: "plate-any-0", notes: ["x"]}) { changeSet } }',
    );
    expect(errors[0]?.extensions?.['code']).toBe('NOT_ALLOWED');
  });
});

describe('a change to what has moved', () => {
  const edit = 'mutation ($input: EditPlateInput!) { editPlate(input: $input) { plate { caption notes } changeSet } }';

  test('is told with both versions and the fields that differ, and merged when others are changed', async () => {
    const { api, store } = await allKinds();
    const seen = await store.lastChangeSet();
    const id = 'plate-any-0';
    const [old] = await store.rows([id]);
    await data(api, edit, { input: { id, caption: 'the dog by the gate', seen, signed: { who: 'Berta' } } });
    const { errors = [] } = await ask(api, edit, { input: { id, notes: ['a copy'], seen } });
    expect(errors[0]).toMatchObject({
      message: `plate-any-0: expected nothing newer than change set ${seen}, but caption changed with change set ${seen + 1} by Berta`,
      extensions: {
        code: 'REVISION_MOVED',
        moved: { seen: plain(old), now: { ...plain(old), caption: 'the dog by the gate' }, fields: ['caption'] },
      },
    });
    const merged = await data(api, edit, { input: { id, notes: ['a copy'], seen, merge: true } });
    expect(merged).toEqual({
      editPlate: { plate: { caption: 'the dog by the gate', notes: ['a copy'] }, changeSet: seen + 2 },
    });
    const both = await ask(api, edit, { input: { id, caption: 'the hen', seen, merge: true } });
    expect(both.errors?.[0]?.extensions?.['code']).toBe('REVISION_MOVED');
  });

  test('cannot be undone before what came later', async () => {
    const { api, store } = await allKinds();
    const id = 'plate-any-0';
    const last = await store.lastChangeSet();
    await data(api, edit, { input: { id, caption: 'one' } });
    await data(api, edit, { input: { id, caption: 'two' } });
    const undo = async (number: number) =>
      ask(api, `mutation { undo(changeSet: ${number}) { undone restored removed } }`);
    expect((await undo(last + 1)).errors?.[0]?.extensions?.['code']).toBe('REVISION_MOVED');
    expect((await undo(last + 2)).data).toEqual({ undo: { undone: [last + 2], restored: 1, removed: 0 } });
    expect((await undo(last + 1)).data).toEqual({ undo: { undone: [last + 1], restored: 1, removed: 0 } });
    expect((await undo(last + 1)).data).toEqual({ undo: { undone: [], restored: 0, removed: 0 } });
  });
});

describe('a convention that is set by its key', () => {
  const set = `mutation ($input: SetConventionInput!) {
    setConvention(input: $input) {
      convention { id key value unit source version fixed shipped { value version unit } history { nodes { what changeSet { who why } } } }
      changeSet
      problems { code }
    }
  }`;

  test('is told with what the program brings, who changed it and why; and again with what came of it', async () => {
    const { api } = await apiOf([]);
    const shipped = { value: 60, version: 1, unit: 'd' };
    const first = {
      key: 'imprintAhead',
      value: 90,
      source: 'Ada',
      signed: { who: 'Ada', why: 'bills of a bookseller' },
    };
    const ahead = { id: 'convention-imprint-ahead', key: 'imprintAhead', unit: 'd', fixed: null, shipped };
    const added = { what: 'ADDED', changeSet: { who: 'Ada', why: 'bills of a bookseller' } };
    expect(await data(api, set, { input: first })).toEqual({
      setConvention: {
        convention: { ...ahead, value: 90, source: 'Ada', version: 2, history: { nodes: [added] } },
        ...{ changeSet: 1, problems: [] },
      },
    });
    const edited = { what: 'EDITED', changeSet: { who: 'a tester', why: 'convention imprintAhead: changed' } };
    expect(await data(api, set, { input: { key: 'imprintAhead', value: 30, seen: 1 } })).toMatchObject({
      setConvention: {
        convention: { value: 30, source: 'convention', version: 3, history: { nodes: [added, edited] } },
      },
    });
    const moved = await ask(api, set, { input: { key: 'imprintAhead', value: 31, seen: 1 } });
    expect(moved.errors?.[0]?.extensions?.['code']).toBe('REVISION_MOVED');
    expect(await data(api, '{ conventions { key version fixed } }')).toMatchObject({
      conventions: expect.arrayContaining([
        { key: 'imprintAhead', version: 3, fixed: null },
        { key: 'share.cap', version: 1, fixed: 'no answer gives shares' },
      ]),
    });
  });

  test('and so is one that ships with no value', async () => {
    const { api } = await apiOf([]);
    expect(await data(api, '{ conventions { key value shipped { value } } }')).toMatchObject({
      conventions: expect.arrayContaining([{ key: 'date.openSetBound', value: null, shipped: { value: null } }]),
    });
  });

  test.each<readonly [string, unknown, string, RegExp]>([
    ['imprintAhead', -1, 'value', /expected a whole number, 0 to 1,000,000 for "imprintAhead", came -1$/],
    ['date.slack.year', 1.5, 'value', /expected a whole number, 0 to 1000 for "date.slack.year", came 1.5$/],
    ['imprintAhed', 1, 'key', /came "imprintAhed" \(did you mean "imprintAhead"\?\)$/],
    ['share.cap', 1, 'key', /came "share.cap": no answer gives shares$/],
    ['route.same-town', 1, 'key', /came "route.same-town"/],
    ['route.delft', { least: 1 }, 'value', /expected \{ from: \{ name, codes, boxes\? \}.*came \{"least":1\}$/],
    ['route.speed.from-1780', 7, 'value', /fast not below slow.*came 7$/],
    ['group.nodeCap', '20', 'value', /came "20"$/],
  ])('is refused where it has not the form of its key: %s as %j', async (key, value, field, message) => {
    const { api, store } = await apiOf([]);
    const { errors = [] } = await ask(api, set, { input: { key, value } });
    expect(errors[0]).toMatchObject({
      message: expect.stringMatching(message),
      extensions: { code: 'INPUT_INVALID', place: { field } },
    });
    expect(await store.lastChangeSet()).toBe(0);
  });
});
