import type { PlateFate } from '../../../src/domain/descent/editions-plates.ts';
import { days } from '../../support/days.ts';
import { rowOf } from '../reach-answers.ts';
import { rowOfKind, rowsOfKind, sourcesOf } from './lineage-told.ts';
import { type Sentence, type Told, withdrawn } from './sentence.ts';

const descentOfBook = ({ questions }: Told) => questions.descent('work-shore-pleasures');

/** Editions in which a plate is, or from which it is missing, each with the plate it comes from. */
async function fatesOf(told: Told, ...plates: readonly string[]): Promise<(string | undefined)[][]> {
  const { editions } = await descentOfBook(told);
  return editions.flatMap(({ edition, plates: listed }) =>
    listed
      .filter(({ plate }) => plates.includes(plate))
      .map(({ plate, fate, from }): [string, string, PlateFate, string | undefined] => [
        edition,
        plate,
        fate,
        from?.plate,
      ]),
  );
}

const year = (y: number) => ({ lo: days(`${y}-01-01`), hi: days(`${y}-12-31`) });

export const thePatternBook: readonly Sentence[] = [
  {
    says: 'Vermaak aan de oever came out at Amsterdam in 1751, at Leipzig in 1758, at London in 1764, and at Amsterdam again in 1768.',
    async ask(told) {
      const { editions } = await descentOfBook(told);
      const imprints = rowsOfKind(await sourcesOf(told, 'plate-ufer-4-net-menders'), 'Imprint');
      const townOf = (id: string) => imprints.find(imprint => imprint.edition === id)?.place;
      return editions.map(({ edition, published }) => [townOf(edition), published]);
    },
    answer: [
      ['place-amsterdam-city', year(1751)],
      ['place-leipzig-city', year(1758)],
      ['place-london-city', year(1764)],
      ['place-amsterdam-city', year(1768)],
    ],
    planted: { 'dating-shore-london-1764': { date: '1765' } },
  },
  {
    says: "The last of these years is a cataloguer's guess.",
    async ask({ questions }) {
      const reach = await questions.reach({ piece: 'piece-shore-dish', page: { first: 25 } });
      const { flags } = rowOf(reach, 'edition-shore-amsterdam-1768');
      return ['UNCERTAIN', 'SUPPLIED'].map(flag => flags.includes(flag));
    },
    answer: [true, true],
    planted: { 'dating-shore-amsterdam-1768': { date: '1768', flags: [] } },
  },
  {
    says: 'Plate 4 itself went along to London and back to Amsterdam, while Leipzig had a copy.',
    ask: told => fatesOf(told, 'plate-shore-4-net-menders', 'plate-ufer-4-net-menders'),
    answer: [
      ['edition-shore-amsterdam-1751', 'plate-shore-4-net-menders', 'NEW', undefined],
      ['edition-shore-leipzig-1758', 'plate-ufer-4-net-menders', 'COPIED', 'plate-shore-4-net-menders'],
      ['edition-shore-london-1764', 'plate-shore-4-net-menders', 'WENT_ALONG', 'plate-shore-4-net-menders'],
      ['edition-shore-amsterdam-1768', 'plate-shore-4-net-menders', 'WENT_ALONG', 'plate-shore-4-net-menders'],
    ],
    planted: { 'appearance-menders-amsterdam-1768': { presence: 'ABSENT' } },
  },
  {
    says: 'Plate 6, with nine craft, was printed at London from the same copper, under an English caption.',
    async ask(told) {
      const { questions } = told;
      const london = await questions.lineage({ of: 'plate-pleasures-6-craft' });
      const amsterdam = await questions.lineage({ of: 'plate-shore-6-craft', towards: 'SOURCES' });
      const [fate] = (await fatesOf(told, 'plate-pleasures-6-craft')).map(([, , said, from]) => [said, from]);
      return {
        fate,
        coppers: [amsterdam, london].map(answer => rowsOfKind(answer, 'Matrix').map(({ id, form }) => [id, form])),
        captions: [
          rowOfKind(amsterdam, 'Plate', 'plate-shore-6-craft')?.caption,
          rowOfKind(london, 'Plate', 'plate-pleasures-6-craft')?.caption,
        ],
      };
    },
    answer: {
      fate: ['SAME_SURFACE', 'plate-shore-6-craft'],
      coppers: [[['matrix-shore-6-copper', 'COPPER_PLATE']], [['matrix-shore-6-copper', 'COPPER_PLATE']]],
      captions: ['Negen vaartuigen', 'Nine vessels of the Low Countries'],
    },
    planted: { 'printedfrom-nine-craft-london': withdrawn },
  },
  {
    says: 'Whether Leipzig had plate 6 is not recorded.',
    async ask(told) {
      const fates = await fatesOf(told, 'plate-shore-6-craft');
      return fates.filter(([edition]) => edition === 'edition-shore-leipzig-1758');
    },
    answer: [['edition-shore-leipzig-1758', 'plate-shore-6-craft', 'NOT_KNOWN', 'plate-shore-6-craft']],
    planted: {},
    added: [
      {
        id: 'appearance-nine-craft-leipzig',
        kind: 'Appearance',
        plate: 'plate-shore-6-craft',
        edition: 'edition-shore-leipzig-1758',
        presence: 'ABSENT',
      },
    ],
  },
  {
    says: 'An exemplar of the Leipzig book, in the museum of Ellerholm under the shelfmark K 41, wants plates 6 and 11.',
    async ask({ questions }) {
      const { text } = await questions.citation({ of: ['exemplar-ufer-ellerholm'], format: 'CSL_JSON' });
      const [{ title, archive, note }] = JSON.parse(text) as [Record<string, string>];
      return { title, archive, note };
    },
    answer: {
      title: 'Lust am Ufer, in zwölf Kupfern',
      archive: 'Ellerholm, Town Museum, K 41',
      note: 'Wants plates 6 and 11.',
    },
    planted: { 'exemplar-ufer-ellerholm': { wants: 'plate 11' } },
  },
];
