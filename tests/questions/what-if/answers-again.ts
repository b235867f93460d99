import type { RecordKindName } from '../../../src/domain/model/kinds.ts';
import { askStore } from '../../../src/questions/ask-store.ts';
import { commandStore } from '../../../src/questions/command-store.ts';
import { draw } from '../../../src/questions/draw.ts';
import type { SearchQuestion } from '../../../src/questions/questions.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { type Dice, dice, randomDate, randomPlaces } from '../../support/random-graph.ts';
import {
  type AnyQuestion,
  answerText,
  distinct,
  firstRows,
  nextRows,
  randomQuestions,
  randomRecord,
  told,
  writeAll,
} from '../../support/random-world.ts';
import { testWorld } from '../../support/test-world.ts';

/** Writes, and now and then undoes what was written last, with the rows that it had added. */
async function edit(store: GraphStore, number: number, roll: Dice): Promise<void> {
  const world = testWorld(number);
  const commands = commandStore(store, world);
  const signed = { who: 'a tester', why: 'chance' };
  const last = await store.lastChangeSet();
  if (last > 1 && roll.chance(0.1)) {
    await commands.undo({ changeSet: last }, signed).catch(codeOf);
    return;
  }
  const fresh = roll.chance(0.2)
    ? [randomRecord(roll.pick(['Plate', 'Edition', 'Motif']), `fresh-${number % 20}`, roll)]
    : [];
  await writeAll(store, [distinct([...nextRows(roll), ...fresh])]);
}

/** What was changed since, or is named, is not undone. */
function codeOf(error: { readonly code?: string }): void {
  if (!['REVISION_MOVED', 'STILL_NAMED'].includes(error.code ?? '')) throw error;
}

function questionsOfAll(roll: Dice): readonly AnyQuestion[] {
  const id = roll.pick(['plate-any-0', 'edition-of-0', 'copying-any-0', 'plate-fresh-1', 'dating-any-1']);
  const kind = roll.pick<RecordKindName>(['Plate', 'Edition', 'Motif']);
  return [
    ...randomQuestions(3, roll, ['plate-fresh-1', 'edition-fresh-2']),
    told('search', randomSearch(roll), (questions, asked) => questions.search(asked)),
    told('search', randomSearch(roll), (questions, asked) => questions.search(asked)),
    told('history', { id, after: roll.below(2) }, (questions, { id: of, after }) =>
      questions.history(of, { first: 5, after }),
    ),
    told('changes', roll.below(9), (questions, after) => questions.changes({ first: 3, after })),
    told('differences', 1, (questions, from) => questions.differences({ from, page: { first: 20 } })),
    told('conventions', '', questions => questions.conventions()),
    told('citation', ['edition-of-0', 'plate-any-1'], (questions, of) =>
      questions.citation({ of, format: 'CSL_JSON' }),
    ),
    // By itself: a drawing says below it how the graph was taken.
    told('draw', 'plate-any-0', (_questions, of, store) => draw(store, { what: 'LINEAGE', of })),
    told('draw', 'work-of-one', (_questions, of, store) => draw(store, { what: 'DESCENT', of })),
    told('list', kind, (_questions, of, store) => store.list(of, { sort: 'd', id: '' }, 5)),
    told('count', kind, (_questions, of, store) => store.count(of)),
  ];
}

function randomSearch(roll: Dice): SearchQuestion {
  const text = roll.pick(['the dog', 'dog gate', 'no', 'd’après nature', '花', '𠮷野', 'gate x', 'No. 1']);
  const filter = roll.pick<Partial<SearchQuestion>>([
    {},
    { kinds: ['Plate', 'Edition'] },
    { dates: randomDate(roll) },
    { place: roll.pick(randomPlaces).id },
    { subject: roll.pick(['25F3', '25', '46C2']) },
    { kinds: ['Edition'], place: 'place-of-london' },
  ]);
  const isByText = roll.chance(0.6) || Object.keys(filter).length === 0;
  return { ...(isByText ? { text } : {}), ...filter, page: { first: 1 + roll.below(9) } };
}

interface Given {
  readonly number: number;
  readonly moment: string;
  readonly answers: readonly { readonly question: AnyQuestion; readonly text: string }[];
}

/** Makes edits, and asks at some moments between them what it asks again at the end. */
export async function firstOtherwise(
  store: GraphStore,
  edits: number,
  moments: number,
  seed: number,
  spoil: (store: GraphStore) => GraphStore = same => same,
): Promise<object | undefined> {
  const roll = dice(seed);
  const given: Given[] = [];
  await writeAll(store, [firstRows(roll)]);
  const now = { questions: askStore(store), store };
  for (let number = 1; number <= edits; number++) {
    await edit(store, number, roll);
    if (number % Math.ceil(edits / moments) !== 0) continue;
    const answers: { question: AnyQuestion; text: string }[] = [];
    for (const question of questionsOfAll(roll)) answers.push({ question, text: await answerText(now, question) });
    const last = await store.lastChangeSet();
    const [changeSet] = await store.changeSets([last]);
    given.push({ number: last, moment: changeSet!.moment, answers });
  }
  for (const { number, answers } of given) {
    for (const { question, text } of answers) {
      const then = await askStore(spoil(store)).given({ asOf: { changeSet: number } });
      const again = await answerText(then, question);
      if (again !== text) return { seed, number, question: question.says, text, again };
    }
  }
  return undefined;
}
