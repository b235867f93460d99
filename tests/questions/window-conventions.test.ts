import { expect, test } from 'vitest';
import { defaultConventions } from '../../src/domain/conventions/conventions.ts';
import { windowConventions } from '../../src/questions/window-conventions.ts';
import { memoryStore } from '../support/memory-store.ts';

test('conventions are read once for as long as nothing is written, and again when something was', async () => {
  const engine = memoryStore();
  let asked = 0;
  const store = new Proxy(engine, {
    get: (target, name) => {
      if (name === 'list') asked++;
      const member: unknown = Reflect.get(target, name);
      return typeof member === 'function' ? member.bind(target) : member;
    },
  });
  const profiles = [''];
  const first = await windowConventions(store, { profiles, changeSet: 1 });
  expect(first.all.map(({ id }) => id)).toEqual(defaultConventions.all.map(({ id }) => id));
  expect(await windowConventions(store, { profiles, changeSet: 1 })).toBe(first);
  expect(asked).toBe(1);
  await windowConventions(store, { profiles, changeSet: 2 });
  expect(asked).toBe(2);
});

test('stores are told apart', async () => {
  const [one, other] = [
    { profiles: [''], changeSet: 1 },
    { profiles: [''], changeSet: 1 },
  ];
  const written = {
    id: 'convention-copy-minlag',
    kind: 'Convention',
    key: 'copy.minLag',
    value: 9,
    unit: 'd',
    source: 'a test',
    version: 2,
  } as const;
  const changed = memoryStore();
  await changed.write({
    changeSet: { moment: '2026-01-01T00:00:00.000Z', who: 'a test', why: 'another convention' },
    put: [{ row: written, sort: 'copy', tokens: [] }],
  });
  const shipped = await windowConventions(memoryStore(), one);
  expect((await windowConventions(changed, other)).get('copy.minLag')).toBe(9);
  expect(shipped.get('copy.minLag')).toBe(0);
});
