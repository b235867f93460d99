import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Compile } from 'typebox/schema';
import { expect, test } from 'vitest';
import { historySchema } from '../../../src/intake/graph/history-schema.ts';
import { editedStore } from '../../support/edited-store.ts';
import { historyOfStore } from '../../support/histories.ts';
import { batchOf } from '../../support/store-rows.ts';

const committed: unknown = JSON.parse(
  readFileSync(resolve(import.meta.dirname, '../../../schema/graph-file-history.schema.json'), 'utf8'),
);

test('the committed schema is what the reader of histories asks for', () => {
  expect(committed, 'run "npm run generate"').toEqual(historySchema());
});

test('every line of a history is one of its choices, and every choice is a line of it', async () => {
  const { oneOf, $defs } = committed as { oneOf: readonly { $ref: string }[]; $defs: Record<string, object> };
  const choices = oneOf.map(({ $ref }) => $ref.replace('#/$defs/', ''));
  const whole = Compile(committed as object);
  const validators = choices.map(name => [name, Compile($defs[name]!)] as const);
  const found = new Set<string>();
  const store = await editedStore('memory');
  await store.write(batchOf([], { remove: [{ id: 'copying-of-lost' }] }));
  for (const line of await historyOfStore(store)) {
    const value: unknown = JSON.parse(line);
    expect(whole.Check(value), line).toBe(true);
    for (const [name, validator] of validators) if (validator.Check(value)) found.add(name);
  }
  expect([...found].sort()).toEqual([...choices].sort());
});

test('what is none is told', () => {
  const whole = Compile(committed as object);
  const change = { changeSet: 1, moment: '2026-01-01T00:00:00Z', who: 'Ada', why: 'a test', rows: 1 };
  expect(whole.Check(change)).toBe(true);
  expect(whole.Check({ ...change, rows: 0 })).toBe(false);
  expect(whole.Check({ ...change, moment: 'yesterday' })).toBe(false);
  expect(whole.Check({ id: 'work-a-b', kind: 'Work', since: 1 })).toBe(true);
  expect(whole.Check({ id: 'work-a-b', kind: 'Work' })).toBe(false);
  expect(whole.Check({ end: { Work: 'two' } })).toBe(false);
});
