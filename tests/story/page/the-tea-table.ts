import { days } from '../../support/days.ts';
import { madeOf, nodeOf, rowOfKind, rowsOfKind, sourcesOf, stepsOf } from './lineage-told.ts';
import { type Sentence, withdrawn } from './sentence.ts';

export const theTeaTable: readonly Sentence[] = [
  {
    says: 'The boeier on its rim comes from one corner of plate 6 and the hay barge from another, and neither leads to the other.',
    ask: told =>
      Promise.all(
        ['motif-table-boeier', 'motif-table-hay-barge'].map(async of => {
          const answer = await sourcesOf(told, of);
          const whole = nodeOf(answer, 'plate-shore-6-craft');
          return [rowsOfKind(answer, 'Detail').map(({ id, region }) => [id, region]), whole?.inPart];
        }),
      ),
    answer: [
      [[['detail-craft-boeier', [{ x: 0, y: 0, width: 33, height: 33 }]]], true],
      [[['detail-craft-hay-barge', [{ x: 67, y: 67, width: 33, height: 33 }]]], true],
    ],
    planted: { 'detail-craft-hay-barge': { region: [{ x: 0, y: 0, width: 30, height: 30 }] } },
  },
  {
    says: 'Behind the boeier stands the lighthouse of The Monthly Cabinet: two sources of one motif.',
    async ask(told) {
      const answer = await sourcesOf(told, 'motif-table-boeier', 1);
      return [stepsOf(answer), answer.contradictions];
    },
    answer: [['motif-table-boeier < detail-craft-boeier', 'motif-table-boeier < plate-cabinet-lighthouse'], []],
    planted: { 'copying-table-lighthouse': withdrawn },
  },
  {
    says: 'The hay barge is said to have come by way of the Leipzig book, where its plate is not recorded: a link is missing.',
    async ask(told) {
      const answer = await sourcesOf(told, 'motif-table-hay-barge');
      const { through } = rowOfKind(answer, 'Copying', 'copying-table-hay-barge') ?? {};
      return [through, answer.missingLinks.map(({ code, claim }) => [code, claim])];
    },
    answer: ['edition-shore-leipzig-1758', [['NOT_IN_EDITION', 'copying-table-hay-barge']]],
    planted: { 'copying-table-hay-barge': { through: 'edition-shore-amsterdam-1751' } },
  },
  {
    says: 'The pilot follows either a London mezzotint or a drawing that is only inferred.',
    async ask(told) {
      const answer = await sourcesOf(told, 'motif-table-pilot');
      const copyings = rowsOfKind(answer, 'Copying').filter(({ copy }) => copy === 'motif-table-pilot');
      return {
        either: copyings.map(({ source, alternativeTo }) => [source, alternativeTo]),
        open: rowOfKind(answer, 'Alternatives', 'alternatives-table-pilot')?.open ?? false,
        technique: rowOfKind(answer, 'Plate', 'plate-pilot-mezzotint')?.technique,
        survival: rowOfKind(answer, 'Artwork', 'artwork-pilot-drawing')?.survival,
      };
    },
    answer: {
      either: [
        ['artwork-pilot-drawing', 'alternatives-table-pilot'],
        ['plate-pilot-mezzotint', 'alternatives-table-pilot'],
      ],
      open: false,
      technique: 'mezzotint',
      survival: 'INFERRED',
    },
    planted: { 'artwork-pilot-drawing': { survival: 'LOST' } },
  },
  {
    says: 'The publication line of the mezzotint reads 1 May 1775, too late: it was the drawing, made by the end of 1770.',
    async ask(told) {
      const answer = await sourcesOf(told, 'motif-table-pilot');
      const { asWritten, basis } = rowOfKind(answer, 'Dating', 'dating-pilot-publication-line') ?? {};
      return {
        line: [asWritten, basis],
        made: ['motif-table-pilot', 'plate-pilot-mezzotint', 'artwork-pilot-drawing'].map(id => madeOf(answer, id)?.hi),
      };
    },
    // The drawing could be as late as the mezzotint, were it not the source of the table.
    answer: {
      line: ['1 May 1775', 'PUBLICATION_LINE'],
      made: [days('1770-12-31'), days('1775-05-01'), days('1770-12-31')],
    },
    planted: { 'dating-pilot-publication-line': { date: '1765-05-01' } },
  },
  {
    says: 'The mezzotint goes back to the same drawing, at some remove.',
    async ask(told) {
      const answer = await sourcesOf(told, 'plate-pilot-mezzotint');
      return [stepsOf(answer), answer.missingLinks.map(({ code, claim }) => [code, claim])];
    },
    answer: [['plate-pilot-mezzotint < artwork-pilot-drawing'], [['AT_SOME_REMOVE', 'copying-mezzotint-drawing']]],
    planted: { 'copying-mezzotint-drawing': { remove: 'DIRECT' } },
  },
];
