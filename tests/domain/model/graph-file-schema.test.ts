import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Compile } from 'typebox/schema';
import { expect, test } from 'vitest';
import { graphFileSchema } from '../../../src/domain/model/graph-file-schema.ts';
import { claimKindNames, recordKindNames } from '../../../src/domain/model/kinds.ts';

const committed: unknown = JSON.parse(
  readFileSync(resolve(import.meta.dirname, '../../../schema/graph-file.schema.json'), 'utf8'),
);

test('the committed schema is what the declarations say', () => {
  expect(committed, 'run "npm run generate"').toEqual(graphFileSchema());
});

test('every kind is a choice of the schema', () => {
  const choices = (committed as { oneOf: readonly { $ref: string }[] }).oneOf.map(choice => choice.$ref);
  expect(choices).toEqual([...recordKindNames, ...claimKindNames].map(kind => `#/$defs/${kind}`));
});

test('the schema as a whole tells lines from what are none', () => {
  const schema = Compile(committed as object);
  const line = { id: 'edition-shore-first', kind: 'Edition', work: 'work-shore-book', title: 'The Shore' };
  expect(schema.Check(line)).toBe(true);
  expect(schema.Check({ ...line, origins: [{ source: 'Library', key: '17' }] })).toBe(true);
  expect(schema.Check({ ...line, kind: 'Work' })).toBe(false);
  expect(schema.Check({ ...line, unheard: 'of' })).toBe(false);
});
