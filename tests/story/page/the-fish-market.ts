import { days } from '../../support/days.ts';
import { madeOf, makersOf, nodeOf, placesOf, rowOfKind, rowsOfKind, sourcesOf, stepsOf } from './lineage-told.ts';
import type { Sentence, Told } from './sentence.ts';

const painting = 'artwork-fish-market-painting';
const drawing = 'artwork-fish-market-drawing';
const etching = 'plate-fish-market-etching';
const cut = 'plate-cabinet-fish-market';
const engraving = 'plate-fischer-3-fish-market';
const motif = 'motif-table-fish-market';

const fromPainting = ({ questions }: Told) => questions.lineage({ of: painting, towards: 'COPIES' });

export const theFishMarket: readonly Sentence[] = [
  {
    says: 'Abraham van Deyl, who died in 1689, painted a fish market on the beach.',
    async ask(told) {
      const answer = await fromPainting(told);
      return [makersOf(answer, painting), madeOf(answer, painting)?.hi, rowOfKind(answer, 'Artwork', painting)?.medium];
    },
    answer: [['agent-abraham-van-deyl'], days('1689-12-31'), 'oil on canvas'],
    planted: { 'attribution-fish-market-painter': { agent: 'agent-symon-roorda' } },
  },
  {
    says: 'Symon Roorda drew it for an etching, which he sold as a single sheet in 1692.',
    async ask(told) {
      const answer = await sourcesOf(told, etching);
      const sheet = nodeOf(answer, etching)?.appearances[0];
      return {
        steps: stepsOf(answer).filter(step => !step.includes('matrix-')),
        makers: [drawing, etching].map(id => makersOf(answer, id)),
        technique: rowOfKind(answer, 'Plate', etching)?.technique,
        sellers: rowsOfKind(answer, 'Imprint').flatMap(({ edition, agent }) =>
          edition === sheet?.edition ? agent : [],
        ),
        form: rowOfKind(answer, 'Work', 'work-fish-market')?.form,
        published: sheet?.published,
      };
    },
    answer: {
      steps: [`${drawing} < ${painting}`, `${etching} < ${drawing}`],
      makers: [['agent-symon-roorda'], ['agent-symon-roorda']],
      technique: 'etching',
      sellers: ['agent-symon-roorda'],
      form: 'SINGLE_SHEET',
      published: { lo: days('1692-01-01'), hi: days('1692-12-31') },
    },
    planted: { 'attribution-fish-market-draughtsman': { agent: 'agent-abraham-van-deyl' } },
  },
  {
    says: "Roorda's drawing has the direction of the painting, and his etching is in reverse of both.",
    async ask(told) {
      const [fromIt, fromDrawing] = [await fromPainting(told), await sourcesOf(told, drawing)];
      return [
        nodeOf(fromIt, drawing)?.handedness,
        nodeOf(fromIt, etching)?.handedness,
        nodeOf(fromDrawing, painting)?.handedness,
      ];
    },
    answer: ['SAME', 'REVERSED', 'SAME'],
    planted: {
      'copying-fish-market-drawing': { handedness: 'REVERSED' },
      'copying-fish-market-etching': { handedness: 'SAME' },
    },
  },
  {
    says: 'Hartigh of Amsterdam put his address and the year 1738 on the copper, and added a gull: its second state.',
    async ask(told) {
      const answer = await sourcesOf(told, etching);
      const sheets = rowsOfKind(answer, 'Appearance').filter(({ plate }) => plate === etching);
      const seller = rowOfKind(answer, 'Imprint', 'imprint-fish-market-1738');
      return {
        seller: [seller?.agent, seller?.place],
        states: rowsOfKind(answer, 'State').map(({ id, order, matrix }) => [id, order, matrix]),
        changes: rowOfKind(answer, 'State', 'state-fish-market-second')?.changes,
        year: rowOfKind(answer, 'Dating', 'dating-fish-market-second-state')?.date,
        sheets: sheets.map(({ edition, state }) => [edition, state]),
      };
    },
    answer: {
      seller: ['agent-hartigh-gilt-swan', 'place-amsterdam-city'],
      states: [
        ['state-fish-market-first', 1, 'matrix-fish-market-copper'],
        ['state-fish-market-second', 2, 'matrix-fish-market-copper'],
      ],
      changes: "Address and year of Hartigh in place of Roorda's; a gull added over the boats.",
      year: '1738',
      sheets: [
        ['edition-fish-market-1692', 'state-fish-market-first'],
        ['edition-fish-market-1738', 'state-fish-market-second'],
      ],
    },
    planted: { 'appearance-fish-market-1738': { state: 'state-fish-market-first' } },
  },
  {
    says: 'A woodcut in The Monthly Cabinet for August 1757 is after the second state, in reverse of it, and so in the direction of the painting again.',
    async ask(told) {
      const answer = await sourcesOf(told, cut);
      return {
        technique: rowOfKind(answer, 'Plate', cut)?.technique,
        number: rowOfKind(answer, 'Edition', 'edition-cabinet-august-1757')?.number,
        through: rowOfKind(answer, 'Copying', 'copying-cabinet-fish-market')?.through,
        handedness: [etching, painting].map(id => nodeOf(answer, id)?.handedness),
      };
    },
    answer: {
      technique: 'woodcut',
      number: 'August 1757',
      through: 'state-fish-market-second',
      handedness: ['REVERSED', 'SAME'],
    },
    planted: {
      'copying-cabinet-fish-market': { handedness: 'SAME' },
      'copying-fischer-fish-market': { handedness: 'SAME' },
    },
  },
  {
    says: 'Plate 3 of Allerley Fischer und Schiffer, a series of Leipzig that bears no year, was engraved after the woodcut.',
    async ask(told) {
      const answer = await sourcesOf(told, engraving, 1);
      const { editions } = await told.questions.descent('edition-fischer-leipzig');
      return {
        steps: stepsOf(answer),
        there: placesOf(answer, engraving),
        technique: rowOfKind(answer, 'Plate', engraving)?.technique,
        form: rowOfKind(answer, 'Work', 'work-fischer-und-schiffer')?.form,
        recorded: editions.map(({ recorded }) => recorded),
      };
    },
    answer: {
      steps: [`${engraving} < ${cut}`],
      there: [['edition-fischer-leipzig', '3']],
      technique: 'engraving',
      form: 'PRINT_SERIES',
      recorded: [{}],
    },
    planted: { 'appearance-fish-market-fischer': { number: '4' } },
  },
  {
    says: 'On a tea table Ohlsen painted the market after the engraving, five copyings from the painting and in reverse of it.',
    async ask(told) {
      const answer = await sourcesOf(told, motif);
      const from = nodeOf(answer, painting);
      return {
        table: rowOfKind(answer, 'Piece', 'piece-tea-table')?.form,
        makers: makersOf(answer, 'piece-tea-table'),
        source: stepsOf(answer).filter(step => step.startsWith(motif)),
        copyings: from?.depth,
        handedness: from?.handedness,
      };
    },
    answer: {
      table: 'tea-table top',
      makers: ['agent-peter-ohlsen', 'workshop-ellerholm-works'],
      source: [`${motif} < ${engraving}`],
      copyings: 5,
      handedness: 'REVERSED',
    },
    planted: { 'copying-table-fish-market': { handedness: 'REVERSED' } },
  },
  {
    says: "The engraving was made between June 1757, when the magazine may first have been for sale, and the end of 1770, the year beside Ohlsen's initials.",
    async ask(told) {
      const answer = await sourcesOf(told, motif);
      return [nodeOf(answer, engraving)?.recorded, madeOf(answer, engraving)];
    },
    // An imprint runs 60 days ahead.
    answer: [{}, { lo: days('1757-08-01') - 60, hi: days('1770-12-31') }],
    planted: { 'dating-cabinet-august-1757': { date: '1757-09' } },
  },
];
