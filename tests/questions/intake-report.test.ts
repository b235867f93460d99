import { expect, test } from 'vitest';
import { reportText } from '../../src/cli/intake-text.ts';
import { marcxmlIntentions } from '../../src/intake/marcxml/marcxml-intentions.ts';
import { addProblem, addRemark, emptyReport } from '../../src/questions/intake-report.ts';
import { collection, recordXml } from '../intake/marcxml/xml.ts';

test('a message stays on its line, whatever it quotes', () => {
  const report = emptyReport('batch');
  const problem = { code: 'INPUT_INVALID' as const, message: 'expected a leader, came "00\nam"', place: {} };
  addProblem(report, problem);
  addRemark(report, problem);
  expect([report.problems, Object.values(report.remarks)]).toEqual([
    [{ ...problem, message: 'expected a leader, came "00\\nam"' }],
    [{ count: 1, examples: [{ ...problem, message: 'expected a leader, came "00\\nam"' }] }],
  ]);
});

test('each problem of a broken file is one line of the report', async () => {
  const report = emptyReport('batch');
  const text = collection(
    recordXml(1).replace(' a 4500', '\n 4500').replace('>1<', '>1\n2<'),
    recordXml(2, '\n</b>\n'),
  );
  const intentions = marcxmlIntentions(
    (async function* () {
      yield text;
    })(),
  );
  for await (const intention of intentions) if (intention.outcome === 'refused') addProblem(report, intention.problem);
  const lines = reportText(report, false).trimEnd().split('\n');
  expect(lines.slice(3).every(line => line.startsWith('  '))).toBe(true);
  expect(lines).toHaveLength(3 + report.problems.length);
  expect(report.problems.length).toBeGreaterThanOrEqual(2);
});
