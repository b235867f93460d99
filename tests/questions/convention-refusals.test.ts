import { expect, test } from 'vitest';
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { conventionsInForce } from '../../src/questions/conventions-in-force.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { fileOf } from '../support/histories.ts';
import { memoryStore } from '../support/memory-store.ts';
import { testWorld } from '../support/test-world.ts';

const convention = (id: string, more: object) =>
  JSON.stringify({ id: `convention-${id}`, kind: 'Convention', source: 'common practice', version: 1, ...more });

test.each([false, true])(
  'a convention that cannot come into force is refused with its line, and the others are taken (dry run: %s)',
  async dryRun => {
    const store = memoryStore();
    const lines = [
      convention('copy-min-lag', { key: 'copy.minLag', value: 5, version: 2 }),
      convention('of-no-key', { key: 'nothing.known', value: 1 }),
      JSON.stringify({ id: 'plate-dog-at-gate', kind: 'Plate' }),
      convention('wrong-value', { key: 'person.minMakingAge', value: 'old' }),
      convention('lag-again', { key: 'copy.minLag', value: 6, version: 3 }),
    ];
    const reading = readGraphFile(fileOf(lines), { file: 'a.jsonl' });
    const options = { intake: 'a', who: 'Ada', why: 'a test', dryRun };
    const report = await applyGraphFile(store, testWorld(), reading, emptyReport('a'), options);
    expect(report).toMatchObject({ records: 5, taken: 2, refused: 3 });
    expect(report.problems.map(({ code, place }) => [code, place.record, place.key])).toEqual([
      ['INPUT_INVALID', 2, 'convention-of-no-key'],
      ['INPUT_INVALID', 4, 'convention-wrong-value'],
      ['INPUT_INVALID', 5, 'convention-lag-again'],
    ]);
    expect((await conventionsInForce(store)).get('copy.minLag')).toBe(dryRun ? 0 : 5);
  },
);
