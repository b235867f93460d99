import type { Given } from '../../domain/acts/act.ts';
import type { opinion } from '../../domain/acts/opinion.ts';
import { labelOf } from '../../domain/model/label.ts';
import type { AnyRecord, ClaimOf } from '../../domain/model/row.ts';
import { howCopied, type Planned, saidOf } from './act-parts.ts';
import type { Draft } from './draft.ts';
import { NamedRecords } from './named-record.ts';
import { refusal } from './refusal.ts';

type GivenOpinion = Given<typeof opinion.fields>;

export async function planOpinion(given: GivenOpinion, draft: Draft): Promise<Planned> {
  const named = new NamedRecords(draft, given);
  const agent = (await named.of('Agent', 'agent'))!;
  const copying = given.claim === undefined ? await copyingOf(given, agent, draft) : undefined;
  if (given.claim !== undefined) refuseCopying(given);
  const { verdict = 'AGREES', asWritten } = given;
  const claim = (given.claim ?? copying)!;
  return {
    opinion: await draft.claim('Opinion', { agent, claim, verdict, asWritten }, saidOf(given)),
    copying,
    named: named.ids,
  };
}

/** The copying that is weighed, by whose opinion it is where nobody else is named. */
async function copyingOf(given: GivenOpinion, agent: string, draft: Draft): Promise<string> {
  const { copy, picture: source } = given;
  if (source === undefined) throw refusal('picture', `expected the picture that "${copy}" follows, came none`);
  const [about = []] = await draft.store.linked([copy!], [{ kind: 'Copying', name: 'copy' }]);
  const said = about.find(row => {
    const claim = row as ClaimOf<'Copying'>;
    return claim.source === source && claim.standing !== 'WITHDRAWN';
  });
  if (said !== undefined)
    throw refusal('copy', `expected a copying that is not recorded, came ${said.id}: give that as claim`);
  const by = given.by ?? given.agentName ?? (await nameOf(agent, draft));
  const fields = { copy, source, stance: 'WEIGHED' as const, ...howCopied(given) };
  return draft.claim('Copying', fields, { ...saidOf(given), ...(by === undefined ? {} : { by }) });
}

async function nameOf(agent: string, { store }: Draft): Promise<string | undefined> {
  const [row] = await store.rows([agent]);
  return row === undefined ? undefined : labelOf(row as AnyRecord);
}

/** What is said of a copying, where the opinion is of a claim that is there. */
function refuseCopying(given: GivenOpinion): void {
  const names = ['copy', 'picture', 'handedness', 'manner', 'remove', 'certainty', 'alterations', 'through'] as const;
  const field = names.find(name => given[name] !== undefined);
  if (field !== undefined) throw refusal(field, `expected none beside claim, came "${given[field]}"`);
}
