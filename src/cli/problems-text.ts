import type { Contradiction } from '../questions/lineage-answer.ts';
import type { Desk } from './context.ts';
import { contradictionsText } from './contradictions-text.ts';
import { rowsInSentences } from './rows-in-sentences.ts';

/** Contradictions in which something takes part that was written; nothing where there are none. */
export async function problemsText(
  { store, questions }: Desk,
  problems: readonly Contradiction[] | undefined,
): Promise<string> {
  if (problems === undefined) return 'It is written, but whether it contradicts anything could not be looked for.\n';
  if (problems.length === 0) return '';
  const [conventions, involved] = await Promise.all([
    questions.conventions(),
    store.rows([...new Set(problems.flatMap(problem => problem.involved))]),
  ]);
  const rows = await rowsInSentences(
    store,
    involved.filter(row => row !== undefined),
  );
  return `${contradictionsText(problems, { conventions }, rows).join('\n')}\n`;
}
