import type { CitableAgent, CitableModel, CitablePlate } from './citable.ts';
import { compact } from './compact.ts';
import { cslDate } from './csl-date.ts';
import type { CslItem } from './csl-item.ts';
import { distinctNames, filedAs } from './csl-name.ts';
import { editionToCsl } from './edition-to-csl.ts';
import { issueNumber } from './issue-number.ts';
import { plateLocator, wordOfPlate } from './plate-locator.ts';
import { isPrintmaker } from './printmaker.ts';
import { doubtNote, joinedNote, rolesNote, sentence } from './roles-note.ts';
import { volumeOf } from './volume-number.ts';

/**
 * A printed image as a CSL-JSON item: in a book a `chapter`, which keeps the page in every style, as `figure` does not;
 * in a number of a serial an `article-journal`, as styles leave the page and number of `article-magazine` out; a
 * single-sheet print, and a plate of no edition, a `graphic`. Its printmakers are its authors.
 */
export function plateToCsl(plate: CitablePlate, language = 'en'): CslItem {
  const { edition } = plate;
  if (edition === undefined || edition.singleSheet === true || plate.form === 'SINGLE_SHEET_PRINT') {
    return sheet(plate, language);
  }
  return edition.serial === true ? inSerial(plate, language) : inBook(plate, language);
}

function sheet(plate: CitablePlate, language: string): CslItem {
  const { issued = cslDate(plate.date, language), ...whole } = wholeOf(plate, language);
  const agents = [...(plate.agents ?? []), ...(plate.edition?.agents ?? [])];
  const date = plate.edition?.date ?? plate.date;
  return compact({
    ...common(plate, agents, language),
    type: 'graphic',
    publisher: whole.publisher,
    'publisher-place': whole['publisher-place'],
    issued,
    medium: plate.technique,
    dimensions: plate.size,
    language: whole.language,
    URL: whole.URL,
    custom: custom(plate, date?.edtf, date?.asWritten),
  });
}

function inBook(plate: CitablePlate, language: string): CslItem {
  const whole = wholeOf(plate, language);
  const volume = plate.locator?.volume;
  return compact({
    ...common(plate, plate.agents ?? [], language, dateNote(plate)),
    type: 'chapter',
    'container-title': whole.title,
    'container-author': whole.author,
    editor: whole.editor,
    compiler: whole.compiler,
    translator: whole.translator,
    illustrator: whole.illustrator,
    edition: whole.edition,
    volume: volumeOf(volume) ?? volume ?? whole.volume,
    'number-of-volumes': whole['number-of-volumes'],
    page: plateLocator(plate, language),
    publisher: whole.publisher,
    'publisher-place': whole['publisher-place'],
    issued: whole.issued,
    'original-date': whole['original-date'],
    'original-publisher': whole['original-publisher'],
    'original-publisher-place': whole['original-publisher-place'],
    'collection-title': whole['collection-title'],
    genre: plate.technique,
    language: whole.language,
    ISBN: whole.ISBN,
    URL: whole.URL,
    custom: { ...custom(plate, whole.custom.edtf, whole.custom.dateAsWritten), ...statement(whole) },
  });
}

function inSerial(plate: CitablePlate, language: string): CslItem {
  const edition = plate.edition!;
  const { volume, issue } = issueNumber(edition);
  const { number: _number, ...titled } = edition;
  const whole = editionToCsl(titled, language);
  return compact({
    ...common(plate, plate.agents ?? [], language, dateNote(plate)),
    type: 'article-journal',
    'container-title': whole.title,
    editor: whole.editor,
    volume: volumeOf(plate.locator?.volume) ?? plate.locator?.volume ?? volume,
    issue,
    page: plateLocator(plate, language),
    publisher: whole.publisher,
    'publisher-place': whole['publisher-place'],
    issued: whole.issued,
    genre: plate.technique,
    language: whole.language,
    ISSN: whole.ISSN,
    URL: whole.URL,
    custom: compact({
      ...custom(plate, whole.custom.edtf, whole.custom.dateAsWritten),
      number: issue === undefined && volume === undefined ? edition.number : undefined,
    }),
  });
}

function wholeOf(plate: CitablePlate, language: string): Partial<CslItem> & Pick<CslItem, 'custom'> {
  return plate.edition === undefined ? { custom: { id: plate.id } } : editionToCsl(plate.edition, language);
}

/** What all three forms say alike. */
function common(plate: CitablePlate, agents: readonly CitableAgent[], language: string, more: readonly string[] = []) {
  const authors = agents.filter(isPrintmaker);
  return {
    id: plate.id,
    title: plate.title ?? `[${wordOfPlate(plate.form, language)}]`,
    author: distinctNames(authors),
    'original-author': distinctNames((plate.after ?? []).flatMap(model => model.agents ?? [])),
    note: joinedNote([
      ...rolesNote(agents.filter(agent => !isPrintmaker(agent))),
      ...doubtNote(authors),
      ...(plate.after ?? []).map(afterNote),
      ...(plate.lettering === undefined ? [] : [sentence(`Lettered: ${plate.lettering}`)]),
      ...more,
      ...stateNote(plate),
    ]),
  };
}

function afterNote({ title, agents = [] }: CitableModel): string {
  const by = agents.length === 0 ? '' : ` by ${agents.map(({ name }) => name).join(', ')}`;
  return sentence(`After ${title ?? 'a work'}${by}`);
}

/** A publication line dates the plate, and never the volume that it is in: the date stands apart from that of the whole. */
function dateNote({ date, edition }: CitablePlate): readonly string[] {
  const words = date?.asWritten ?? date?.edtf;
  const same = words === (edition?.date?.asWritten ?? edition?.date?.edtf);
  return words === undefined || words === '' || same ? [] : [sentence(`Date of the plate: ${words}`)];
}

function stateNote({ locator = {} }: CitablePlate): readonly string[] {
  const { state, colouring } = locator;
  return [
    ...(state === undefined ? [] : [`State ${state}.`]),
    ...(colouring === undefined ? [] : [sentence(`Colouring: ${colouring}`)]),
  ];
}

function custom(plate: CitablePlate, edtf: string | undefined, asWritten: string | undefined): CslItem['custom'] {
  return compact({
    id: plate.id,
    edition: plate.edition?.id,
    edtf,
    dateAsWritten: asWritten,
    lettering: plate.lettering,
    technique: plate.technique,
    filedAs: filedAs([...(plate.agents ?? []), ...(plate.edition?.agents ?? [])]),
  });
}

function statement(whole: Pick<CslItem, 'custom'>): Partial<CslItem['custom']> {
  const { editionStatement } = whole.custom;
  return editionStatement === undefined ? {} : { editionStatement };
}
