import { expect, test } from 'vitest';
import { descentText } from '../../src/cli/descent-text.ts';
import { lineageText } from '../../src/cli/lineage-text.ts';
import { descent } from '../../src/questions/descent.ts';
import { lineage } from '../../src/questions/lineage.ts';
import type { LineageAsked } from '../../src/questions/lineage-answer.ts';
import { demoStore, type Planted } from '../support/demo-store.ts';

type Row = Readonly<Record<string, unknown>>;

async function told(asked: LineageAsked, added: readonly Row[], planted: Planted = {}): Promise<string> {
  const store = await demoStore('memory', planted, added);
  return lineageText(await lineage(store, asked), store);
}

const earlyPlate = {
  id: 'dating-ufer-made',
  kind: 'Dating',
  of: 'plate-ufer-4-net-menders',
  event: 'MADE',
  date: '1749',
};
const dog = {
  id: 'detail-of-the-dog',
  kind: 'Detail',
  of: 'plate-shore-4-net-menders',
  labels: [{ text: 'The dog' }],
  region: [{ x: 10, y: 60, width: 20, height: 30 }],
};

test('a contradiction of dates is told by names, with every claim and convention that takes part', async () => {
  const text = await told({ of: 'plate-ufer-4-net-menders', towards: 'SOURCES' }, [earlyPlate]);
  expect(text).toContain(
    'made between 1 January 1749 and 31 December 1749 (claims about its dates contradict each other)',
  );
  const from = text.indexOf('What cannot all be right');
  const lines = text.slice(from).split('\n\n')[0]!.split('\n');
  expect(lines[1]).toMatch(/^ {2}“Die Netzflicker” made: .*306 days short$/);
  expect(lines.slice(2).sort()).toEqual([
    '      convention imprintAhead',
    '      “Die Netzflicker” was copied from “The net menders”: cut anew, in reverse, straight from it, through “Vermaak aan de oever, in twaalf printen” (copying-leipzig-menders)',
    '      “Die Netzflicker” was made 1749 (dating-ufer-made)',
    '      “Vermaak aan de oever, in twaalf printen” was published 1751 (dating-shore-amsterdam-1751)',
  ]);
});

test('a missing link is told with its claim', async () => {
  const text = await told({ of: 'plate-ufer-4-net-menders', towards: 'SOURCES' }, [], {
    'copying-leipzig-menders': { through: 'edition-views-leipzig-1779', remove: 'AT_SOME_REMOVE' },
  });
  expect(text).toContain(
    [
      'What is missing',
      '  copied at some remove: what lay between is not recorded',
      '      “Die Netzflicker” was copied from “The net menders”: cut anew, in reverse, at some remove, through “Landschaften für Fayencemaler” (copying-leipzig-menders)',
      '  no appearance of the source in the edition that the copyist used is recorded',
    ].join('\n'),
  );
});

test('steps of which only one is true are told together', async () => {
  const text = await told({ of: 'motif-table-pilot', towards: 'SOURCES' }, []);
  const lines = [
    'Of these only one is true',
    '  “A pilot going aboard” was copied from “Pilot Going Aboard”: by eye, direction not known (copying-table-pilot-drawing)',
    '  “A pilot going aboard” was copied from “The Pilot hailed”: by eye, in reverse (copying-table-pilot-mezzotint)',
    '',
  ];
  expect(text).toContain(`\n\n${lines.join('\n')}`);
  const open = await told({ of: 'motif-table-pilot', towards: 'SOURCES' }, [], {
    'alternatives-table-pilot': { open: true },
    'copying-table-pilot-drawing': { stance: 'REJECTED' },
  });
  expect(open).toContain(`\n\n${[lines[0], lines[2], '  or another that is not recorded', ''].join('\n')}`);
  expect(await told({ of: 'motif-table-fish-market' }, [])).not.toContain('only one is true');
});

test('what a detail is part of stands apart from what was made from it', async () => {
  const copy = {
    id: 'copying-dish-dog',
    kind: 'Copying',
    copy: 'motif-dish-lighthouse',
    source: 'detail-of-the-dog',
    handedness: 'REVERSED',
  };
  const text = await told({ of: 'detail-of-the-dog', towards: 'COPIES' }, [dog, copy]);
  expect(
    text
      .split('\n')
      .filter(line => /^( {2})?\S/.test(line))
      .slice(0, 7),
  ).toEqual([
    'Lineage of The dog',
    'A direction after a name is that against the picture asked about; one in a step, that against its source.',
    'What it is part of',
    '  The net menders — plate, in the same direction, in part',
    'What was made from it',
    '  A lighthouse with a fire basket — motif on Dish with shore scenes, in reverse',
    'Earliest: The dog.',
  ]);
});

test('a detail that nothing was copied from is not told', async () => {
  const text = await told({ of: 'plate-shore-4-net-menders' }, [dog]);
  expect(text).not.toContain('The dog');
  expect(text).toContain('What it comes from: nothing is recorded.');
});

test('plates of an edition are told in the order of where they stand in it', async () => {
  const tenth = {
    id: 'appearance-a-ferry-amsterdam',
    kind: 'Appearance',
    plate: 'plate-evening-ferry',
    edition: 'edition-shore-amsterdam-1751',
    presence: 'PRESENT',
    number: '10',
  };
  const store = await demoStore('memory', {}, [tenth]);
  const lines = (await descentText(await descent(store, 'edition-shore-amsterdam-1751'), store)).split('\n');
  const from = lines.findIndex(line => line.includes('3 plates joined to no plate'));
  expect(lines.slice(from + 1, from + 4).map(line => line.trim().split(' (')[0])).toEqual([
    '“The net menders”',
    '“Negen vaartuigen”',
    '“De Avondveer”',
  ]);
});

test('a descent whose dates contradict says so', async () => {
  const store = await demoStore('memory', { 'dating-shore-leipzig-1758': { date: '1748' } });
  const text = await descentText(await descent(store, 'edition-shore-leipzig-1758'), store);
  expect(text).toContain('(claims about its dates contradict each other)');
  expect(text).toContain('“Lust am Ufer, in zwölf Kupfern” published: ');
  expect(text).not.toMatch(/undefined|NaN|\[object/);
});
