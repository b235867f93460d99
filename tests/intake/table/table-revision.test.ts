import { expect, test } from 'vitest';
import { isClaimKind } from '../../../src/domain/model/kinds.ts';
import type { AnyClaim, Stamped } from '../../../src/domain/model/row.ts';
import { tableIntentions } from '../../../src/intake/table/table-intentions.ts';
import type { TableMapping } from '../../../src/intake/table/table-mapping.ts';
import { applyIntake } from '../../../src/questions/apply-intake.ts';
import { emptyReport, type IntakeReport } from '../../../src/questions/intake-report.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { memoryStore } from '../../support/memory-store.ts';
import { testWorld } from '../../support/test-world.ts';
import { header, mappingOf, once, plain } from './tables.ts';

const presence = { always: 'PRESENT' };
const prints = mappingOf({
  records: {
    print: plain.records.print,
    maker: { kind: 'Agent', named: 'engraver' },
    drawing: { kind: 'Artwork', key: { text: '{number}:drawing' } },
    book: { kind: 'Edition', named: 'book', fields: { work: 'work', title: 'book' } },
    work: { kind: 'Work', named: 'book' },
  },
  claims: [
    { kind: 'Attribution', roles: { record: 'drawing', agent: 'maker' }, fields: { role: { always: 'art' } } },
    { kind: 'Copying', roles: { copy: 'print', source: 'drawing' } },
    { kind: 'Appearance', roles: { plate: 'print', edition: 'book' }, fields: { presence } },
    {
      kind: 'Appearance',
      roles: { plate: 'print', edition: { source: 'B', key: { always: 'B-1' } } },
      fields: { presence },
      said: ['number'],
    },
    { kind: 'Dating', roles: { of: 'print' }, fields: { event: { always: 'MADE' }, date: 'date' } },
  ],
});
const books = mappingOf({
  source: 'B',
  row: 'book',
  records: {
    book: { kind: 'Edition', key: 'number', fields: { title: 'title', work: 'work' } },
    work: { kind: 'Work', named: 'title' },
  },
});

let runs = 0;

function take(store: GraphStore, mapping: TableMapping, ...rows: readonly string[]): Promise<IntakeReport> {
  const intentions = tableIntentions(once([header, ...rows].join('\n')), { mapping });
  const options = { intake: `table ${++runs}`, who: 'intake', why: 'table' };
  return applyIntake(store, testWorld(runs), intentions, emptyReport('run'), options);
}

/** Claims that are still said, by kind and locator, with what they say of one another. */
async function said(store: GraphStore): Promise<readonly string[]> {
  const rows = await store.scan('', 1000);
  const claims = rows.filter(row => isClaimKind(row.kind)) as readonly Stamped<AnyClaim>[];
  return claims
    .filter(({ standing }) => standing !== 'WITHDRAWN')
    .map(claim => [claim.kind, claim.evidence?.[0]?.locator, claim.kind === 'Dating' ? claim.date : undefined])
    .map(parts => parts.filter(each => each !== undefined).join(' '))
    .toSorted();
}

const before = ['Appearance P-1 book', 'Appearance P-1 number', 'Attribution P-1 engraver', 'Copying P-1 number'];

test('a row that comes again with other values changes its claims, and adds none twice', async () => {
  const store = memoryStore();
  await take(store, books, 'B-1,Views,,,');
  await take(store, prints, 'P-1,Kiln,A,1793,V', 'P-2,Ferry,A,1795,V');
  const other = [
    'Appearance P-2 book',
    'Appearance P-2 number',
    'Attribution P-2 engraver',
    'Copying P-2 number',
    'Dating P-2 date 1795',
  ];
  expect(await said(store)).toEqual([...before, 'Dating P-1 date 1793', ...other].toSorted());
  const changed = await take(store, prints, 'P-1,The Kiln,A,1794,V', 'P-2,Ferry,A,1795,V');
  expect(changed).toMatchObject({ edited: 1, known: 1, differing: 0, linksMade: 0, linksAwaited: 0 });
  expect(await said(store)).toEqual([...before, 'Dating P-1 date 1794', ...other].toSorted());
});

test('what it no longer says is withdrawn; what others say of the same records stays', async () => {
  const store = memoryStore();
  await take(store, books, 'B-1,Views,,,');
  await take(store, prints, 'P-1,Kiln,A,1793,V');
  expect(await take(store, prints, 'P-1,Kiln,,,V')).toMatchObject({ edited: 1 });
  expect(await said(store)).toEqual(['Appearance P-1 book', 'Appearance P-1 number', 'Copying P-1 number']);
  expect(await take(store, books, 'B-1,Views of the Shore,,,')).toMatchObject({ edited: 1 });
  expect(await said(store)).toEqual(['Appearance P-1 book', 'Appearance P-1 number', 'Copying P-1 number']);
});
