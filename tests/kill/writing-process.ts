/**
 * Writes to a store without end, as people do, with acts and without, and intakes: says on a line what it begins and how many rows it comes to, and
 * then the change set that it was told. Arguments: file of the store, seed.
 */
import { readGraphFile } from '../../src/intake/graph/read-graph-file.ts';
import { applyGraphFile } from '../../src/questions/apply-graph-file.ts';
import { commandStore } from '../../src/questions/command-store.ts';
import { emptyReport } from '../../src/questions/intake-report.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import { openSqliteStore } from '../../src/store/sqlite/open.ts';
import { dice } from '../support/random-graph.ts';
import { testWorld } from '../support/test-world.ts';

const [file = '', given = '1'] = process.argv.slice(2);
const seed = Number(given);
const roll = dice(seed);
const world = testWorld(seed);
const store = checkedGraphStore(await openSqliteStore(file, { create: true }));
const commands = commandStore(store, world);
const signed = { who: 'Ada', why: `seed ${seed}` };

const plates = await someOf('Plate');
const editions = await someOf('Edition');
const datings: string[] = [];

process.stdout.write('open\n');
for (let step = 0; ; step++) await roll.pick([add, say, edit, supersede, takeBack, undo, act, act, intake])(step);

async function add(): Promise<void> {
  begin('add', 1);
  const { row, changeSet } = await commands.add(
    { kind: 'Plate', fields: { caption: `caption ${roll.below(99)}` } },
    signed,
  );
  plates.push(row!.id);
  done(changeSet);
}

async function say(): Promise<void> {
  const of = roll.pick([...plates, ...editions]);
  if (of === undefined) return;
  begin('say', 1);
  const event = of.startsWith('plate') ? 'MADE' : 'PUBLISHED';
  const fields = { of, event, date: `17${10 + roll.below(90)}` };
  const { row, changeSet } = await commands.add({ kind: 'Dating', fields }, signed);
  datings.push(row!.id);
  done(changeSet);
}

async function edit(step: number): Promise<void> {
  const id = roll.pick(plates);
  if (id === undefined) return;
  begin('edit', 1);
  done((await commands.edit({ id, fields: { caption: `step ${step} of ${seed}` } }, signed)).changeSet);
}

async function supersede(step: number): Promise<void> {
  const id = datings.pop();
  if (id === undefined) return;
  begin('supersede', 2);
  done((await commands.supersede({ id, fields: { by: `person ${step}` } }, signed)).changeSet);
}

async function takeBack(): Promise<void> {
  const id = datings.pop();
  if (id === undefined) return;
  begin('withdraw', 1);
  done((await commands.withdraw({ id }, signed)).changeSet);
}

async function undo(): Promise<void> {
  begin('add', 1);
  const { changeSet } = await commands.add({ kind: 'Plate', fields: { caption: 'a slip' } }, signed);
  done(changeSet);
  begin('undo', 1);
  done((await commands.undo({ changeSet }, signed)).changeSet);
}

/** A piece with a grid of motifs, each dated. */
async function act(step: number): Promise<void> {
  const [rows, columns] = [1 + roll.below(6), 1 + roll.below(6)];
  begin('act', 1 + 2 * rows * columns);
  const given = { pieceName: `tiles ${step} of ${seed}`, rows, columns, decorated: `17${10 + roll.below(90)}` };
  const { refusals, changeSet } = await commands.record([{ act: 'recordPiece', given }], signed);
  if (refusals.length > 0) throw new Error(`the act is refused: ${refusals[0]?.message}`);
  done(changeSet);
}

/** A graph file of one batch: a work, editions of it, and what is said of them. */
async function intake(step: number): Promise<void> {
  const name = `s${seed}-${step}`;
  const count = 1 + roll.below(30);
  const rows = [
    { id: `work-${name}-a`, kind: 'Work' },
    ...Array.from({ length: count }, (_, i) => [
      { id: `edition-${name}-${i}`, kind: 'Edition', work: `work-${name}-a`, title: `title ${i}` },
      {
        id: `dating-${name}-${i}`,
        kind: 'Dating',
        of: `edition-${name}-${i}`,
        event: 'PUBLISHED',
        date: `${1700 + i}`,
      },
    ]).flat(),
  ];
  const lines = rows.map(row => JSON.stringify(row)).join('\n');
  begin('intake', rows.length);
  const bytes = (async function* () {
    yield Buffer.from(`${lines}\n`);
  })();
  const options = { intake: name, ...signed };
  const report = await applyGraphFile(store, world, readGraphFile(bytes, {}), emptyReport(name), options);
  if (report.refused > 0) throw new Error(`the graph file is refused: ${report.problems[0]?.message}`);
  editions.push(`edition-${name}-0`);
  done(report.changeSet!);
}

function begin(what: string, rows: number): void {
  process.stdout.write(`begin ${what} ${rows}\n`);
}

function done(changeSet: number): void {
  process.stdout.write(`done ${changeSet}\n`);
}

async function someOf(kind: 'Plate' | 'Edition'): Promise<string[]> {
  return (await store.list(kind, undefined, 50)).map(({ id }) => id);
}
