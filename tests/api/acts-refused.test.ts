import { expect, test } from 'vitest';
import type { ActName } from '../../src/domain/acts/acts.ts';
import { noCommands } from '../../src/questions/no-commands.ts';
import { actCases } from '../support/act-cases.ts';
import { ask, codes, type Told } from './ask.ts';
import { demoApi } from './demo-api.ts';

type Refused = readonly [says: string, act: ActName, input: object, told: string, code?: string];

const pictures = 'Artwork or Plate or Motif or Detail or Design';
const hash = 'b'.repeat(64);
const shore = { edition: 'edition-shore-leipzig-1758', as: 'edition-shore-amsterdam-1751' };
const copied = { edition: 'edition-shore-leipzig-1758', from: 'edition-shore-amsterdam-1751' };

const cases: readonly Refused[] = [
  [
    'what is not there, at any depth',
    'recordPiece',
    { pieceName: 'Mug', motifs: [{ caption: 'a', picture: 'plate-that-is-none' }] },
    'motifs[0].picture: expected the id of what is there, came "plate-that-is-none"',
    'NOT_FOUND',
  ],
  [
    'evidence that is not there',
    'recordPiece',
    { pieceName: 'Mug', evidence: [{ reference: 'reference-that-is-none' }] },
    'evidence[0].reference: expected the id of what is there, came "reference-that-is-none"',
    'NOT_FOUND',
  ],
  [
    'a picture of another kind',
    'recordPiece',
    { pieceName: 'Mug', motif: 'a', picture: 'edition-ferry-sheet' },
    `picture: expected the id of ${pictures}, came "edition-ferry-sheet"`,
    'KIND_MISMATCH',
  ],
  [
    'a name that is there',
    'recordPiece',
    { pieceName: 'Mug', painterName: 'peter OHLSEN' },
    'painterName: expected the name of a new person or firm, came "peter OHLSEN", which agent-peter-ohlsen has: give the id as painter if that is meant, or say with namesakes that it is another',
  ],
  [
    'a piece of a name that is there',
    'recordPiece',
    { pieceName: 'Schüssel mit Uferszenen' },
    'pieceName: expected the name of a new piece, came "Schüssel mit Uferszenen", which piece-shore-dish has: give the id as piece if that is meant, or say with namesakes that it is another',
  ],
  [
    'a source without a motif',
    'recordPiece',
    { pieceName: 'Mug', picture: 'plate-evening-ferry' },
    'motif: expected what the motif shows that follows the picture, came none',
  ],
  [
    'captions that do not fill the grid',
    'recordPiece',
    { pieceName: 'Mug', rows: 2, columns: 2, sides: ['a', 'b'], captions: ['x'] },
    'captions: expected 8, one for each motif of the grid, came 1',
  ],
  [
    'captions without a grid',
    'recordPiece',
    { pieceName: 'Mug', captions: ['x'] },
    'rows: expected rows or columns of the grid, came neither',
  ],
  [
    'a motif outside the grid',
    'recordPiece',
    { pieceName: 'Mug', rows: 2, columns: 2, motifs: [{ row: 3, column: 1 }] },
    'motifs[0]: expected row and column of the grid, or neither row nor column, came row 3, column 1',
  ],
  [
    'a grid that is too large',
    'recordPiece',
    { pieceName: 'Mug', rows: 100, columns: 100 },
    'rows: expected a grid of at most 2000 motifs, came one of 10000',
  ],
  [
    'a number of no holder',
    'recordPiece',
    { pieceName: 'Mug', number: 'K 1' },
    'number: expected the holder who gives the number, came none, but the number "K 1"',
  ],
  [
    'a decoration of nothing',
    'recordPiece',
    { pieceName: 'Mug', decorated: '1770' },
    'decorated: expected motifs that the date is of, came none, but the date "1770"',
  ],
  [
    'words that are no date',
    'recordPiece',
    { pieceName: 'Mug', madeAsWritten: 'in the good old days' },
    'madeAsWritten: expected a date that can be read, or the date in EDTF beside it, came "in the good old days": no rule reads this phrase',
    'DATE_UNREADABLE',
  ],
  [
    'an edition without a title',
    'recordPrint',
    { plate: 'plate-evening-ferry', published: '1770' },
    'title: expected the title of the new edition, or the id of one that is there, came neither',
  ],
  [
    'a page of no edition',
    'recordPrint',
    { caption: 'A ferry', page: '7' },
    'page: expected an edition or its title, came none, but "7"',
  ],
  [
    'a false place that is none',
    'recordPrint',
    { caption: 'A ferry', published: '1770', fictitious: true },
    'fictitious: expected a place, came none, but "true"',
  ],
  [
    'a work whose title is there',
    'recordPrint',
    { caption: 'A ferry', workTitle: 'The Ferry at Evening' },
    'workTitle: expected the name of a new work, came "The Ferry at Evening", which work-ferry-print has: give the id as work if that is meant, or say with namesakes that it is another',
  ],
  [
    'a role of nobody',
    'recordPrint',
    { caption: 'A ferry', engraverRole: 'etr' },
    'engraverRole: expected who made the plate, came none, but the role "etr"',
  ],
  [
    'a number that is there',
    'recordPlates',
    { edition: 'edition-fischer-leipzig', numbers: '1-8' },
    'numbers: expected numbers that no plate of the edition has yet, came "3", which is plate-fischer-3-fish-market',
  ],
  [
    'numbers that are none',
    'recordPlates',
    { edition: 'edition-fischer-leipzig', numbers: '8-1' },
    'numbers: expected numbers such as 1-60 or 1-12, 14, each once, came "8-1"',
  ],
  [
    'too few captions',
    'recordPlates',
    { edition: 'edition-fischer-leipzig', numbers: '4-8', captions: ['a', 'b'] },
    'captions: expected 5, one for each number, came 2',
  ],
  [
    'a plate twice',
    'recordPlates',
    { edition: 'edition-fischer-leipzig', plates: [{ number: '4' }, { number: '4' }] },
    'plates[1].number: expected each number once, came "4" twice',
  ],
  [
    'an edition that is the same',
    'recordSamePlates',
    { ...shore, edition: shore.as },
    'as: expected another edition than "edition-shore-amsterdam-1751", came the same',
  ],
  [
    'an edition without plates',
    'recordSamePlates',
    { ...shore, as: 'edition-shore-leipzig-1758', edition: shore.as, only: ['6'] },
    'only: expected one of 4, or an id, came "6"',
  ],
  [
    'nothing that is left',
    'recordSamePlates',
    { ...shore, except: ['4', '6'] },
    'except: expected at least one plate that is left, came all 2 of them',
  ],
  [
    'something of a plate that is left out',
    'recordSamePlates',
    { ...shore, except: ['6'], plates: [{ plate: '6', page: '1' }] },
    'plates[0].plate: expected a plate that is left, came "6", which is not',
  ],
  [
    'a state that is recorded',
    'recordSamePlates',
    { edition: 'edition-shore-leipzig-1758', as: 'edition-fish-market-1692', order: 2 },
    'order: expected a state that is not recorded, came 2, which "matrix-fish-market-copper" has',
  ],
  [
    'no new state, and something of it',
    'recordSamePlates',
    { ...shore, newState: false, changes: 'a dog' },
    'newState: expected yes, or nothing said of a new state, came no',
  ],
  [
    'a copy without a source',
    'recordCopies',
    { ...copied, edition: copied.from, from: copied.edition },
    'except: expected a source for each copy, came none for number 6, plate-shore-6-craft: except it, or name its source in pairs',
  ],
  [
    'lists of unlike length',
    'recordCopies',
    { copies: ['motif-dish-ferry', 'motif-table-pilot'], sources: ['plate-evening-ferry'] },
    'pairing: expected as many sources as copies, 2, came 1',
  ],
  [
    'lists paired by number',
    'recordCopies',
    { copies: ['motif-dish-ferry'], sources: ['plate-evening-ferry'], pairing: 'BY_NUMBER' },
    'pairing: expected two editions to pair their plates by number, came a list',
  ],
  [
    'an edition and a list',
    'recordCopies',
    { ...copied, sources: ['plate-evening-ferry'] },
    'sources: expected from or sources, came both',
  ],
  [
    'a picture that is its own source',
    'recordCopies',
    { copies: ['motif-dish-ferry'], sources: ['motif-dish-ferry'] },
    'sources: expected another picture than the copy, came "motif-dish-ferry"',
  ],
  [
    'a source in pairs that is not there',
    'recordCopies',
    { ...copied, pairs: [{ copy: '4', source: 'plate-that-is-none' }] },
    'pairs: expected the id of what is there, came "plate-that-is-none"',
    'NOT_FOUND',
  ],
  [
    'a picture twice in a list',
    'recordCopies',
    { copies: ['motif-dish-ferry', 'motif-dish-ferry'], from: 'edition-ferry-sheet' },
    'copies: expected each picture once, came "motif-dish-ferry" twice',
  ],
  [
    'a picture that was found and was not',
    'recordLooking',
    { source: 'image base', found: ['motif-dish-ferry'], notFound: ['motif-dish-ferry'] },
    'notFound: expected what is not said otherwise, came "motif-dish-ferry", which is in found too',
  ],
  [
    'a piece without motifs',
    'recordLooking',
    { source: 'image base', notFound: ['piece-bare-mug'] },
    'notFound: expected a piece with motifs, came "piece-bare-mug", which has none',
  ],
  [
    'an opinion of a copying that is recorded',
    'recordOpinion',
    { agent: 'agent-jacob-terwiel', copy: 'motif-dish-ferry', picture: 'plate-evening-ferry' },
    'copy: expected a copying that is not recorded, came copying-dish-ferry: give that as claim',
  ],
  [
    'an opinion of a copying without a source',
    'recordOpinion',
    { agent: 'agent-jacob-terwiel', copy: 'motif-dish-ferry' },
    'picture: expected the picture that "motif-dish-ferry" follows, came none',
  ],
  [
    'an opinion of a claim, and how it was copied',
    'recordOpinion',
    { agent: 'agent-jacob-terwiel', claim: 'copying-dish-ferry', handedness: 'SAME' },
    'handedness: expected none beside claim, came "SAME"',
  ],
  [
    'a photograph of two things',
    'recordPhotographs',
    { of: 'piece-shore-dish', photograph: 'photograph-of-mug' },
    'photograph: expected of or photograph, came both',
  ],
  [
    'a box on no photograph',
    'recordPhotographs',
    {
      of: 'piece-shore-dish',
      contentHash: hash,
      boxes: [{ photograph: 2, picture: 'motif-dish-ferry', x: 1, y: 1, width: 1, height: 1 }],
    },
    'boxes[0].photograph: expected the number of a photograph, 1 to 1, came 2',
  ],
  [
    'a box on bytes that are not known',
    'recordPhotographs',
    { of: 'piece-shore-dish', boxes: [{ picture: 'motif-dish-ferry', x: 1, y: 1, width: 1, height: 1 }] },
    'boxes[0]: expected a photograph whose contentHash is known, came number 1, which has none',
  ],
  [
    'a box that reaches over the edge',
    'recordPhotographs',
    {
      of: 'piece-shore-dish',
      contentHash: hash,
      boxes: [{ picture: 'motif-dish-ferry', x: 80, y: 1, width: 30, height: 1 }],
    },
    'boxes[0]: expected a rectangle within the photograph, in percent, came 80,1,30,1',
  ],
  [
    'what is no SHA-256',
    'recordPhotographs',
    { of: 'piece-shore-dish', contentHash: 'abc' },
    'contentHash: expected a SHA-256 as 64 hexadecimal digits in small letters, came "abc"',
  ],
];

test('what an act cannot do is refused with the field, and nothing is written', async () => {
  const { api, store } = await demoApi();
  await ask(api, 'mutation { addPiece(input: {id: "piece-bare-mug"}) { changeSet } }');
  await ask(api, 'mutation { addPhotograph(input: {id: "photograph-of-mug", of: "piece-bare-mug"}) { changeSet } }');
  const last = await store.lastChangeSet();
  for (const [says, act, input, told, code = 'INPUT_INVALID'] of cases) {
    const type = `${act.charAt(0).toUpperCase()}${act.slice(1)}Input`;
    const query = `mutation ($input: ${type}!) { ${act}(input: $input) { changeSet } }`;
    const { errors = [] } = await ask(api, query, { input });
    expect([errors.map(toldOf), await store.lastChangeSet()], says).toEqual([[[code, told]], last]);
  }
  expect(new Set(cases.map(([, act]) => act))).toEqual(new Set(actCases.map(({ act }) => act)));
  await store.close();
}, 120_000);

const toldOf = ({ message, extensions }: Told) => [extensions?.['code'], message];

test('a name that others have is taken where it is said that it is another', async () => {
  const { api, store } = await demoApi();
  const query =
    'mutation { recordPiece(input: {pieceName: "Mug", painterName: "Peter Ohlsen", namesakes: true}) { named { id } } }';
  const { data } = await ask(api, query);
  const [{ id }] = (data as { recordPiece: { named: [{ id: string }] } }).recordPiece.named;
  expect(id).not.toBe('agent-peter-ohlsen');
  await store.close();
});

test('where nothing can be written, nothing is', async () => {
  const { api, store } = await demoApi({ commands: noCommands });
  expect(await codes(api, 'mutation { recordPiece(input: {pieceName: "Mug"}) { changeSet } }')).toEqual([
    'NOT_ALLOWED',
  ]);
  await store.close();
});
