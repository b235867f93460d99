import type { Questions } from '../../../src/questions/questions.ts';
import { days } from '../../support/days.ts';
import { rowOfKind, sourcesOf, stepsOf } from './lineage-told.ts';
import type { Sentence } from './sentence.ts';

const windmill = ['dating-windmill-drawing', 'attribution-windmill-draughtsman', 'dating-deyl-life'] as const;

async function contradictions(questions: Questions, of: string) {
  const answer = await questions.lineage({ of });
  return answer.contradictions.map(({ message, ...each }) => each);
}

export const whatContradicts: readonly Sentence[] = [
  {
    says: 'The cut of the lighthouse in the magazine was printed from a wood block, and that in the almanack from a cast of it.',
    async ask(told) {
      const answer = await sourcesOf(told, 'plate-almanack-lighthouse');
      return [
        stepsOf(answer).filter(step => step.includes('matrix-')),
        ['matrix-lighthouse-block', 'matrix-lighthouse-cast'].map(id => rowOfKind(answer, 'Matrix', id)?.form),
      ];
    },
    answer: [
      [
        'matrix-lighthouse-cast < matrix-lighthouse-block',
        'plate-almanack-lighthouse < matrix-lighthouse-cast',
        'plate-cabinet-lighthouse < matrix-lighthouse-block',
      ],
      ['WOOD_BLOCK', 'STEREOTYPE'],
    ],
    planted: { 'matrix-lighthouse-cast': { form: 'WOOD_BLOCK' } },
  },
  {
    says: 'The two are therefore in the same direction, and who says that one is in reverse of the other contradicts three claims.',
    async ask({ questions }) {
      const of = (id: string, towards: 'SOURCES' | 'COPIES') => questions.lineage({ of: id, towards, depth: 1 });
      const [magazine, almanack, cast] = await Promise.all([
        of('plate-cabinet-lighthouse', 'SOURCES'),
        of('matrix-lighthouse-cast', 'COPIES'),
        of('matrix-lighthouse-cast', 'SOURCES'),
      ]);
      const printed = [magazine, almanack, cast].map(({ nodes }) => nodes[1]?.handedness);
      const said = await contradictions(questions, 'plate-almanack-lighthouse');
      return { said: said.map(({ code, involved }) => [code, involved.toSorted()]), printed };
    },
    answer: {
      said: [
        [
          'MIRROR',
          [
            'casting-lighthouse-cast',
            'copying-almanack-lighthouse',
            'printedfrom-lighthouse-almanack',
            'printedfrom-lighthouse-cabinet',
          ],
        ],
      ],
      // Each cut in reverse of its surface, the cast as the block.
      printed: ['REVERSED', 'REVERSED', 'SAME'],
    },
    planted: { 'copying-almanack-lighthouse': { handedness: 'SAME' } },
  },
  {
    says: 'The windmill of the landscapes follows a drawing that bears the year 1694 and is given to van Deyl, who had been dead for 1462 days.',
    async ask(told) {
      const answer = await sourcesOf(told, 'plate-views-9-windmill');
      return [stepsOf(answer), await contradictions(told.questions, 'plate-views-9-windmill')];
    },
    answer: [
      ['plate-views-9-windmill < artwork-windmill-drawing'],
      [{ code: 'DATES', involved: windmill, daysShort: days('1694-01-01') - days('1689-12-31') }],
    ],
    planted: { 'dating-windmill-drawing': { date: '1684' } },
  },
  {
    says: 'Give up the year, the hand or the death, and nothing contradicts any more.',
    supposes: true,
    ask: ({ without }) =>
      Promise.all(windmill.map(async claim => contradictions(await without(claim), 'plate-views-9-windmill'))),
    answer: [[], [], []],
    planted: {},
    added: [
      {
        id: 'attribution-windmill-second',
        kind: 'Attribution',
        record: 'artwork-windmill-drawing',
        agent: 'agent-abraham-van-deyl',
        role: 'art',
      },
    ],
  },
];
