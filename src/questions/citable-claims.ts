import { tryEdtf } from '../domain/dates/edtf.ts';
import { labelOf } from '../domain/model/label.ts';
import type { ClaimOf } from '../domain/model/row.ts';
import type { CitableAgent, CitableDate } from '../output/cite/citable.ts';
import type { CitationGraph } from './citation-graph.ts';

/** Persons, firms and workshops to whom a record is attributed, each in its role. */
export function citableAgents(record: string, graph: CitationGraph): readonly CitableAgent[] {
  return graph.claims(record, 'Attribution').flatMap(claim => citableAgent(claim, graph));
}

function citableAgent(claim: ClaimOf<'Attribution'>, graph: CitationGraph): readonly CitableAgent[] {
  const agent = graph.record(claim.agent, 'Agent') ?? graph.record(claim.agent, 'Workshop');
  const name = agent === undefined ? undefined : labelOf(agent);
  if (agent === undefined || name === undefined) return [];
  const sortName = agent.kind === 'Agent' ? agent.sortName : undefined;
  const kind = agent.kind === 'Agent' && agent.form === 'PERSON' ? 'person' : 'firm';
  const certainty = doubtOf(claim);
  return [
    {
      ...{ name, kind, role: claim.role },
      ...(sortName === undefined ? {} : { sortName }),
      ...(certainty === undefined ? {} : { certainty }),
    },
  ];
}

/** One of several alternatives is possible, however sure it is said. */
function doubtOf(claim: ClaimOf<'Attribution'>): CitableAgent['certainty'] {
  if (claim.certainty === 'POSSIBLE' || claim.alternativeTo !== undefined) return 'possible';
  return claim.certainty === 'PROBABLE' ? 'probable' : undefined;
}

type Event = ClaimOf<'Dating'>['event'];

/**
 * The date of an event: of the imprint, else of whatever else says it; one of several where alternatives are recorded.
 * Undefined if nothing is recorded.
 */
export function citableDate(record: string, events: readonly Event[], graph: CitationGraph): CitableDate | undefined {
  const all = graph.claims(record, 'Dating');
  const datings = events.map(event => all.filter(dating => dating.event === event)).find(found => found.length > 0);
  if (datings === undefined) return undefined;
  const dating =
    datings.find(d => d.basis === 'IMPRINT' && d.date !== undefined) ??
    datings.find(d => d.date !== undefined) ??
    datings[0]!;
  const edtf = dating.alternativeTo === undefined ? dating.date : oneOf(dating, datings);
  return {
    ...(edtf === undefined ? {} : { edtf }),
    ...(dating.asWritten === undefined ? {} : { asWritten: dating.asWritten }),
  };
}

/** The dates of a group of alternatives as one EDTF set; the date alone where they make none. */
function oneOf(dating: ClaimOf<'Dating'>, datings: readonly ClaimOf<'Dating'>[]): string | undefined {
  const group = datings.filter(other => other.alternativeTo === dating.alternativeTo);
  const members = [...new Set(group.flatMap(({ date }) => (date === undefined ? [] : membersOf(date))))];
  const set = `[${members.join(',')}]`;
  return members.length > 1 && tryEdtf(set) !== undefined ? set : dating.date;
}

/** A set of one lies open: `[1760..1770]` is a member as it stands. */
function membersOf(date: string): readonly string[] {
  return /^\[.*\]$/.test(date) ? date.slice(1, -1).split(',') : [date];
}
