import type { ActName } from '../../src/domain/acts/acts.ts';

/** What is given to an act in the demo world, and every row that it writes, under the names of `rowsPut`. */
export interface ActCase {
  readonly act: ActName;
  readonly given: Readonly<Record<string, unknown>>;
  readonly rows: Readonly<Record<string, unknown>>;
  /** How many rows each of its answers has. */
  readonly answers: Readonly<Record<string, number>>;
}

const by = { by: 'Ada', on: '2026-02-01' };
const said = { evidence: [{ record: 'piece 1', mark: 'mark-1' }, { note: 'compared' }], ...by };
const named = (text: string) => ({ labels: [{ text }] });
const present = (plate: number, number: string, more = {}) => ({
  ...{ plate: `plate ${plate}`, edition: 'edition-fischer-leipzig', presence: 'PRESENT', number },
  ...more,
});
const looked = {
  ...{ target: 'edition-shore-leipzig-1758', exemplar: 'exemplar-ufer-ellerholm' },
  ...{ coverage: 'LEAF_BY_LEAF', lookedBy: 'Ada', lookedOn: '2026-02-01' },
};
const hash = 'a'.repeat(64);

export const actCases: readonly ActCase[] = [
  {
    act: 'recordPiece',
    given: {
      ...{ pieceName: 'Stove tile panel', material: 'tin-glazed earthenware' },
      marks: [{ form: 'YEAR_MARK', reading: '1768' }],
      ...{ rows: 1, columns: 2, sides: ['front'], captions: ['A ferry', 'A windmill'], technique: 'painted' },
      motifs: [
        { row: 1, column: 1, side: 'front', picture: 'plate-evening-ferry', handedness: 'REVERSED', manner: 'POUNCED' },
        { caption: 'A gull', zone: 'border' },
      ],
      ...{ madeAsWritten: 'um 1768', madeBasis: 'MARK', decorated: '1768/1770' },
      ...{ workshop: 'workshop-ellerholm-works', painterName: 'Jens Ohlsen', placeName: 'Kiel' },
      ...{ holderName: 'Town Museum, Ellerholm', number: 'K 212' },
      ...{ evidence: [{ mark: 'mark-1' }, { note: 'compared' }], ...by },
    },
    rows: {
      'piece 1': {
        material: 'tin-glazed earthenware',
        marks: [{ id: 'mark-1', form: 'YEAR_MARK', reading: '1768' }],
        ...named('Stove tile panel'),
      },
      'motif 1': {
        piece: 'piece 1',
        caption: 'A ferry',
        side: 'front',
        row: 1,
        column: 1,
        order: 1,
        technique: 'painted',
      },
      'motif 2': {
        piece: 'piece 1',
        caption: 'A windmill',
        side: 'front',
        row: 1,
        column: 2,
        order: 2,
        technique: 'painted',
      },
      'motif 3': { piece: 'piece 1', caption: 'A gull', zone: 'border', order: 3, technique: 'painted' },
      'agent 1': named('Jens Ohlsen'),
      'place 1': { latitude: 54.321, longitude: 10.135, country: 'gw', ...named('Kiel') },
      'agent 2': named('Town Museum, Ellerholm'),
      'copying 1': {
        ...{ copy: 'motif 1', source: 'plate-evening-ferry', manner: 'POUNCED', handedness: 'REVERSED' },
        ...said,
      },
      'dating 1': {
        ...{ of: 'piece 1', event: 'MADE', date: '1768~', asWritten: 'um 1768', rule: 'phrase-7-circa' },
        ...{ basis: 'MARK', flags: ['circa'] },
        ...said,
      },
      'dating 2': { of: 'motif 1', event: 'MADE', date: '1768/1770', ...said },
      'dating 3': { of: 'motif 2', event: 'MADE', date: '1768/1770', ...said },
      'dating 4': { of: 'motif 3', event: 'MADE', date: '1768/1770', ...said },
      'attribution 1': { record: 'piece 1', agent: 'workshop-ellerholm-works', role: 'mfr', ...said },
      'attribution 2': { record: 'piece 1', agent: 'agent 1', role: 'art', ...said },
      'madeat 1': { record: 'piece 1', place: 'place 1', ...said },
      'custody 1': { thing: 'piece 1', holder: 'agent 2', number: 'K 212', ...said },
    },
    answers: { piece: 1, motifs: 3, copyings: 1, datings: 4, attributions: 2, madeAt: 1, custody: 1, named: 3 },
  },
  {
    act: 'recordPrint',
    given: {
      ...{ caption: 'Le retour du bac', lettering: 'Gravé par Dastier', form: 'SINGLE_SHEET_PRINT' },
      ...{ title: 'Le retour du bac, estampe', workTitle: 'Le retour du bac', workForm: 'SINGLE_SHEET' },
      ...{ languages: ['fr'], plateNumber: '3', publishedAsWritten: 'ca. 1780' },
      ...{ placeName: 'Paris', publisherName: 'Veuve Dastier', bookseller: 'agent-calloway-strand' },
      ...{ engraverName: 'Dastier', engraverRole: 'etr', designer: 'agent-cornelis-braam' },
      publicationLine: 'Published as the Act directs, 1st May 1781',
      ...{ picture: 'plate-evening-ferry', handedness: 'REVERSED', remove: 'AT_SOME_REMOVE', certainty: 'PROBABLE' },
    },
    rows: {
      'work 1': { form: 'SINGLE_SHEET', languages: ['fr'], ...named('Le retour du bac') },
      'edition 1': { work: 'work 1', title: 'Le retour du bac, estampe', languages: ['fr'] },
      'plate 1': { form: 'SINGLE_SHEET_PRINT', caption: 'Le retour du bac', lettering: 'Gravé par Dastier' },
      'appearance 1': { plate: 'plate 1', edition: 'edition 1', presence: 'PRESENT', number: '3' },
      'dating 1': {
        ...{ of: 'edition 1', event: 'PUBLISHED', date: '1780~', asWritten: 'ca. 1780', rule: 'phrase-7-circa' },
        ...{ basis: 'IMPRINT', flags: ['circa'] },
      },
      'dating 2': {
        ...{ of: 'plate 1', event: 'PUBLISHED', date: '1781-05-01', rule: 'phrase-20-publication-line' },
        asWritten: 'Published as the Act directs, 1st May 1781',
        ...{ basis: 'PUBLICATION_LINE', flags: ['publication-line'] },
      },
      'place 1': { latitude: 48.853, longitude: 2.349, country: 'fr', ...named('Paris') },
      'agent 1': named('Veuve Dastier'),
      'imprint 1': { edition: 'edition 1', place: 'place 1', agent: 'agent 1', role: 'PUBLISHER', order: 1 },
      'imprint 2': { edition: 'edition 1', agent: 'agent-calloway-strand', role: 'BOOKSELLER', order: 2 },
      'agent 2': named('Dastier'),
      'attribution 1': { record: 'plate 1', agent: 'agent 2', role: 'etr' },
      'attribution 2': { record: 'plate 1', agent: 'agent-cornelis-braam', role: 'dsr' },
      'copying 1': {
        ...{ copy: 'plate 1', source: 'plate-evening-ferry', handedness: 'REVERSED' },
        ...{ remove: 'AT_SOME_REMOVE', certainty: 'PROBABLE' },
      },
    },
    answers: {
      work: 1,
      edition: 1,
      plate: 1,
      appearance: 1,
      datings: 2,
      imprints: 2,
      attributions: 2,
      copying: 1,
      named: 3,
    },
  },
  {
    act: 'recordPlates',
    given: {
      ...{ edition: 'edition-fischer-leipzig', numbers: '1-2, 4', captions: ['Ein', 'Zwey', 'Vier'] },
      plates: [
        { number: '2', page: '7', technique: 'etching' },
        { number: 'Titel', form: 'VIGNETTE' },
      ],
      ...{ form: 'PLATE', technique: 'engraving', engraverName: 'J. C. Stamm' },
    },
    rows: {
      'plate 1': { form: 'PLATE', caption: 'Ein', technique: 'engraving' },
      'plate 2': { form: 'PLATE', caption: 'Zwey', technique: 'etching' },
      'plate 3': { form: 'PLATE', caption: 'Vier', technique: 'engraving' },
      'plate 4': { form: 'VIGNETTE', technique: 'engraving' },
      'appearance 1': present(1, '1'),
      'appearance 2': present(2, '2', { page: '7' }),
      'appearance 3': present(3, '4'),
      'appearance 4': present(4, 'Titel'),
      'agent 1': named('J. C. Stamm'),
      'attribution 1': { record: 'plate 1', agent: 'agent 1', role: 'egr' },
      'attribution 2': { record: 'plate 2', agent: 'agent 1', role: 'egr' },
      'attribution 3': { record: 'plate 3', agent: 'agent 1', role: 'egr' },
      'attribution 4': { record: 'plate 4', agent: 'agent 1', role: 'egr' },
    },
    answers: { plates: 4, appearances: 4, attributions: 4, named: 1 },
  },
  {
    act: 'recordSamePlates',
    given: {
      ...{ edition: 'edition-shore-leipzig-1758', as: 'edition-shore-amsterdam-1751', absent: ['6'] },
      plates: [{ plate: '4', number: '5', changes: 'A dog added' }],
      ...{ made: '1757', matrixForm: 'COPPER_PLATE' },
    },
    rows: {
      'matrix 1': { form: 'COPPER_PLATE', ...named('The net menders') },
      'state 1': { matrix: 'matrix 1', order: 2, changes: 'A dog added' },
      'printedfrom 1': { picture: 'plate-shore-4-net-menders', matrix: 'matrix 1' },
      'dating 1': { of: 'state 1', event: 'MADE', date: '1757' },
      'appearance 1': {
        ...{ plate: 'plate-shore-4-net-menders', edition: 'edition-shore-leipzig-1758', state: 'state 1' },
        ...{ presence: 'PRESENT', number: '5' },
      },
      'appearance 2': { plate: 'plate-shore-6-craft', edition: 'edition-shore-leipzig-1758', presence: 'ABSENT' },
    },
    answers: { appearances: 2, matrices: 1, printings: 1, states: 1, datings: 1 },
  },
  {
    act: 'recordCopies',
    given: {
      copies: ['motif-table-pilot', 'motif-dish-lighthouse'],
      sources: ['plate-evening-ferry', 'plate-almanack-lighthouse'],
      pairs: [{ copy: 'motif-dish-lighthouse', handedness: 'SAME', certainty: 'POSSIBLE' }],
      ...{ handedness: 'REVERSED', manner: 'BY_EYE', through: 'edition-ferry-sheet', by: 'Ada' },
    },
    rows: {
      'copying 1': {
        ...{ copy: 'motif-table-pilot', source: 'plate-evening-ferry', through: 'edition-ferry-sheet' },
        ...{ manner: 'BY_EYE', handedness: 'REVERSED', by: 'Ada' },
      },
      'copying 2': {
        ...{ copy: 'motif-dish-lighthouse', source: 'plate-almanack-lighthouse', through: 'edition-ferry-sheet' },
        ...{ manner: 'BY_EYE', handedness: 'SAME', certainty: 'POSSIBLE', by: 'Ada' },
      },
    },
    answers: { copyings: 2, notCopied: 0 },
  },
  {
    act: 'recordLooking',
    given: {
      ...{ exemplar: 'exemplar-ufer-ellerholm', coverage: 'LEAF_BY_LEAF', lookedBy: 'Ada', lookedOn: '2026-02-01' },
      ...{ notFound: ['piece-shore-dish'], unsure: ['motif-dish-lighthouse'] },
      finds: [{ sought: 'motif-dish-ferry', picture: 'plate-ufer-4-net-menders', certainty: 'DOUBTFUL' }],
    },
    rows: {
      'examination 1': { sought: 'motif-dish-ferry', result: 'FOUND', ...looked },
      'examination 2': { sought: 'motif-dish-lighthouse', result: 'UNSURE', ...looked },
      'examination 3': { sought: 'motif-dish-net-menders', result: 'NOT_FOUND', ...looked },
      'copying 1': { copy: 'motif-dish-ferry', source: 'plate-ufer-4-net-menders', certainty: 'DOUBTFUL' },
    },
    answers: { examinations: 3, copyings: 1 },
  },
  {
    act: 'recordOpinion',
    given: {
      ...{ agentName: 'Astrid Lindqvist', copy: 'motif-table-pilot', picture: 'plate-evening-ferry' },
      ...{ handedness: 'REVERSED', asWritten: 'the ferryman again' },
      evidence: [{ reference: 'reference-shore-and-kiln', locator: 'p. 70' }],
    },
    rows: {
      'agent 1': named('Astrid Lindqvist'),
      'copying 1': {
        ...{ copy: 'motif-table-pilot', source: 'plate-evening-ferry', handedness: 'REVERSED', stance: 'WEIGHED' },
        evidence: [{ reference: 'reference-shore-and-kiln', locator: 'p. 70' }],
        by: 'Astrid Lindqvist',
      },
      'opinion 1': {
        ...{ agent: 'agent 1', claim: 'copying 1', verdict: 'AGREES', asWritten: 'the ferryman again' },
        evidence: [{ reference: 'reference-shore-and-kiln', locator: 'p. 70' }],
      },
    },
    answers: { opinion: 1, copying: 1, named: 1 },
  },
  {
    act: 'recordPhotographs',
    given: {
      of: 'piece-shore-dish',
      photographs: [
        { view: 'front', contentHash: hash },
        { view: 'back', light: 'raking' },
      ],
      ...{ light: 'daylight', taken: '1966', permission: 'GIVEN', on: '2026-02-01' },
      boxes: [
        { picture: 'motif-dish-ferry', x: 1, y: 2, width: 30.5, height: 40 },
        { picture: 'motif-dish-ferry', x: 50, y: 2, width: 3, height: 4 },
        { photograph: 1, picture: 'motif-dish-lighthouse', x: 0, y: 0, width: 100, height: 100 },
      ],
    },
    rows: {
      'photograph 1': {
        ...{ of: 'piece-shore-dish', view: 'front', light: 'daylight', taken: '1966', permission: 'GIVEN' },
        contentHash: hash,
      },
      'photograph 2': { of: 'piece-shore-dish', view: 'back', light: 'raking', taken: '1966', permission: 'GIVEN' },
      'region 1': {
        ...{ picture: 'motif-dish-ferry', photograph: 'photograph 1', contentHash: hash, on: '2026-02-01' },
        rectangles: [
          { x: 1, y: 2, width: 30.5, height: 40 },
          { x: 50, y: 2, width: 3, height: 4 },
        ],
      },
      'region 2': {
        ...{ picture: 'motif-dish-lighthouse', photograph: 'photograph 1', contentHash: hash, on: '2026-02-01' },
        rectangles: [{ x: 0, y: 0, width: 100, height: 100 }],
      },
    },
    answers: { photographs: 2, regions: 2 },
  },
];
