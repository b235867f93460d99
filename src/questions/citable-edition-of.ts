import { labelOf } from '../domain/model/label.ts';
import type { RecordOf } from '../domain/model/row.ts';
import { compareText } from '../domain/text/compare.ts';
import { foldTokens } from '../domain/text/fold.ts';
import type { CitableEdition, CitableImprint, CitableOriginal } from '../output/cite/citable.ts';
import { compact } from '../output/cite/compact.ts';
import { volumeOf } from '../output/cite/volume-number.ts';
import { citableAgents, citableDate } from './citable-claims.ts';
import type { CitationGraph } from './citation-graph.ts';

/** An edition with all that a citation says of it. */
export function citableEdition(edition: RecordOf<'Edition'>, graph: CitationGraph): CitableEdition {
  const work = graph.record(edition.work, 'Work');
  return compact<CitableEdition>({
    id: edition.id,
    ...titleAndNumber(edition, graph),
    singleSheet: work?.form === 'SINGLE_SHEET',
    serial: work?.form === 'SERIAL' ? true : undefined,
    responsibility: edition.responsibility,
    agents: citableAgents(edition.id, graph),
    editionStatement: edition.statement,
    imprints: citableImprints(edition.id, graph),
    date: publishedOn(edition.id, graph),
    extent: edition.extent,
    format: edition.format,
    series: edition.series,
    languages: edition.languages,
    identifiers: edition.identifiers,
    urls: edition.digitalCopies,
    original: original(edition, graph),
  });
}

/** A volume of a set under a title of its own is cited as the set, with the title of the volume after it. */
function titleAndNumber(
  edition: RecordOf<'Edition'>,
  graph: CitationGraph,
): { readonly title: string; readonly number: string | undefined; readonly partTitles: readonly string[] | undefined } {
  const part = graph.claims(edition.id, 'PartOf').find(claim => graph.record(claim.whole, 'Edition') !== undefined);
  const whole = graph.record(part?.whole, 'Edition');
  const number = edition.number ?? part?.number;
  if (whole === undefined) return { title: edition.title, number, partTitles: undefined };
  const isVolume = volumeOf(number) !== undefined && !begins(edition.title, whole.title);
  if (isVolume) return { title: whole.title, number, partTitles: [edition.title] };
  const inVolume = whole.number !== undefined && number !== undefined && /^\d+$/.test(number);
  return { title: edition.title, number: inVolume ? `${whole.number}, no. ${number}` : number, partTitles: undefined };
}

function begins(title: string, whole: string): boolean {
  return ` ${foldTokens(title).join(' ')} `.startsWith(` ${foldTokens(whole).join(' ')} `);
}

/** Publishers as the imprint gives them; printers and booksellers only where no publisher is named. */
function citableImprints(edition: string, graph: CitationGraph): readonly CitableImprint[] {
  const imprints = graph
    .claims(edition, 'Imprint')
    .toSorted((a, b) => (a.order ?? 0) - (b.order ?? 0) || compareText(a.id, b.id));
  const published = imprints.filter(imprint => imprint.role === 'PUBLISHER');
  return (published.length > 0 ? published : imprints).map(({ agent, place }) => {
    const [publisher, town] = [graph.record(agent, 'Agent'), graph.record(place, 'Place')];
    return compact<CitableImprint>({ publisher: publisher && labelOf(publisher), place: town && labelOf(town) });
  });
}

export function publishedOn(edition: string, graph: CitationGraph): CitableEdition['date'] {
  return citableDate(edition, ['PUBLISHED'], graph);
}

/** The edition of which this is a reprint: the one from which it has its text unchanged, if it is but one. */
function original(edition: RecordOf<'Edition'>, graph: CitationGraph): CitableOriginal | undefined {
  const descents = graph.claims(edition.id, 'EditionDescent').filter(claim => claim.text === 'SAME');
  const earlier = descents.length === 1 ? graph.record(descents[0]!.earlier, 'Edition') : undefined;
  if (earlier === undefined) return undefined;
  const imprints = citableImprints(earlier.id, graph);
  const joined = (texts: readonly (string | undefined)[]) => [...new Set(texts)].filter(Boolean).join('; ');
  return compact<CitableOriginal>({
    title: earlier.title === edition.title ? undefined : earlier.title,
    date: publishedOn(earlier.id, graph),
    publisher: joined(imprints.map(imprint => imprint.publisher)),
    place: joined(imprints.map(imprint => imprint.place)),
  });
}
