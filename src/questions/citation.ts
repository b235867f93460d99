import { counts } from '../domain/model/counted.ts';
import { checkId } from '../domain/model/id.ts';
import { labelOf } from '../domain/model/label.ts';
import type { AnyClaim, AnyRecord, ClaimOf, RecordOf } from '../domain/model/row.ts';
import { compareText } from '../domain/text/compare.ts';
import { PlatestemmaError } from '../errors.ts';
import type { CitableAgent, CitableDate, CitableEdition, CitableImprint } from '../output/cite/citable-edition.ts';
import { cite } from '../output/cite/cite.ts';
import type { GraphStore } from '../store/graph-store.ts';
import type { CitationAsked, Citations } from './questions.ts';

const links = [
  { kind: 'Dating', name: 'of' },
  { kind: 'Imprint', name: 'edition' },
  { kind: 'Attribution', name: 'record' },
] as const;

/** Citations of editions, in the order asked for. */
export async function citation(store: GraphStore, asked: CitationAsked): Promise<Citations> {
  for (const id of asked.of) checkId(id);
  const editions = await citableEditions(store, asked.of);
  return cite(editions, {
    format: asked.format,
    ...(asked.style === undefined ? {} : { style: asked.style }),
    ...(asked.locale === undefined ? {} : { locale: asked.locale }),
  });
}

/**
 * Editions with all that a citation says of them, under the default basis.
 * @throws NOT_FOUND for an id that is not there, INPUT_INVALID for a record of another kind
 */
export async function citableEditions(store: GraphStore, ids: readonly string[]): Promise<readonly CitableEdition[]> {
  const rows = await store.rows(ids);
  const editions = ids.map((id, i) => theEdition(id, rows[i]));
  const claims = (await store.linked(ids, links)).map(found =>
    (found as readonly AnyClaim[]).filter(claim => counts(claim)),
  );
  const named = await recordsById(store, [
    ...editions.map(edition => edition.work),
    ...claims.flat().flatMap(claim => [...namedBy(claim)]),
  ]);
  return editions.map((edition, i) => citable(edition, claims[i]!, named));
}

function theEdition(id: string, row: unknown): RecordOf<'Edition'> {
  const found = row as AnyRecord | undefined;
  if (found === undefined)
    throw new PlatestemmaError('NOT_FOUND', `expected the id of an edition, came "${id}", which is not in the store`);
  if (found.kind !== 'Edition') {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `expected the id of an edition, came "${id}", which is of the kind ${found.kind}: only editions can be cited yet`,
    );
  }
  return found;
}

function* namedBy(claim: AnyClaim): Iterable<string> {
  if (claim.kind === 'Imprint') {
    if (claim.place !== undefined) yield claim.place;
    if (claim.agent !== undefined) yield claim.agent;
  }
  if (claim.kind === 'Attribution') yield claim.agent;
}

async function recordsById(store: GraphStore, ids: readonly string[]): Promise<ReadonlyMap<string, AnyRecord>> {
  const distinct = [...new Set(ids)];
  const rows = await store.rows(distinct);
  return new Map(distinct.flatMap((id, i) => (rows[i] === undefined ? [] : [[id, rows[i] as AnyRecord]])));
}

function citable(
  edition: RecordOf<'Edition'>,
  claims: readonly AnyClaim[],
  named: ReadonlyMap<string, AnyRecord>,
): CitableEdition {
  const work = named.get(edition.work);
  const date = citableDate(claims);
  return {
    id: edition.id,
    title: edition.title,
    singleSheet: work?.kind === 'Work' && work.form === 'SINGLE_SHEET',
    ...(edition.responsibility === undefined ? {} : { responsibility: edition.responsibility }),
    agents: claims.filter(claim => claim.kind === 'Attribution').flatMap(claim => citableAgent(claim, named)),
    ...(edition.statement === undefined ? {} : { editionStatement: edition.statement }),
    imprints: citableImprints(claims, named),
    ...(date === undefined ? {} : { date }),
    ...(edition.number === undefined ? {} : { number: edition.number }),
    ...(edition.extent === undefined ? {} : { extent: edition.extent }),
    ...(edition.format === undefined ? {} : { format: edition.format }),
    ...(edition.series === undefined ? {} : { series: edition.series }),
    ...(edition.languages === undefined ? {} : { languages: edition.languages }),
    ...(edition.identifiers === undefined ? {} : { identifiers: edition.identifiers }),
    ...(edition.digitalCopies === undefined ? {} : { urls: edition.digitalCopies }),
  };
}

function citableAgent(claim: ClaimOf<'Attribution'>, named: ReadonlyMap<string, AnyRecord>): readonly CitableAgent[] {
  const agent = named.get(claim.agent);
  const name = agent === undefined ? undefined : labelOf(agent);
  if (agent === undefined || name === undefined) return [];
  const sortName = agent.kind === 'Agent' ? agent.sortName : undefined;
  const kind = agent.kind === 'Agent' && agent.form === 'PERSON' ? 'person' : 'firm';
  return [{ name, kind, role: claim.role, ...(sortName === undefined ? {} : { sortName }) }];
}

/** Publishers as the imprint gives them; printers and booksellers only where no publisher is named. */
function citableImprints(
  claims: readonly AnyClaim[],
  named: ReadonlyMap<string, AnyRecord>,
): readonly CitableImprint[] {
  const imprints = claims
    .filter(claim => claim.kind === 'Imprint')
    .sort((a, b) => (a.order ?? 0) - (b.order ?? 0) || compareText(a.id, b.id));
  const published = imprints.filter(imprint => imprint.role === 'PUBLISHER');
  return (published.length > 0 ? published : imprints).map(imprint => {
    const publisher = nameOf(imprint.agent, named);
    const place = nameOf(imprint.place, named);
    return { ...(publisher === undefined ? {} : { publisher }), ...(place === undefined ? {} : { place }) };
  });
}

function nameOf(id: string | undefined, named: ReadonlyMap<string, AnyRecord>): string | undefined {
  const record = id === undefined ? undefined : named.get(id);
  return record === undefined ? undefined : labelOf(record);
}

/** The date of the imprint, else of whatever else says when it was published. */
function citableDate(claims: readonly AnyClaim[]): CitableDate | undefined {
  const datings = claims.filter(claim => claim.kind === 'Dating').filter(dating => dating.event === 'PUBLISHED');
  const dating =
    datings.find(d => d.basis === 'IMPRINT' && d.date !== undefined) ??
    datings.find(d => d.date !== undefined) ??
    datings[0];
  if (dating === undefined) return undefined;
  return {
    ...(dating.date === undefined ? {} : { edtf: dating.date }),
    ...(dating.asWritten === undefined ? {} : { asWritten: dating.asWritten }),
  };
}
