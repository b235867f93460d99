import { days } from '../../support/days.ts';
import { rowOf } from '../reach-answers.ts';
import { makersOf, nodeOf, placesOf, rowOfKind, rowsOfKind, sourcesOf, stepsOf } from './lineage-told.ts';
import { type Sentence, type Told, withdrawn } from './sentence.ts';

const reachOfDish = ({ questions }: Told) => questions.reach({ piece: 'piece-shore-dish', page: { first: 25 } });

export const theDish: readonly Sentence[] = [
  {
    says: 'Everything here is invented but three towns and the way the trade worked.',
    async ask({ questions }) {
      const page = { first: 25 };
      const known = (placeName: string) =>
        questions.reach({ at: { placeName }, by: '1766', page }).then(
          () => true,
          () => false,
        );
      const { hits } = await questions.search({ text: 'Amsterdam Leipzig London Ellerholm', kinds: ['Place'], page });
      return Promise.all(
        hits.items.map(async ({ item }) => {
          const { target } = await questions.reach({ at: { place: item.id }, by: '1766', page });
          return [target.label, await known(target.label)];
        }),
      );
    },
    // Known: to the list of imprint towns, which holds real towns alone.
    answer: [
      ['Amsterdam', true],
      ['Ellerholm', false],
      ['Leipzig', true],
      ['London', true],
    ],
    planted: { 'place-london-city': { labels: [{ text: 'London on the Moon' }] } },
  },
  {
    says: 'In 1766 the faience works at Ellerholm, on the Baltic coast, marked a dish with scenes of the shore.',
    async ask(told) {
      const { target, objectDay, rows } = await reachOfDish(told);
      const way = rows.items.find(({ item }) => item.edition === 'edition-shore-london-1764')?.item.route;
      const cited = await told.questions.citation({ of: ['piece-shore-dish'], format: 'TEXT' });
      return [
        target.label,
        objectDay.lo,
        way?.by.includes(' by sea to Kiel '),
        cited.text.includes('Dish with Shore Scenes. 1766'),
      ];
    },
    answer: ['Ellerholm faience works', days('1766-01-01'), true, true],
    planted: { 'dating-dish-year-mark': { date: '1765' } },
  },
  {
    says: 'The men mending nets were pounced from plate 4 of Lust am Ufer, a book of Leipzig.',
    async ask(told) {
      const answer = await sourcesOf(told, 'motif-dish-net-menders', 1);
      const [copying] = rowsOfKind(answer, 'Copying');
      return [stepsOf(answer), copying?.manner, placesOf(answer, 'plate-ufer-4-net-menders')];
    },
    answer: [['motif-dish-net-menders < plate-ufer-4-net-menders'], 'POUNCED', [['edition-shore-leipzig-1758', '4']]],
    planted: { 'copying-dish-menders': { manner: 'BY_EYE' } },
  },
  {
    says: 'That plate was cut in reverse, without leave, after plate 4 of Vermaak aan de oever, so that the dish shows the Amsterdam picture in reverse.',
    async ask(told) {
      const answer = await sourcesOf(told, 'motif-dish-net-menders');
      const editions = await told.questions.descent('edition-shore-leipzig-1758');
      const { manner, handedness } = rowOfKind(answer, 'Copying', 'copying-leipzig-menders') ?? {};
      return {
        copied: [manner, handedness],
        leave: rowsOfKind(editions, 'EditionDescent').map(({ earlier, leave }) => [earlier, leave]),
        there: placesOf(answer, 'plate-shore-4-net-menders')[0],
        dish: nodeOf(answer, 'plate-shore-4-net-menders')?.handedness,
      };
    },
    answer: {
      copied: ['CUT_ANEW', 'REVERSED'],
      leave: [['edition-shore-amsterdam-1751', 'WITHOUT_LEAVE']],
      there: ['edition-shore-amsterdam-1751', '4'],
      dish: 'REVERSED',
    },
    planted: { 'editiondescent-leipzig-from-amsterdam': { leave: 'AUTHORISED' } },
  },
  {
    says: 'Peter Ohlsen, who painted the dish, had been at Leipzig, and could have seen the book there before he came to the works.',
    async ask(told) {
      const painters = makersOf(await sourcesOf(told, 'motif-dish-net-menders'), 'piece-shore-dish');
      const at = { agent: 'agent-peter-ohlsen' };
      const reach = await told.questions.reach({ at, by: '1763-06', page: { first: 25 } });
      const { verdict, route } = rowOf(reach, 'edition-shore-leipzig-1758');
      return [painters.includes(at.agent), verdict, route.to];
    },
    answer: [true, 'IN_EVERY_CASE', 'Leipzig'],
    planted: { 'stay-ohlsen-at-leipzig': withdrawn },
  },
  {
    says: 'The ferry follows a single-sheet print by Jacob Terwiel after a painting by Cornelis Braam that is lost.',
    async ask(told) {
      const answer = await sourcesOf(told, 'motif-dish-ferry');
      const painting = rowOfKind(answer, 'Artwork', 'artwork-evening-ferry');
      return {
        steps: stepsOf(answer),
        print: rowOfKind(answer, 'Plate', 'plate-evening-ferry')?.form,
        makers: ['plate-evening-ferry', 'artwork-evening-ferry'].map(id => makersOf(answer, id)),
        painting: [painting?.medium, painting?.survival],
      };
    },
    answer: {
      steps: ['motif-dish-ferry < plate-evening-ferry', 'plate-evening-ferry < artwork-evening-ferry'],
      print: 'SINGLE_SHEET_PRINT',
      makers: [['agent-jacob-terwiel'], ['agent-cornelis-braam']],
      painting: ['oil on panel', 'LOST'],
    },
    planted: { 'artwork-evening-ferry': { survival: 'EXTANT' } },
  },
  {
    says: 'The lighthouse may follow a cut on page 117 of The Monthly Cabinet for March 1765, but nobody says which way round.',
    async ask(told) {
      const answer = await sourcesOf(told, 'motif-dish-lighthouse');
      const cut = nodeOf(answer, 'plate-cabinet-lighthouse');
      return {
        certainty: rowOfKind(answer, 'Copying', 'copying-dish-lighthouse')?.certainty,
        there: placesOf(answer, 'plate-cabinet-lighthouse'),
        published: cut?.appearances.map(({ published }) => published),
        handedness: cut?.handedness,
      };
    },
    answer: {
      certainty: 'POSSIBLE',
      there: [['edition-cabinet-march-1765', '117']],
      published: [{ lo: days('1765-03-01'), hi: days('1765-03-31') }],
      handedness: 'UNKNOWN',
    },
    planted: { 'copying-dish-lighthouse': { handedness: 'SAME' } },
  },
  {
    says: 'The lighthouse came out again in The Cabinet Almanack for 1767, which, as almanacs go, may have been for sale from the September before: in time for the dish on some reckonings.',
    async ask(told) {
      const reach = await reachOfDish(told);
      const { verdict, margin, route } = rowOf(reach, 'edition-almanack-1767');
      const cut = await told.questions.lineage({ of: 'plate-almanack-lighthouse', depth: 0 });
      return {
        there: placesOf(cut, 'plate-almanack-lighthouse'),
        forSale: reach.objectDay.hi! - margin.some! - route.least,
        verdict,
      };
    },
    // 120 days before the year of its imprint.
    answer: {
      there: [['edition-almanack-1767', '24']],
      forSale: days('1767-01-01') - 120,
      verdict: 'IN_SOME_CASES',
    },
    planted: { 'work-cabinet-almanack': { form: 'BOOK' } },
  },
  {
    says: 'A book of landscapes, proposed as a source of the ferry, came out in Leipzig only in 1779: too late for a dish decorated within five years of its mark.',
    async ask(told) {
      const { verdict, cautious, why } = rowOf(await reachOfDish(told), 'edition-views-leipzig-1779');
      const proposed = await told.questions.history('copying-dish-windmill', { first: 1 });
      const ferry = await sourcesOf(told, 'motif-dish-ferry');
      return {
        verdicts: [verdict, cautious?.verdict, why.some(({ code }) => code === 'MARK_WINDOW')],
        proposed: [proposed.items.length, ferry.steps.some(({ by }) => by === 'copying-dish-windmill')],
      };
    },
    answer: { verdicts: ['IN_NO_CASE', 'IN_SOME_CASES', true], proposed: [1, false] },
    planted: { 'dating-views-leipzig-1779': { date: '1769' } },
  },
];
