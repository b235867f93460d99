import type { AnyRow } from '../../src/domain/model/row.ts';
import { applyChanges } from '../../src/questions/apply-changes.ts';
import { checkedGraphStore } from '../../src/store/checked-graph-store.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { engines, type Planted } from './demo-store.ts';

type Row = { readonly id: string; readonly kind: string } & Readonly<Record<string, unknown>>;

const label = (text: string, language?: string) => ({
  labels: [{ text, ...(language === undefined ? {} : { language }) }],
});
const person = (id: string, name: string, sortName: string): Row => ({
  ...{ id: `agent-${id}`, kind: 'Agent', form: 'PERSON', sortName },
  ...label(name),
});
const dating = (of: string, event: string, date: string, more: object = {}): Row => ({
  ...{ id: `dating-of-${of}`, kind: 'Dating', of, event, date },
  ...more,
});
const imprint = (edition: string, place: string, agent: string): Row => ({
  ...{ id: `imprint-of-${edition}`, kind: 'Imprint', edition, place: `place-${place}`, agent: `agent-${agent}` },
  role: 'PUBLISHER',
});

/** An invented world with one of everything that can be cited, as rows of a graph file. */
export const citationRows: readonly Row[] = [
  { id: 'place-amsterdam-city', kind: 'Place', ...label('Amsterdam') },
  { id: 'place-london-city', kind: 'Place', ...label('London') },
  person('jan-painter', 'Jan van der Meer', 'van der Meer, Jan'),
  person('jacob-etcher', 'Jacob Terwiel', 'Terwiel, Jacob'),
  person('peter-decorator', 'Peter Ohlsen', 'Ohlsen, Peter'),
  { id: 'agent-gilt-swan', kind: 'Agent', form: 'FIRM', ...label('P. Hartigh in the Gilt Swan') },
  { id: 'agent-calloway-firm', kind: 'Agent', form: 'FIRM', ...label('T. Calloway & Co.') },
  {
    id: 'agent-old-pottery',
    kind: 'Agent',
    form: 'FIRM',
    sortName: 'Hill Pottery, The Old',
    ...label('The Old Hill Pottery'),
  },
  { id: 'workshop-shore-works', kind: 'Workshop', ...label('Shore faience works') },

  { id: 'work-pattern-book', kind: 'Work', form: 'PATTERN_BOOK', ...label('Shore pleasures') },
  { id: 'work-monthly-serial', kind: 'Work', form: 'SERIAL', ...label('The Cabinet') },
  { id: 'work-ferry-sheet', kind: 'Work', form: 'SINGLE_SHEET', ...label('The ferry') },

  {
    id: 'edition-first-dutch',
    kind: 'Edition',
    work: 'work-pattern-book',
    title: 'Vermaak aan de oever',
    languages: ['nl'],
  },
  dating('edition-first-dutch', 'PUBLISHED', '1751', { asWritten: '1751', basis: 'IMPRINT' }),
  imprint('edition-first-dutch', 'amsterdam-city', 'gilt-swan'),
  {
    ...{ id: 'edition-second-english', kind: 'Edition', work: 'work-pattern-book', title: 'Pleasures of the shore' },
    ...{ statement: 'The second edition', languages: ['en'] },
  },
  dating('edition-second-english', 'PUBLISHED', '1764~', { asWritten: '[1764?]', basis: 'IMPRINT' }),
  imprint('edition-second-english', 'london-city', 'calloway-firm'),
  { id: 'edition-dutch-reprint', kind: 'Edition', work: 'work-pattern-book', title: 'Vermaak aan den oever' },
  dating('edition-dutch-reprint', 'PUBLISHED', '1768?'),
  {
    id: 'editiondescent-of-reprint',
    kind: 'EditionDescent',
    later: 'edition-dutch-reprint',
    earlier: 'edition-first-dutch',
    text: 'SAME',
  },
  {
    id: 'editiondescent-of-english',
    kind: 'EditionDescent',
    later: 'edition-second-english',
    earlier: 'edition-first-dutch',
    text: 'TRANSLATED',
  },
  { id: 'edition-volume-birds', kind: 'Edition', work: 'work-pattern-book', title: 'Vogels' },
  {
    id: 'partof-volume-birds',
    kind: 'PartOf',
    part: 'edition-volume-birds',
    whole: 'edition-first-dutch',
    number: 'Deel 2',
  },

  {
    id: 'edition-cabinet-march',
    kind: 'Edition',
    work: 'work-monthly-serial',
    title: 'The Cabinet',
    number: 'March 1765',
  },
  dating('edition-cabinet-march', 'PUBLISHED', '1765-03'),
  {
    id: 'edition-cabinet-volume',
    kind: 'Edition',
    work: 'work-monthly-serial',
    title: 'The Cabinet',
    number: 'Vol. 3',
  },
  { id: 'edition-cabinet-27', kind: 'Edition', work: 'work-monthly-serial', title: 'The Cabinet' },
  dating('edition-cabinet-27', 'PUBLISHED', '1766-04'),
  {
    id: 'partof-cabinet-27',
    kind: 'PartOf',
    part: 'edition-cabinet-27',
    whole: 'edition-cabinet-volume',
    number: '27',
  },
  { id: 'edition-ferry-sheet', kind: 'Edition', work: 'work-ferry-sheet', title: 'De veerpont' },
  dating('edition-ferry-sheet', 'PUBLISHED', '[1755..1761]', { basis: 'DOCUMENT' }),
  imprint('edition-ferry-sheet', 'amsterdam-city', 'gilt-swan'),

  {
    id: 'plate-net-menders',
    kind: 'Plate',
    form: 'PLATE',
    caption: 'The net menders',
    lettering: 'J. Terwiel fec.',
    technique: 'etching',
  },
  {
    id: 'attribution-net-menders',
    kind: 'Attribution',
    record: 'plate-net-menders',
    agent: 'agent-jacob-etcher',
    role: 'etr',
    certainty: 'PROBABLE',
  },
  {
    id: 'appearance-menders-first',
    kind: 'Appearance',
    plate: 'plate-net-menders',
    edition: 'edition-first-dutch',
    presence: 'PRESENT',
    number: '4',
  },
  {
    ...{
      id: 'appearance-menders-english',
      kind: 'Appearance',
      plate: 'plate-net-menders',
      edition: 'edition-second-english',
    },
    ...{ presence: 'PRESENT', volume: '2', number: 'IV', page: '30', state: 'state-menders-second' },
  },
  { id: 'matrix-menders-copper', kind: 'Matrix', form: 'COPPER_PLATE' },
  { id: 'state-menders-second', kind: 'State', matrix: 'matrix-menders-copper', order: 2 },
  { id: 'plate-light-house', kind: 'Plate', form: 'CUT', caption: 'A light-house', technique: 'woodcut' },
  {
    id: 'appearance-light-house',
    kind: 'Appearance',
    plate: 'plate-light-house',
    edition: 'edition-cabinet-march',
    presence: 'PRESENT',
    page: '117',
  },
  { id: 'plate-wind-mill', kind: 'Plate', form: 'CUT', caption: 'A mill' },
  {
    id: 'appearance-wind-mill',
    kind: 'Appearance',
    plate: 'plate-wind-mill',
    edition: 'edition-cabinet-27',
    presence: 'PRESENT',
    page: '12',
  },
  {
    id: 'plate-evening-ferry',
    kind: 'Plate',
    form: 'SINGLE_SHEET_PRINT',
    caption: 'De veerpont',
    technique: 'engraving',
    size: '30 × 40 cm',
  },
  {
    id: 'attribution-ferry-print',
    kind: 'Attribution',
    record: 'plate-evening-ferry',
    agent: 'agent-jacob-etcher',
    role: 'egr',
  },
  {
    id: 'appearance-evening-ferry',
    kind: 'Appearance',
    plate: 'plate-evening-ferry',
    edition: 'edition-ferry-sheet',
    presence: 'PRESENT',
  },
  { id: 'copying-evening-ferry', kind: 'Copying', copy: 'plate-evening-ferry', source: 'artwork-ferry-painting' },
  { id: 'plate-in-nothing', kind: 'Plate', technique: 'mezzotint' },
  dating('plate-in-nothing', 'MADE', '17XX'),

  {
    id: 'artwork-ferry-painting',
    kind: 'Artwork',
    medium: 'oil on panel',
    survival: 'LOST',
    ...label('The ferry at evening', 'en'),
  },
  {
    id: 'attribution-ferry-painting',
    kind: 'Attribution',
    record: 'artwork-ferry-painting',
    agent: 'agent-jan-painter',
    role: 'art',
  },
  {
    ...{ id: 'piece-shore-dish', kind: 'Piece', form: 'dish', material: 'painted faience', size: 'diameter 38 cm' },
    labels: [
      { text: 'Dish with shore scenes', language: 'en' },
      { text: 'Schüssel mit Uferszenen', language: 'de' },
    ],
    marks: [{ id: 'mark-1', form: 'YEAR_MARK', reading: 'E 1766', position: 'on the foot' }],
  },
  dating('piece-shore-dish', 'MADE', '1766', { asWritten: 'E 1766', basis: 'MARK' }),
  {
    id: 'attribution-dish-works',
    kind: 'Attribution',
    record: 'piece-shore-dish',
    agent: 'workshop-shore-works',
    role: 'mfr',
  },
  {
    id: 'attribution-dish-painter',
    kind: 'Attribution',
    record: 'piece-shore-dish',
    agent: 'agent-peter-decorator',
    role: 'art',
    certainty: 'PROBABLE',
  },

  {
    ...{
      id: 'exemplar-first-copy',
      kind: 'Exemplar',
      edition: 'edition-first-dutch',
      shelfmark: 'Holm Library, Kb 12',
    },
    ...{ wants: 'plate 7', access: 'https://example.org/kb12' },
  },
  { id: 'exemplar-made-up', kind: 'Exemplar', shelfmark: 'Holm Library, Album 3', ...label('Album of shore scenes') },
  { id: 'exemplar-without-name', kind: 'Exemplar', shelfmark: 'Holm Library, Album 4' },

  {
    ...{ id: 'reference-with-item', kind: 'Reference', ...label('Lindqvist 1968') },
    csl: { id: 'lindqvist', type: 'book', title: 'Shore and kiln', author: [{ family: 'Lindqvist', given: 'Astrid' }] },
  },
  { id: 'reference-without-item', kind: 'Reference', ...label('A letter') },
];

/** The world in a fresh store of an engine, changed as planted and with rows added. */
export async function citationWorld(
  engine: keyof typeof engines,
  planted: Planted = {},
  added: readonly Row[] = [],
): Promise<GraphStore> {
  const store = checkedGraphStore(await engines[engine]());
  const all = [...citationRows, ...added].map(row => ({ ...row, ...planted[row.id] }) as unknown as AnyRow);
  await applyChanges(store, {
    rows: all,
    added: new Set(all.map(row => row.id)),
    changeSet: { moment: '2026-01-01T00:00:00.000Z', who: 'Ada', why: 'something to cite' },
  });
  return store;
}
