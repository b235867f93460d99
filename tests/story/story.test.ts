import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askStore } from '../../src/questions/ask-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { demoFolder, demoStore, type engines } from '../support/demo-store.ts';
import { describeOnEngines } from '../support/describe-on-engines.ts';
import { inAFootnote } from './page/in-a-footnote.ts';
import { pageSentences } from './page/page-sentences.ts';
import { type Sentence, type Told, withdrawn } from './page/sentence.ts';
import { theDish } from './page/the-dish.ts';
import { theFishMarket } from './page/the-fish-market.ts';
import { thePatternBook } from './page/the-pattern-book.ts';
import { theTeaTable } from './page/the-tea-table.ts';
import { whatContradicts } from './page/what-contradicts.ts';

const page = readFileSync(join(demoFolder, 'README.md'), 'utf8');
const story = [...theDish, ...thePatternBook, ...theFishMarket, ...theTeaTable, ...whatContradicts, ...inAFootnote];
const told = story.map(({ says }) => says);

type Engine = keyof typeof engines;
type Change = Partial<Pick<Sentence, 'planted' | 'added'>>;

function tellerOf(engine: Engine, { planted = {}, added = [] }: Change = {}) {
  const opened: GraphStore[] = [];
  const open = async (extra: Sentence['planted'] = {}) => {
    const store = await demoStore(engine, { ...planted, ...extra }, added);
    opened.push(store);
    return askStore(store);
  };
  return {
    open: async (): Promise<Told> => ({
      questions: await open(),
      without: claim => open({ [claim]: withdrawn }),
    }),
    close: () => Promise.all(opened.map(store => store.close())),
  };
}

async function tell({ ask, answer }: Sentence, world: Told): Promise<void> {
  expect(await ask(world)).toEqual(answer);
}

test('each sentence of the page is told here, in its order, and nothing else', () => {
  expect(told).toEqual(pageSentences(page));
});

test('a sentence more on the page would be missed', () => {
  expect(told).not.toEqual(pageSentences(`${page}\n\nThe gull is *still* there.`));
  expect(
    pageSentences(
      '# Title\n\nOne of\ntwo. Two.\n\n- A *third*: yes.\n- 4.\n\n```sh\nno command.\n```\n\n| no | table |',
    ),
  ).toEqual(['One of two.', 'Two.', 'A third: yes.', '4.']);
});

describeOnEngines('the page, told by %s', engine => {
  const teller = tellerOf(engine);
  let world: Told;
  beforeAll(async () => {
    world = await teller.open();
  });
  afterAll(() => teller.close());

  test.each(story)('$says', sentence => tell(sentence, world));
});

describe('a planted change makes this sentence untrue, and no other', () => {
  test.each(story)('$says', async ({ says, planted, added }) => {
    const teller = tellerOf('memory', { planted, ...(added === undefined ? {} : { added }) });
    const world = await teller.open();
    const untrue: string[] = [];
    for (const sentence of story.filter(each => each.says === says || each.supposes !== true)) {
      await tell(sentence, world).catch((error: unknown) => {
        if (!(error instanceof Error) || error.name !== 'AssertionError') throw error;
        untrue.push(sentence.says);
      });
    }
    await teller.close();
    expect(untrue).toEqual([says]);
  });
});
