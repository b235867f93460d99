import { counts } from '../domain/model/counted.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyRecord, ClaimOf, RecordOf } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { Citable, CitableExemplar, CitableObject } from '../output/cite/citable.ts';
import { compact } from '../output/cite/compact.ts';
import { citableAgents, citableDate } from './citable-claims.ts';
import { citableEdition } from './citable-edition-of.ts';
import { citablePlate } from './citable-plate-of.ts';
import type { CitationGraph } from './citation-graph.ts';

const kinds = 'an edition, plate, appearance of a plate, artwork, piece, exemplar or reference';

/**
 * What is cited under an id, its names in the language where they have one.
 * @throws NOT_FOUND for an id that is not there, INPUT_INVALID for what cannot be cited
 */
export function citableOf(id: string, graph: CitationGraph, language: string): Citable {
  const row = graph.row(id);
  if (row === undefined)
    throw new PlatestemmaError('NOT_FOUND', `expected the id of ${kinds}, came "${id}", which is not in the store`);
  switch (row.kind) {
    case 'Edition':
      return citableEdition(row, graph);
    case 'Plate':
      return { ...citablePlate(row, graph), id };
    case 'Appearance':
      return { ...citablePlate(plateOf(row, graph), graph, row), id };
    case 'Artwork':
    case 'Piece':
      return citableObject(row, graph, language);
    case 'Exemplar':
      return citableExemplar(row, graph);
    case 'Reference':
      return compact<Citable>({ what: 'source', id, title: labelOf(row, language), csl: row.csl });
    default:
      throw new PlatestemmaError('INPUT_INVALID', `expected the id of ${kinds}, came "${id}" of the kind ${row.kind}`);
  }
}

function plateOf(appearance: ClaimOf<'Appearance'>, graph: CitationGraph): RecordOf<'Plate'> {
  const plate = graph.record(appearance.plate, 'Plate');
  if (plate !== undefined && counts(appearance) && appearance.presence === 'PRESENT') return plate;
  throw new PlatestemmaError(
    'INPUT_INVALID',
    `expected a plate that is held to be in the edition, came "${appearance.id}", which is withdrawn, not held or says that it is absent`,
  );
}

function citableObject(
  object: RecordOf<'Artwork'> | RecordOf<'Piece'>,
  graph: CitationGraph,
  language: string,
): CitableObject {
  const title = labelOf(object, language);
  const labelled = object.labels?.find(({ text }) => text === title)?.language;
  const own: Partial<CitableObject> =
    object.kind === 'Artwork'
      ? compact<Partial<CitableObject>>({ what: 'artwork', medium: object.medium, survival: object.survival })
      : compact<Partial<CitableObject>>({
          what: 'piece',
          form: object.form,
          medium: object.material,
          marks: object.marks?.map(({ reading, position }) => compact({ reading, position })),
        });
  return compact<CitableObject>({
    what: 'piece',
    id: object.id,
    title,
    agents: citableAgents(object.id, graph),
    size: object.size,
    date: citableDate(object.id, ['MADE'], graph),
    languages: labelled === undefined ? undefined : [labelled],
    ...own,
  });
}

function citableExemplar(exemplar: RecordOf<'Exemplar'>, graph: CitationGraph): CitableExemplar {
  const edition = graph.record(exemplar.edition, 'Edition');
  const named: AnyRecord = exemplar;
  return compact<CitableExemplar>({
    what: 'exemplar',
    id: exemplar.id,
    title: named.labels?.[0] === undefined ? undefined : labelOf(named),
    shelfmark: exemplar.shelfmark,
    wants: exemplar.wants,
    access: exemplar.access,
    edition: edition && citableEdition(edition, graph),
  });
}
