import { writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const store = ['--store', temporaryStore()];

beforeAll(async () => {
  expect(await runCli(['intake', 'graph', ...demoFiles, ...store])).toMatchObject({ code: 0, err: '' });
});

const said = async (...args: readonly string[]) => (await runCli([...args, ...store])).out;

describe('find', () => {
  test('names each record, its kind and its id; an edition by its imprint too', async () => {
    expect(await said('find', 'zwolf', 'kupf')).toBe(
      [
        'Lust am Ufer, in zwölf Kupfern. Leipzig, Weidners Erben, 1758  — edition',
        '    edition-shore-leipzig-1758',
        '',
      ].join('\n'),
    );
  });

  test('finds in the demo world what its help gives as examples', async () => {
    const { out: help } = await runCli(['find', '--help']);
    const examples = [...help.matchAll(/^ {2}platestemma find (?!--help|\[)(.*)$/gm)].map(([, given = '']) =>
      [...given.matchAll(/"([^"]*)"|\S+/g)].map(([word, quoted]) => quoted ?? word),
    );
    expect(examples).toHaveLength(6);
    for (const args of examples) expect(await said('find', ...args), args.join(' ')).toMatch(/ {2}— .+\n {4}\S+\n/);
  });

  test('prints what a terminal would obey as JSON escapes it', async () => {
    const file = temporaryStore();
    const graph = `${file}.jsonl`;
    const caption = 'The \u001b[31mred\u0007 boat\u009b2J';
    writeFileSync(graph, `${JSON.stringify({ id: 'plate-red-boat', kind: 'Plate', caption })}\n`);
    await runCli(['intake', 'graph', graph, '--store', file]);
    const asked = [
      ['find', 'boat'],
      ['ask', 'lineage', 'plate-red-boat'],
    ];
    for (const args of [...asked, ['cite', 'plate-red-boat'], ['cite', 'plate-red-boat', '--format', 'bibtex']]) {
      const { out } = await runCli([...args, '--store', file]);
      expect([args, out.includes('red'), /[^\n\P{Cc}]/u.test(out)]).toEqual([args, true, false]);
    }
    expect((await runCli(['find', 'boat', '--store', file])).out).toContain('The \\u001b[31mred\\u0007 boat\\u009b2J');
  });

  test('says that nothing was found', async () => {
    expect(await runCli(['find', 'zebra', ...store])).toEqual({
      code: 0,
      out: 'Nothing found for "zebra".\n',
      err: '',
    });
  });

  test('says where what it finds has only some of the words', async () => {
    expect(await said('find', 'fish', 'market', 'zebra', '--first', '1')).toBe(
      [
        'Nothing has all of these words. With some of them:',
        'A fish market on the beach  — motif',
        '    motif-table-fish-market',
        'More were found: ask for more with --first, or with more words.',
        '',
      ].join('\n'),
    );
    const found = await said('find', 'dish', 'shore');
    expect(found).toMatch(/^Dish with shore scenes {2}— piece\n(.|\n)*\nWith some of the words:\n/);
  });

  test('keeps to kinds and to a number, and says that there is more', async () => {
    expect(await said('find', 'shore', '--kind', 'Edition', '--kind', 'Work', '--first', '1')).toBe(
      [
        'Pleasures of the Shore  — work',
        '    work-shore-pleasures',
        'More were found: ask for more with --first, or with more words.',
        '',
      ].join('\n'),
    );
  });

  test('gives JSON with the names of the API', async () => {
    expect(await jsonOf(['find', 'ohlsen', ...store])).toEqual({
      nodes: [{ id: 'agent-peter-ohlsen', kind: 'Agent', match: 'BEGINNING', label: 'Peter Ohlsen' }],
      hasNextPage: false,
      cut: false,
      conventions: [{ key: 'limit.search', id: 'convention-limit-search', version: 1 }],
    });
  });

  test('names the conventions by which dates are read where days are asked for', async () => {
    expect(await said('find', '--dates', '1750~')).toMatch(/^Conventions used: .*date\.slack\.year/m);
    expect(await said('find', 'ohlsen')).not.toContain('Conventions used');
  });
});

describe('ask reach', () => {
  test('tells the object, the counts, and each edition with its room, way and grounds', async () => {
    const text = await said('ask', 'reach', '--piece', 'piece-shore-dish');
    for (const part of [
      'Ellerholm faience works',
      'between 1 January 1766 and 1 January 1772',
      '        6  in time on every reckoning\n        5  in time on some reckonings\n        1  too late on every reckoning\n',
      'Lust am Ufer, in zwölf Kupfern. Leipzig, Weidners Erben, 1758',
      '2172 days of room',
      '30 days short',
      'stay-works-at-ellerholm',
      'decoratedWithin',
      '"In time" is not "was there"',
    ]) {
      expect(text).toContain(part);
    }
    expect(text).not.toMatch(/undefined|NaN|\[object/);
  });

  test('gives JSON with days written out', async () => {
    const answer = await jsonOf(['ask', 'reach', '--piece', 'piece-shore-dish', '--first', '1', ...store]);
    expect(answer).toMatchObject({
      objectDay: { first: '1766-01-01', last: '1772-01-01' },
      counts: { inEveryCase: 6, inSomeCases: 5, inNoCase: 1, contradictory: 0 },
      editions: {
        nodes: [
          {
            edition: 'edition-ferry-sheet',
            verdict: 'IN_EVERY_CASE',
            margin: { every: 1075, some: 4748 },
            arrival: { first: '1755-01-02', last: '1763-01-22' },
          },
        ],
        hasNextPage: true,
      },
    });
  });

  test('takes a place by its name, a form in small letters, and editions that are not said to be illustrated', async () => {
    const asked = ['ask', 'reach', '--place-name', 'Hamburg', '--by', '1770', ...store];
    expect(await jsonOf([...asked, '--form', 'pattern-book'])).toMatchObject({
      counts: { inEveryCase: 3, inSomeCases: 1, inNoCase: 1 },
    });
    expect(await jsonOf([...asked, '--illustrated=no'])).toMatchObject({ counts: { inEveryCase: 0, inNoCase: 0 } });
  });
});

describe('ask lineage', () => {
  test('tells each picture with its days, direction, publications, and the evidence of each step', async () => {
    expect(await said('ask', 'lineage', 'plate-evening-ferry')).toBe(
      `Lineage of De Avondveer
    single-sheet print
    by Jacob Terwiel (engraver)
    made on or before 31 December 1761 (no date of its making is recorded)
    in De Avondveer. P. Hartigh exc. Amst.
        published between 1 January 1755 and 31 December 1761
    plate-evening-ferry

A direction after a name is that against the picture asked about; one in a step, that against its source.

What it comes from
  The Ferry at Evening — lost artwork, oil on panel, in the same direction
      by Cornelis Braam (artist)
      made on or before 31 December 1761 (no date of its making is recorded)
      “De Avondveer” was copied from “The Ferry at Evening”: by eye, in the same direction, straight from it
          evidence: seen on “De Avondveer”, “C. Braam pinx.”
          copying-ferry-print
      artwork-evening-ferry

What was made from it
  A ferry with a cow — motif on Dish with shore scenes, in the same direction
      made on or after 1 January 1766 (no date of its making is recorded)
      “A ferry with a cow” was copied from “De Avondveer”: by eye, in the same direction, straight from it, probable
          evidence: seen on “A ferry with a cow”
          copying-dish-ferry
      motif-dish-ferry

Earliest: The Ferry at Evening.
Latest: A ferry with a cow.

About the recorded claims: "none" means not if these claims are right. A score or verdict is not proof and not appraisal.
Reasoned from claims still said, held, and at least possible.
Conventions used: copy.afterIssue, copy.minLag, limit.depth, limit.lineage, person.minMakingAge.
`,
    );
  });

  test('follows one way as far as it is told, and says that there is more', async () => {
    const text = await said('ask', 'lineage', 'motif-dish-net-menders', '--towards', 'sources', '--depth', '1');
    expect(text).toContain('What it comes from\n  Die Netzflicker — plate, in the same direction\n');
    expect(text).not.toContain('What was made from it');
    expect(text).toContain('There is more than this: ask for it with --depth');
  });

  test('gives JSON with the names of the API', async () => {
    const asked = ['ask', 'lineage', 'motif-dish-net-menders', '--towards', 'sources', ...store];
    expect(await jsonOf(asked)).toMatchObject({
      picture: 'motif-dish-net-menders',
      links: {
        nodes: [
          { record: 'motif-dish-net-menders', depth: 0, made: { first: '1766-01-01', last: null }, handedness: 'SAME' },
          {
            record: 'plate-ufer-4-net-menders',
            appearances: [
              {
                appearance: 'appearance-netzflicker-leipzig',
                edition: 'edition-shore-leipzig-1758',
                locator: 'no. 4',
                published: { first: '1758-01-01', last: '1758-12-31' },
              },
            ],
          },
          { record: 'plate-shore-4-net-menders', handedness: 'REVERSED' },
        ],
        steps: [
          {
            kind: 'Copying',
            id: 'copying-dish-menders',
            copy: 'motif-dish-net-menders',
            source: 'plate-ufer-4-net-menders',
          },
          { kind: 'Copying', id: 'copying-leipzig-menders' },
        ],
      },
      earliest: ['plate-shore-4-net-menders'],
      latest: ['motif-dish-net-menders'],
      contradictions: [],
      missingLinks: [],
      cut: false,
    });
  });

  test.each([
    [['work-ferry-print'], 1, 'KIND_MISMATCH: expected the id of a record of the kind Artwork or Plate'],
    [['plate-no-such'], 1, 'INPUT_INVALID: expected the id of a record of the kind Artwork or Plate'],
    [['plate-evening-ferry', '--depth', '31'], 2, 'expected a whole number from 0 to 30 for --depth, came "31"'],
    [['plate-evening-ferry', '--towards', 'up'], 2, ''],
    [[], 2, ''],
  ])('refuses %j', async (args, code, message) => {
    const run = await runCli(['ask', 'lineage', ...args, ...store]);
    expect([run.code, run.out]).toEqual([code, '']);
    expect(run.err).toContain(message);
  });
});

describe('ask descent', () => {
  test('tells each edition with its days, what it was made from, and what became of the plates', async () => {
    expect(await said('ask', 'descent', 'edition-shore-leipzig-1758')).toBe(
      `Descent of Lust am Ufer, in zwölf Kupfern
The number says how far down the line an edition stands: 1 descends from none of the others.

1  Vermaak aan de oever, in twaalf printen. t'Amsterdam, by P. Hartigh in de Vergulde Zwaan, 1751
   published between 1 January 1751 and 31 December 1751
   2 plates joined to no plate of an earlier edition
       “The net menders” (plate-shore-4-net-menders)
       “Negen vaartuigen” (plate-shore-6-craft)
   edition-shore-amsterdam-1751

2  Lust am Ufer, in zwölf Kupfern. Leipzig, Weidners Erben, 1758
   published between 1 January 1758 and 31 December 1758
   “Lust am Ufer, in zwölf Kupfern” was made from “Vermaak aan de oever, in twaalf printen”: text translated, without leave, pictures from copied surfaces
       editiondescent-leipzig-from-amsterdam
   1 plate copied
       “Die Netzflicker”, from “The net menders” (plate-ufer-4-net-menders)
   1 plate of the edition before: not known to be in this one, nor what follows them
       “Negen vaartuigen” (plate-shore-6-craft)
   edition-shore-leipzig-1758

About the recorded claims: "none" means not if these claims are right. A score or verdict is not proof and not appraisal.
Reasoned from claims still said, held, and at least possible.
Conventions used: copy.minLag, imprintAhead, limit.lineage.
`,
    );
  });

  test('gives JSON with the names of the API', async () => {
    expect(await jsonOf(['ask', 'descent', 'work-shore-pleasures', ...store])).toMatchObject({
      asked: 'work-shore-pleasures',
      editions: [
        { edition: 'edition-shore-amsterdam-1751', depth: 0, published: { first: '1751-01-01', last: '1751-12-31' } },
        {
          edition: 'edition-shore-leipzig-1758',
          plates: [
            { plate: 'plate-ufer-4-net-menders', fate: 'COPIED', fromPlate: 'plate-shore-4-net-menders' },
            { plate: 'plate-shore-6-craft', fate: 'NOT_KNOWN' },
          ],
        },
        { edition: 'edition-shore-london-1764', plates: [{ fate: 'WENT_ALONG' }, { fate: 'SAME_SURFACE' }] },
        { edition: 'edition-shore-amsterdam-1768', depth: 2 },
      ],
      steps: [
        'editiondescent-leipzig-from-amsterdam',
        'editiondescent-london-from-amsterdam',
        'editiondescent-second-amsterdam',
      ],
      cut: false,
    });
  });

  test('refuses what is no work and no edition', async () => {
    expect(await runCli(['ask', 'descent', 'plate-evening-ferry', ...store])).toMatchObject({ code: 1, out: '' });
  });
});

describe('ask history', () => {
  test('tells who, when and why', async () => {
    expect(await said('ask', 'history', 'piece-shore-dish')).toMatch(
      /^3 {2}2026-01-01T00:\d\d:\d\d\.000Z {2}intake: graph {2}\(added\)\n$/,
    );
  });

  test('refuses an id under which nothing is recorded', async () => {
    expect(await runCli(['ask', 'history', 'piece-no-such', ...store])).toEqual({
      code: 1,
      out: '',
      err: 'NOT_FOUND: nothing is recorded under "piece-no-such"\n',
    });
  });
});

describe('cite', () => {
  test.each([
    [[], 'Lust am Ufer, in zwölf Kupfern. Leipzig: Weidners Erben, 1758.'],
    [['--style', 'mhra'], 'Lust am Ufer, in zwölf Kupfern (Leipzig: Weidners Erben, 1758)'],
    [['--style', 'apa'], 'Lust am Ufer, in zwölf Kupfern. (1758). Weidners Erben.'],
  ])('writes text in the style of %j', async (style, text) => {
    expect(await said('cite', 'edition-shore-leipzig-1758', ...style)).toBe(`${text}\n`);
  });

  test('writes BibTeX', async () => {
    expect(await said('cite', 'edition-shore-leipzig-1758', '--format', 'bibtex')).toBe(
      [
        '@book{lust1758-shore-leipzig-1758,',
        '  title = {{Lust am Ufer, in zwölf Kupfern}},',
        '  address = {Leipzig},',
        '  publisher = {Weidners Erben},',
        '  year = {1758},',
        '  language = {de},',
        '}',
        '',
      ].join('\n'),
    );
  });

  test('writes CSL-JSON that is JSON', async () => {
    expect(JSON.parse(await said('cite', 'edition-shore-leipzig-1758', '--format', 'csl'))).toMatchObject([
      { id: 'edition-shore-leipzig-1758', type: 'book', issued: { 'date-parts': [[1758]] } },
    ]);
  });

  test.each([
    [['edition-no-such'], 'NOT_FOUND: '],
    [['work-ferry-print'], 'INPUT_INVALID: expected the id of an edition'],
    [['edition-ferry-sheet', '--style', 'nope'], 'INPUT_INVALID: style: '],
    [['edition-ferry-sheet', '--style', 'no-such.csl'], 'SOURCE_REFUSED: expected a style that can be read'],
  ])('refuses %j', async (args, message) => {
    const { code, out, err } = await runCli(['cite', ...args, ...store]);
    expect([code, out, err.slice(0, message.length)]).toEqual([1, '', message]);
  });
});
