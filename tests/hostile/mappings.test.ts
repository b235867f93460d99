import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { PlatestemmaError } from '../../src/errors.ts';
import { readMapping } from '../../src/intake/table/read-mapping.ts';
import { tableIntentions } from '../../src/intake/table/table-intentions.ts';
import type { TableMapping } from '../../src/intake/table/table-mapping.ts';
import { plain } from '../intake/table/tables.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { inTime } from './answer-law.ts';
import { type Chance, chances } from './chance.ts';
import { changedJson } from './changed-json.ts';
import { damaged } from './damaged.ts';
import { expectLawfulIntention, expectRefusal, pieces, readLawfully } from './file-law.ts';

const seed = seedOfRun();
console.info(`Hostile mappings and tables: seed ${seed}`);

/** Mappings and tables of the manual, which use most that a mapping can say, and plain ones. */
const manual = readFileSync(new URL('../../schema/table-mapping.md', import.meta.url), 'utf8');
const documents = [...manual.matchAll(/```json\n([\s\S]*?)```/g)]
  .map(([, text]) => JSON.parse(text!) as unknown)
  .filter(document => typeof document === 'object' && document !== null && 'records' in document);
const mappings = [...documents, plain];
const tables = [
  ...[...manual.matchAll(/```csv\n([\s\S]*?)```/g)].map(([, text]) => text!),
  'number,title,engraver,date,book\n1,The Dog,Ada; Bea,c. 1793,Views\n2,"a ""b""\nc",,1790-1795,\n3,,,,\n',
  `number,title,engraver,date,book\n1,${'a'.repeat(40)}!,${'ab '.repeat(500)},${'1'.repeat(5000)},${'a;'.repeat(5000)}\n`,
  '{"number":"1","title":"The Dog","engraver":["a",{"b":1}],"date":1793}\n{"number":null}\n[]\n',
];

function readLawfullyOrRefuse(text: string): TableMapping | undefined {
  try {
    return readMapping(text, 'a.mapping.json');
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    expectRefusal(error);
    expect(error.code).toBe('INPUT_INVALID');
    return undefined;
  }
}

async function takeTable(mapping: TableMapping, table: Uint8Array, chance: Chance): Promise<void> {
  const input = pieces(table, chance.pick([1, 7, 100_000]));
  const read = await readLawfully(tableIntentions(input, { mapping, source: 'X', file: 'a.csv' }));
  read.forEach(expectLawfulIntention);
}

test('there are mappings to be changed', () => expect(documents.length).toBeGreaterThan(0));

test('a mapping that is not what is expected is refused in time with its place, or reads a table', async () => {
  let read = 0;
  await fc.assert(
    fc.asyncProperty(chances, async chance => {
      const text = JSON.stringify(changedJson(chance.pick(mappings), chance));
      const bytes = chance.percent(25) ? damaged(Buffer.from(text), chance) : Buffer.from(text);
      const table = Buffer.from(chance.pick(tables));
      try {
        await inTime(async () => {
          const mapping = readLawfullyOrRefuse(bytes.toString());
          if (mapping === undefined) return;
          read++;
          await takeTable(mapping, table, chance);
        });
      } catch (cause) {
        throw new Error(`It does not hold for ${bytes.toString().slice(0, 5_000)}`, { cause });
      }
    }),
    { seed, numRuns: runs(900, 12_000) },
  );
  expect(read).toBeGreaterThan(10);
}, 3_600_000);

test('a damaged table is read in time, each row with its place', async () => {
  const read = mappings.map(document => readMapping(JSON.stringify(document), 'a.mapping.json'));
  await fc.assert(
    fc.asyncProperty(chances, async chance => {
      const [mapping, table] = [chance.pick(read), damaged(Buffer.from(chance.pick(tables)), chance)];
      try {
        await inTime(() => takeTable(mapping, table, chance));
      } catch (cause) {
        throw new Error(`It does not hold for ${JSON.stringify(table.toString().slice(0, 5_000))}`, { cause });
      }
    }),
    { seed, numRuns: runs(500, 8_000) },
  );
}, 3_600_000);
