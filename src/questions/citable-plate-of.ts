import { tryEdtf } from '../domain/dates/edtf.ts';
import { labelOf } from '../domain/model/label.ts';
import type { ClaimOf, RecordOf } from '../domain/model/row.ts';
import { compareText } from '../domain/text/compare.ts';
import type { CitableModel, CitablePlate, PlateLocator } from '../output/cite/citable.ts';
import { compact } from '../output/cite/compact.ts';
import { citableAgents, citableDate } from './citable-claims.ts';
import { citableEdition, publishedOn } from './citable-edition-of.ts';
import type { CitationGraph } from './citation-graph.ts';

/** A plate in an edition: where an appearance says, else in the earliest edition that it is recorded to be in. */
export function citablePlate(
  plate: RecordOf<'Plate'>,
  graph: CitationGraph,
  appearance: ClaimOf<'Appearance'> | undefined = earliest(plate.id, graph),
): Omit<CitablePlate, 'id'> {
  const edition = graph.record(appearance?.edition, 'Edition');
  return compact<Omit<CitablePlate, 'id'>>({
    what: 'plate',
    title: plate.caption ?? labelOf(plate),
    form: plate.form,
    agents: citableAgents(plate.id, graph),
    technique: plate.technique,
    size: plate.size,
    lettering: plate.lettering,
    after: graph.claims(plate.id, 'Copying').flatMap(({ source }) => citableModel(source, graph)),
    edition: edition && citableEdition(edition, graph),
    locator: appearance && locatorOf(appearance, graph),
    date: citableDate(plate.id, ['PUBLISHED', 'MADE'], graph),
  });
}

function earliest(plate: string, graph: CitationGraph): ClaimOf<'Appearance'> | undefined {
  const present = graph.claims(plate, 'Appearance').filter(claim => claim.presence === 'PRESENT');
  const firstDay = (claim: ClaimOf<'Appearance'>) =>
    tryEdtf(publishedOn(claim.edition, graph)?.edtf ?? '')?.lo ?? Number.POSITIVE_INFINITY;
  return present.toSorted((a, b) => {
    const [first, second] = [firstDay(a), firstDay(b)];
    return first === second ? compareText(a.id, b.id) : first - second;
  })[0];
}

function locatorOf(appearance: ClaimOf<'Appearance'>, graph: CitationGraph): PlateLocator {
  const { volume, page, number, cover, colouring } = appearance;
  const state = graph.record(appearance.state, 'State')?.order;
  return compact<PlateLocator>({ volume, page, number, cover, colouring, state });
}

/** Paintings and prints that it was made after; a detail or motif is not named. */
function citableModel(source: string, graph: CitationGraph): readonly CitableModel[] {
  const model = graph.record(source, 'Artwork') ?? graph.record(source, 'Plate');
  if (model === undefined) return [];
  return [compact<CitableModel>({ title: labelOf(model), agents: citableAgents(source, graph) })];
}
