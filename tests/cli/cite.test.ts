import { writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { citationRows } from '../support/citation-world.ts';
import { byRisReader, knownOf } from '../support/read-citations.ts';
import { runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const path = temporaryStore();
const store = ['--store', path];

beforeAll(async () => {
  const file = `${path}.jsonl`;
  writeFileSync(file, citationRows.map(row => `${JSON.stringify(row)}\n`).join(''));
  expect(await runCli(['intake', 'graph', file, ...store])).toMatchObject({ code: 0, err: '' });
});

const cited = async (...args: readonly string[]) => (await runCli(['cite', ...args, ...store])).out;

describe('cite', () => {
  test('writes records of several kinds in the order of the style', async () => {
    expect(await cited('piece-shore-dish', 'plate-net-menders', 'exemplar-first-copy')).toBe(
      [
        'Shore faience works. Dish with Shore Scenes. 1766. Painted faience, diameter 38 cm.',
        'Terwiel, Jacob. “The net menders.” Etching. In Vermaak aan de oever, plate 4. Amsterdam: P. Hartigh in the Gilt Swan, 1751.',
        'Vermaak aan de oever. Amsterdam: P. Hartigh in the Gilt Swan, 1751. https://example.org/kb12. Holm Library, Kb 12.',
        '',
      ].join('\n'),
    );
  });

  test('writes RIS that another reader reads', async () => {
    const text = await cited('plate-light-house', 'appearance-menders-english', '--format', 'ris');
    expect(text.endsWith('ER  - \r\n')).toBe(true);
    expect(byRisReader(text).map(item => [item.type, knownOf(item)])).toMatchObject([
      ['article-journal', { title: 'A light-house', container: 'The Cabinet', pages: '117', year: '1765' }],
      [
        'chapter',
        {
          title: 'The net menders',
          authors: ['Terwiel|Jacob'],
          volume: '2',
          pages: 'plate IV, facing p. 30',
          year: 'ca. 1764',
        },
      ],
    ]);
  });

  test('writes RIS as JSON where that is asked for', async () => {
    const { text, items } = JSON.parse(await cited('piece-shore-dish', '--format', 'ris', '--json')) as {
      readonly text: string;
      readonly items: readonly { readonly id: string; readonly text: string }[];
    };
    expect(items).toMatchObject([{ id: 'piece-shore-dish', text }]);
    expect(text).toMatch(/^TY {2}- ART\r\n/);
  });

  test.each([
    [
      ['work-ferry-sheet'],
      'INPUT_INVALID: expected the id of an edition, plate, appearance of a plate, artwork, piece',
    ],
    [['plate-no-such', '--format', 'ris'], 'NOT_FOUND: expected the id of an edition, plate'],
  ])('refuses %j', async (args, message) => {
    const { code, out, err } = await runCli(['cite', ...args, ...store]);
    expect([code, out, err.slice(0, message.length)]).toEqual([1, '', message]);
  });

  test('shows the notice of the engine in its help', async () => {
    const { out } = await runCli(['cite', '--help']);
    expect(out.replace(/\s+/g, ' ')).toContain(
      'Attribution Copyright Notice: (c) Frank Bennett. citeproc-js implements the Citation Style Language.',
    );
  });
});
