import fc from 'fast-check';
import { defaultSlack } from '../../src/domain/dates/slack.ts';
import { claimStepNames, type WalkStep } from '../../src/domain/descent/walk-steps.ts';
import type { AnyRow, Origin } from '../../src/domain/model/row.ts';
import { foldTokens, sortKey } from '../../src/domain/text/fold.ts';
import type {
  Around,
  EditionFilter,
  EditionWindow,
  GraphStore,
  SearchAsked,
  SearchFilter,
  SearchPosition,
  Via,
  WalkAsked,
  WindowKey,
} from '../../src/store/graph-store.ts';
import { windowsOfGroups } from '../support/memory-store-groups.ts';
import { partsOf } from '../support/parts-of.ts';
import {
  appearance,
  attribution,
  batchOf,
  casting,
  comparison,
  copying,
  dating,
  depiction,
  detail,
  edition,
  editionDescent,
  feature,
  imprint,
  madeAt,
  matrix,
  motif,
  opinion,
  photograph,
  place,
  plate,
  printedFrom,
  stay,
  thing,
  work,
} from '../support/store-rows.ts';

/** Something to do with a store: a change, or a question with an answer that can be compared as text. */
export interface StoreCommand {
  readonly says: string;
  readonly run: (store: GraphStore) => Promise<unknown>;
}

export function storeCommands(): fc.Arbitrary<readonly StoreCommand[]> {
  const command = fc.oneof(
    { weight: 2, arbitrary: writes() },
    { weight: 1, arbitrary: removals() },
    { weight: 3, arbitrary: questions() },
  );
  return fc.array(command, { minLength: 4, maxLength: 14, size: 'max' });
}

const names = ['a', 'b', 'c', 'd'] as const;
const name = fc.constantFrom(...names);
const words = fc.constantFrom(
  'dog',
  'dogs',
  'dog at gate',
  'the gate',
  'Ärmel',
  'hen',
  '花鳥図',
  'a dog in a house',
  '𠮷野',
);
const ids = fc.constantFrom(
  ...[
    ...['work', 'edition', 'place', 'plate', 'matrix', 'detail'],
    ...['feature', 'photograph', 'comparison', 'opinion'],
    ...['imprint', 'copying', 'printedfrom', 'depiction', 'appearance', 'dating'],
  ].flatMap(kind => names.map(n => `${kind}-of-${n}`)),
);
const asOf = fc.option(fc.nat(8), { nil: undefined });
const claimBase = fc.record(
  {
    standing: fc.constantFrom('STANDING', 'WITHDRAWN'),
    stance: fc.constantFrom('HELD', 'WEIGHED', 'REJECTED'),
    certainty: fc.constantFrom('CERTAIN', 'POSSIBLE', 'DOUBTFUL'),
  },
  { requiredKeys: [] },
);
const form = fc.constantFrom('BOOK', 'ANNUAL');
const language = fc.constantFrom('de', 'fr');
const date = fc.constantFrom(
  '1790',
  '1790/..',
  '../1800',
  '1788/1792',
  '1800-02~',
  '1782~',
  '1795?',
  '[..1788]',
  '1600',
);
const iconclass = fc.constantFrom('2', '25F', '25F3', '25F36', '34B11');

const row: fc.Arbitrary<AnyRow> = fc.oneof(
  fc
    .tuple(name, fc.record({ form, labels: fc.array(fc.record({ text: words })) }, { requiredKeys: [] }))
    .map(([n, more]) => work(n, more)),
  fc
    .tuple(
      name,
      name,
      fc.record(
        {
          title: words,
          illustrated: fc.boolean(),
          languages: fc.array(language),
          columns: fc.dictionary(words, words),
        },
        { requiredKeys: ['title'] },
      ),
    )
    .map(([n, w, more]) => edition(n, { work: `work-of-${w}`, ...more })),
  fc
    .tuple(
      name,
      fc.record(
        { latitude: fc.double({ min: -90, max: 90, noNaN: true }), within: name.map(n => `place-of-${n}`) },
        { requiredKeys: [] },
      ),
    )
    .map(([n, more]) => place(n, more)),
  fc.tuple(name, fc.record({ caption: words })).map(([n, more]) => plate(n, more)),
  fc.tuple(name, name, name, claimBase).map(([n, e, p, more]) => imprint(n, `edition-of-${e}`, `place-of-${p}`, more)),
  fc
    .tuple(name, fc.constantFrom('plate', 'detail'), name, fc.constantFrom('plate', 'detail'), name, claimBase)
    .map(([n, kind, c, other, s, more]) => copying(n, `${kind}-of-${c}`, `${other}-of-${s}`, more)),
  fc.tuple(name, name).map(([n, of]) => detail(n, `plate-of-${of}`)),
  name.map(matrix),
  fc
    .tuple(name, name, name, claimBase)
    .map(([n, p, m, more]) => printedFrom(n, `plate-of-${p}`, `matrix-of-${m}`, more)),
  fc.tuple(name, name, name).map(([n, c, p]) => casting(n, `matrix-of-${c}`, `matrix-of-${p}`)),
  fc
    .tuple(name, name, name, claimBase)
    .map(([n, l, e, more]) => editionDescent(n, `edition-of-${l}`, `edition-of-${e}`, more)),
  fc
    .tuple(name, fc.constantFrom('work', 'edition', 'plate'), name, iconclass, claimBase)
    .map(([n, kind, p, notation, more]) => depiction(n, `${kind}-of-${p}`, notation, more)),
  fc
    .tuple(name, name, name, fc.constantFrom('PRESENT', 'ABSENT'), claimBase)
    .map(([n, p, e, presence, more]) => appearance(n, `plate-of-${p}`, `edition-of-${e}`, { presence, ...more })),
  fc
    .tuple(name, fc.constantFrom('plate', 'edition', 'piece'), name, date, claimBase)
    .map(([n, kind, r, when, more]) => dating(n, `${kind}-of-${r}`, when, more)),
  fc.tuple(name, name).map(([n, p]) => motif(n, `piece-of-${p}`)),
  fc.tuple(name, name, name, claimBase).map(([n, w, p, more]) => stay(n, `workshop-of-${w}`, `place-of-${p}`, more)),
  fc
    .tuple(name, fc.constantFrom('piece', 'motif'), name, name, claimBase)
    .map(([n, kind, r, p, more]) => madeAt(n, `${kind}-of-${r}`, `place-of-${p}`, more)),
  fc
    .tuple(name, fc.constantFrom('piece', 'plate'), name, name, claimBase)
    .map(([n, kind, r, w, more]) => attribution(n, `${kind}-of-${r}`, `workshop-of-${w}`, more)),
  fc.tuple(name, words).map(([n, what]) => feature(n, what)),
  fc.tuple(name, name, words).map(([n, p, view]) => photograph(n, `plate-of-${p}`, { view })),
  fc.tuple(name, name, name, name, claimBase).map(([n, p, a, f, more]) =>
    comparison(n, `plate-of-${p}`, `plate-of-${a}`, {
      points: [{ feature: `feature-of-${f}`, agreement: 'SHARED', x: 12.5 }],
      ...more,
    }),
  ),
  fc.tuple(name, name, name).map(([n, a, c]) => opinion(n, `agent-of-${a}`, `copying-of-${c}`)),
);

const windowKey: fc.Arbitrary<WindowKey> = fc.record(
  {
    profile: fc.constantFrom('london', ''),
    dateClass: fc.constantFrom('IMPRINT', 'OTHER'),
    detail: fc.constantFrom('more', 'else'),
    first: fc.constantFrom(-5, 0),
    last: fc.constantFrom(0, 7),
  },
  { requiredKeys: ['profile', 'dateClass'] },
);
const editionWindow: fc.Arbitrary<EditionWindow> = fc
  .tuple(
    name,
    windowKey,
    fc.record(
      { form, languages: fc.uniqueArray(language, { minLength: 1 }), illustrated: fc.constant(true as const) },
      { requiredKeys: [] },
    ),
  )
  .map(([n, key, traits]) => ({ edition: `edition-of-${n}`, ...key, ...traits }));
const origin: fc.Arbitrary<Origin> = fc.record({ source: fc.constantFrom('X', 'Y'), key: fc.constantFrom('1', '2') });
const filter: fc.Arbitrary<EditionFilter> = fc.record(
  {
    form,
    language,
    illustrated: fc.boolean(),
    work: name.map(n => `work-of-${n}`),
    place: name.map(n => `place-of-${n}`),
    subject: iconclass,
  },
  { requiredKeys: [] },
);

const via: fc.Arbitrary<Via[]> = fc.subarray([
  { kind: 'Edition', name: 'work' },
  { kind: 'Imprint', name: 'edition' },
  { kind: 'Imprint', name: 'place' },
  { kind: 'Copying', name: 'copy' },
  { kind: 'Copying', name: 'source' },
  { kind: 'Depiction', name: 'picture' },
  { kind: 'Comparison', name: 'against' },
  { kind: 'Opinion', name: 'claim' },
]);

const around: fc.Arbitrary<Around> = fc.record(
  { rounds: fc.array(via, { maxLength: 3 }), most: fc.nat(8) },
  { requiredKeys: ['rounds'] },
);

const walkAsked: fc.Arbitrary<WalkAsked> = fc
  .record(
    {
      from: fc.array(ids, { maxLength: 3 }),
      steps: fc.subarray([...claimStepNames, 'Detail'] as const, { minLength: 1 }),
      direction: fc.constantFrom('SOURCES', 'COPIES', 'BOTH'),
      depth: fc.nat(5),
      limit: fc.integer({ min: 1, max: 9 }),
      basis: fc.record({
        stances: fc.subarray(['HELD', 'WEIGHED', 'REJECTED'] as const),
        certaintyAtLeast: fc.constantFrom('CERTAIN', 'PROBABLE', 'POSSIBLE', 'DOUBTFUL'),
      }),
      excluded: fc.array(ids, { maxLength: 3 }),
      view: fc.record({ asOf: fc.nat(8) }),
      around,
    },
    { requiredKeys: ['from', 'steps', 'direction', 'depth', 'limit'] },
  )
  .map(asked => ({ ...asked, steps: asked.steps as readonly WalkStep[] }));

const searchFilter: fc.Arbitrary<SearchFilter> = fc.record(
  {
    kinds: fc.subarray(['Work', 'Edition', 'Plate', 'Place', 'Feature'] as const),
    days: fc.record({ lo: fc.constantFrom(-65743, -62000), hi: fc.constantFrom(-65379, -61000) }, { requiredKeys: [] }),
    slack: fc.constantFrom(
      defaultSlack,
      { ...defaultSlack, year: 9, uncertainFactor: 1 },
      { ...defaultSlack, openSetBound: 1 },
    ),
    place: name.map(n => `place-of-${n}`),
    subject: iconclass,
  },
  { requiredKeys: [] },
);

const searchAsked: fc.Arbitrary<SearchAsked> = fc
  .record(
    {
      words,
      filter: searchFilter,
      few: fc.nat(4),
      after: fc.record({
        match: fc.constantFrom('WHOLE', 'BEGINNING', 'WORDS', 'PREFIX', 'SOME'),
        sort: words.map(sortKey),
        id: ids,
      }),
      limit: fc.nat(9),
      cap: fc.integer({ min: 1, max: 9 }),
    },
    { requiredKeys: ['filter', 'few', 'limit', 'cap'] },
  )
  .map(({ words: text, few, after, ...others }): SearchAsked => {
    if (text === undefined) return { ...others, ...(after && { after: { sort: after.sort, id: after.id } }) };
    const tokens = [...new Set(foldTokens(text))];
    const whole = sortKey(text);
    const position = after && ({ ...after, ...(after.match === 'WHOLE' && { sort: whole }) } as SearchPosition);
    return { ...others, text: { whole, tokens, few }, ...(position && { after: position }) };
  });

/** Most name what is there: a row that names what is not fails the batch, which is worth a try but not always. */
function writes(): fc.Arbitrary<StoreCommand> {
  const rows = fc.uniqueArray(row, { selector: r => r.id, maxLength: 6 });
  const more = fc.record(
    {
      windows: fc.array(editionWindow, { maxLength: 3 }),
      origins: fc.array(
        fc.tuple(origin, ids, fc.constantFrom('d1', 'd2')).map(([o, id, digest]) => ({ ...o, id, digest })),
        { maxLength: 2 },
      ),
      arrived: fc.array(origin, { maxLength: 1 }),
      await: fc.array(
        fc.tuple(origin, name).map(([o, n]) => ({ origin: o, claim: copying(n, 'plate-of-a', ''), role: 'source' })),
        { maxLength: 2 },
      ),
      checkpoint: fc.record({ intake: fc.constantFrom('i', 'j'), records: fc.nat(), report: fc.jsonValue() }),
    },
    { requiredKeys: [] },
  );
  return fc
    .tuple(rows, more, fc.boolean())
    .map(([put, rest, whole]) => batchOf(whole ? withNamed(put) : put, rest))
    .map(batch => ({ says: `write ${JSON.stringify(batch)}`, run: store => store.write(batch) }));
}

/** What nothing names goes; the rest is refused. Some are made from a version that may not be the newest. */
function removals(): fc.Arbitrary<StoreCommand> {
  const seen = fc.option(fc.integer({ min: 1, max: 4 }), { nil: undefined, freq: 4 });
  const removed = fc.tuple(ids, seen).map(([id, at]) => (at === undefined ? { id } : { id, seen: at }));
  const put = fc.uniqueArray(row, { selector: r => r.id, maxLength: 1 });
  return fc
    .tuple(put, fc.uniqueArray(removed, { selector: r => r.id, minLength: 1, maxLength: 4 }))
    .map(([rows, all]) => {
      const remove = all.filter(({ id }) => rows.every(r => r.id !== id));
      const batch = batchOf(rows, { remove });
      return { says: `remove ${JSON.stringify(batch)}`, run: store => store.write(batch) };
    });
}

/** The rows, and bare ones of everything that may be named. */
function withNamed(rows: readonly AnyRow[]): AnyRow[] {
  const there = new Set(rows.map(r => r.id));
  const bare = names.flatMap(n => [
    ...[work(n), edition(n, { work: `work-of-${n}` }), place(n), plate(n), matrix(n)],
    ...[detail(n, `plate-of-${n}`), thing('Workshop', n), thing('Piece', n), motif(n, `piece-of-${n}`)],
    ...[thing('Agent', n), copying(n, `plate-of-${n}`, `plate-of-${n}`)],
  ]);
  return [...rows, ...bare.filter(r => !there.has(r.id))];
}

function questions(): fc.Arbitrary<StoreCommand> {
  const lists = fc.array(ids, { maxLength: 4 });
  const position = fc.option(fc.record({ sort: words.map(sortKey), id: ids }), { nil: undefined });
  const limit = fc.integer({ min: 1, max: 9 });
  const kind = fc.constantFrom('Work', 'Edition', 'Place', 'Plate', 'Piece', 'Photograph');
  const view = asOf.map(at => (at === undefined ? undefined : { asOf: at }));
  return fc.oneof(
    ask('rows', fc.tuple(lists, view)),
    ask('linked', fc.tuple(lists, via, view)),
    ask('surroundings', fc.tuple(lists, around, view)),
    ask('walk', fc.tuple(walkAsked)),
    ask('list', fc.tuple(kind, position, limit)),
    ask('count', fc.tuple(kind)),
    ask('search', fc.tuple(searchAsked)),
    ask('byOrigin', fc.tuple(fc.array(origin, { maxLength: 3 }))),
    ask('byOriginKey', fc.tuple(fc.array(fc.constantFrom('1', '2'), { maxLength: 2 }))),
    ask('arrivals', fc.tuple(fc.array(origin, { maxLength: 2 }), fc.array(origin, { maxLength: 3 }))),
    ask('originsOf', fc.tuple(lists)),
    filter.map(
      (given): StoreCommand => ({
        says: `windowGroups ${JSON.stringify(given)}`,
        run: store => groupsInOrder(store, given),
      }),
    ),
    ask(
      'editionsInWindows',
      fc.tuple(fc.array(fc.array(windowKey), { maxLength: 3 }), filter, fc.option(ids, { nil: undefined }), limit),
    ),
    ask('editionsByTitle', fc.tuple(filter, position, limit)),
    ask('versions', fc.tuple(ids)),
    ask('changeSets', fc.tuple(fc.array(fc.nat(6), { maxLength: 3 }))),
    ask('lastChangeSet', fc.tuple()),
    ask('changesAfter', fc.tuple(fc.nat(4), limit)),
    ask('originsAfter', fc.tuple(fc.option(origin, { nil: undefined }), limit)),
    ask('awaitedAfter', fc.tuple(fc.option(origin, { nil: undefined }), limit)),
    ask('checkpointsAfter', fc.tuple(fc.option(fc.constantFrom('i', 'j'), { nil: undefined }), limit)),
    fc.constant({ says: 'history', run: store => partsOf(store) } satisfies StoreCommand),
    ask('scan', fc.tuple(fc.option(ids, { nil: undefined }), limit, view)),
    ask('windowsOf', fc.tuple(lists)),
    ask('sortKeysOf', fc.tuple(lists)),
    ask('datedDaysOf', fc.tuple(lists)),
    ask('awaited', fc.tuple(fc.array(origin, { maxLength: 2 }))),
    ask('checkpoint', fc.tuple(fc.constantFrom('i', 'j'))),
  );
}

function ask<Name extends Exclude<keyof GraphStore, 'facts' | 'close' | 'write'>>(
  method: Name,
  given: fc.Arbitrary<Parameters<GraphStore[Name]>>,
): fc.Arbitrary<StoreCommand> {
  return given.map(args => ({
    says: `${method} ${JSON.stringify(args)}`,
    run: store => (store[method] as (...args: unknown[]) => Promise<unknown>)(...args),
  }));
}

async function groupsInOrder(store: GraphStore, given: EditionFilter): Promise<unknown> {
  return windowsOfGroups(await store.windowGroups(given));
}
