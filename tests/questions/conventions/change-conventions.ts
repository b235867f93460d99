import { askStore } from '../../../src/questions/ask-store.ts';
import { conventionsInForce } from '../../../src/questions/conventions-in-force.ts';
import { draw } from '../../../src/questions/draw.ts';
import type { GraphStore } from '../../../src/store/graph-store.ts';
import { changeableKeys, otherConvention } from '../../support/other-convention.ts';
import { type Dice, dice, randomPlaces } from '../../support/random-graph.ts';
import {
  type AnyQuestion,
  answerText,
  firstRows,
  nextRows,
  randomClaim,
  randomQuestions,
  told,
  writeAll,
} from '../../support/random-world.ts';

/** An answer that names no convention that was changed, and is another all the same; or names one in the version it had. */
export interface Wrong {
  readonly seed: number;
  readonly key: string;
  readonly values: readonly [unknown, unknown];
  readonly question: string;
  readonly before: string;
  readonly after: string;
}

export interface Tried {
  readonly wrong?: Wrong;
  /** Keys whose change made what an answer tells another, beside the version. */
  readonly telling: ReadonlySet<string>;
  /** Of all questions: answers that name a convention that was changed, and those that do not. */
  readonly named: number;
  readonly unnamed: number;
}

/**
 * Changes conventions of random graphs, one after the other, and asks the same before and after: the answer is to be another if,
 * and only if, it named what was changed, or rests now on a way that it did not rest on.
 * @param spoil of an answer's text: a planted fault
 */
export async function changeConventions(
  open: () => Promise<GraphStore>,
  graphs: number,
  from: number,
  spoil: (text: string) => string = same => same,
): Promise<Tried> {
  const telling = new Set<string>();
  let [named, unnamed] = [0, 0];
  for (let seed = from; seed < from + graphs; seed++) {
    const roll = dice(seed);
    const store = await open();
    await writeAll(store, [firstRows(roll), nextRows(roll), approximately(roll)]);
    const questions = questionsOf(roll);
    let before = await answers(store, questions, spoil);
    for (let change = 0; change < 12; change++) {
      const conventions = await conventionsInForce(store);
      // Half of the changes are of what some answer rests on.
      const used = changeableKeys.filter(key => before.some(text => names(text, key)));
      const key = roll.pick(used.length > 0 && roll.chance(0.5) ? used : changeableKeys);
      const other = otherConvention(key, conventions, roll);
      await writeAll(store, [[other]]);
      const after = await answers(store, questions, spoil);
      for (const [i, question] of questions.entries()) {
        const [one, two] = [before[i]!, after[i]!];
        const isNamed = names(one, key) || (comesIntoForce(key) && names(two, key));
        isNamed ? named++ : unnamed++;
        if (withoutVersions(one) !== withoutVersions(two)) telling.add(key);
        if ((one !== two) === isNamed) continue;
        await store.close();
        const values = [conventions.all.find(each => each.key === key)!.value, other.value] as const;
        return {
          wrong: { seed, key, values, question: question.says, before: one, after: two },
          telling,
          named,
          unnamed,
        };
      }
      before = after;
    }
    await store.close();
  }
  return { telling, named, unnamed };
}

async function answers(
  store: GraphStore,
  questions: readonly AnyQuestion[],
  spoil: (text: string) => string,
): Promise<readonly string[]> {
  const graph = { questions: askStore(store), store };
  const texts: string[] = [];
  for (const question of questions) texts.push(spoil(await answerText(graph, question)));
  return texts;
}

const metadata = /<metadata>.*?<\/metadata>/;

/** A route or a speed by its places and years: an answer rests on it from when it is about them. */
function comesIntoForce(key: string): boolean {
  return key.startsWith('route.') && !wholly.includes(key);
}

const wholly = ['route.detour.land', 'route.detour.sea', 'route.orderAllowance', 'route.ports', 'route.sameTown'];

/** In an answer as JSON, or in the text of a drawing. */
function names(text: string, key: string): boolean {
  return text.includes(`"key":"${key}"`) || (metadata.exec(text)?.[0].includes(` ${key} `) ?? false);
}

function withoutVersions(text: string): string {
  return text.replace(/"version":\d+/g, '').replace(metadata, '');
}

/** What is dated about a year, a month, a day, a season, a decade, a century, perhaps, or one of several days. */
function approximately(roll: Dice) {
  const forms = [
    '1838~',
    '1838-03~',
    '1838-03-07~',
    '1838-21~',
    '183X~',
    '18XX~',
    '1838?',
    '1838-03?',
    '[..1838]',
    '[1776..]',
  ];
  return Array.from({ length: 6 }, (_, i) => {
    const dating = randomClaim(`about-${i}`, roll, 'Dating');
    return { ...dating, date: roll.pick(forms) } as typeof dating;
  });
}

function questionsOf(roll: Dice): readonly AnyQuestion[] {
  const search = (asked: object) =>
    told('search', { ...asked, page: { first: 9 } }, (questions, of) => questions.search(of));
  return [
    ...randomQuestions(8, roll),
    search({ text: roll.pick(['the dog', 'gate x', 'No. 1']), kinds: ['Plate', 'Edition', 'Motif'] }),
    search({ dates: roll.pick(['1838', '1776/1800', '1840~']), kinds: ['Edition'] }),
    search({ place: roll.pick(randomPlaces).id, kinds: ['Edition', 'Work'] }),
    told('draw', 'plate-any-0', (_questions, of, store) => draw(store, { what: 'LINEAGE', of })),
    told('draw', 'work-of-one', (_questions, of, store) => draw(store, { what: 'DESCENT', of })),
  ];
}
