import type { Given } from '../../domain/acts/act.ts';
import type { print } from '../../domain/acts/print.ts';
import { howCopied, type Planned, saidOf } from './act-parts.ts';
import { dated } from './dated.ts';
import type { ClaimFields, Draft } from './draft.ts';
import { makersOf } from './makers.ts';
import { NamedRecords, refuseNamesakes } from './named-record.ts';
import { refusal } from './refusal.ts';

type GivenPrint = Given<typeof print.fields>;

export async function planPrint(given: GivenPrint, draft: Draft): Promise<Planned> {
  const said = saidOf(given);
  const named = new NamedRecords(draft, given);
  const { work, edition } = await editionOf(given, draft);
  if (edition === undefined) refuseWithoutEdition(given);
  const plate = plateOf(given, draft);
  const { picture, volume, page, plateNumber, cover, colouring, state } = given;
  const where = { volume, page, number: plateNumber, cover, colouring, state };
  return {
    ...{ work, edition, plate },
    appearance:
      edition === undefined
        ? undefined
        : await draft.claim('Appearance', { plate, edition, presence: 'PRESENT', ...where }, said),
    datings: await draft.claims('Dating', datings(plate, edition, given), said),
    imprints: edition === undefined ? [] : await draft.claims('Imprint', await imprints(edition, given, named), said),
    attributions: await draft.claims('Attribution', await makersOf([plate], given, named), said),
    copying:
      picture === undefined
        ? undefined
        : await draft.claim('Copying', { copy: plate, source: picture, ...howCopied(given) }, said),
    named: named.ids,
  };
}

function plateOf({ plate, caption, title, form, lettering, technique, size }: GivenPrint, draft: Draft): string {
  return plate ?? draft.add('Plate', { form, caption: caption ?? title, lettering, technique, size });
}

/** What describes an edition: where one of them is given, there is one. */
const describing = [
  ...(['edition', 'title', 'number', 'statement', 'imprint', 'extent', 'languages', 'work', 'workTitle'] as const),
  ...(['published', 'publishedAsWritten', 'place', 'placeName', 'publisher', 'publisherName'] as const),
  ...(['printer', 'printerName', 'bookseller', 'booksellerName'] as const),
];

interface EditionOf {
  readonly work?: string;
  readonly edition?: string;
}

async function editionOf(given: GivenPrint, draft: Draft): Promise<EditionOf> {
  const { edition: there, number, statement, imprint, extent, languages, published, publishedAsWritten } = given;
  if (!describing.some(name => given[name] !== undefined)) return {};
  if (there !== undefined) {
    const [row] = await draft.store.rows([there]);
    return row?.kind === 'Edition' ? { work: row.work, edition: there } : { edition: there };
  }
  const title = given.title ?? given.caption;
  if (title === undefined)
    throw refusal('title', 'expected the title of the new edition, or the id of one that is there, came neither');
  const work = given.work ?? (await workOf(given, title, draft));
  const key = JSON.stringify([title, work, number, statement, published ?? publishedAsWritten]);
  const edition = draft.known('Edition', key, { work, title, number, statement, imprint, extent, languages });
  return { work, edition };
}

async function workOf(given: GivenPrint, editionTitle: string, draft: Draft): Promise<string> {
  const { workTitle, workForm, languages } = given;
  const title = workTitle ?? editionTitle;
  const field = workTitle !== undefined ? 'workTitle' : given.title !== undefined ? 'title' : 'caption';
  await refuseNamesakes(draft, 'Work', title, { field, instead: 'work' }, given);
  return draft.known('Work', title, { labels: [{ text: title }], form: workForm, languages }, { form: 'workForm' });
}

/** What is said of a plate in an edition, where there is none. */
function refuseWithoutEdition(given: GivenPrint): void {
  const names = ['volume', 'page', 'plateNumber', 'cover', 'colouring', 'state', 'fictitious', 'workForm'] as const;
  const field = names.find(name => given[name] !== undefined);
  if (field !== undefined) throw refusal(field, `expected an edition or its title, came none, but "${given[field]}"`);
}

function datings(plate: string, edition: string | undefined, given: GivenPrint): Partial<ClaimFields<'Dating'>>[] {
  const { published, publishedAsWritten, publishedBasis = 'IMPRINT', publicationLine, made } = given;
  const [out, line] = [
    dated('publishedAsWritten', published, publishedAsWritten, publishedBasis),
    dated('publicationLine', undefined, publicationLine, 'PUBLICATION_LINE'),
  ];
  return [
    ...(out === undefined || edition === undefined ? [] : [{ of: edition, event: 'PUBLISHED' as const, ...out }]),
    ...(line === undefined ? [] : [{ of: plate, event: 'PUBLISHED' as const, ...line }]),
    ...(made === undefined ? [] : [{ of: plate, event: 'MADE' as const, date: made }]),
  ];
}

/** The place goes with the first of them, as imprints have it; alone it is where the edition was published. */
async function imprints(
  edition: string,
  given: GivenPrint,
  named: NamedRecords,
): Promise<Partial<ClaimFields<'Imprint'>>[]> {
  const place = await named.of('Place', 'place');
  const roles = [
    { role: 'PUBLISHER', agent: await named.of('Agent', 'publisher') },
    { role: 'PRINTER', agent: await named.of('Agent', 'printer') },
    { role: 'BOOKSELLER', agent: await named.of('Agent', 'bookseller') },
  ] as const;
  const taken = roles.filter(({ agent }) => agent !== undefined);
  if (place === undefined && given.fictitious !== undefined)
    throw refusal('fictitious', `expected a place, came none, but "${given.fictitious}"`);
  const all = taken.length === 0 && place !== undefined ? [roles[0]] : taken;
  return all.map(({ role, agent }, i) => ({
    ...{ edition, agent, role },
    ...(i === 0 ? { place, fictitious: given.fictitious } : {}),
    ...(all.length === 1 ? {} : { order: i + 1 }),
  }));
}
