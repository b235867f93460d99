import type { CitableAgent } from './citable.ts';
import type { CslName } from './csl-item.ts';

/**
 * A name for CSL. Firms, and persons whose record does not say which part is the family name, stay whole. A sort name
 * is split at its first comma; a part with digits after that (dates of life) is dropped, any other is a suffix.
 */
export function cslName(agent: CitableAgent): CslName {
  const name = agent.name.trim();
  if (agent.kind === 'firm') return { literal: name };
  if (agent.family !== undefined) return parts(agent.family, agent.given, undefined);
  const [family, ...rest] = (agent.sortName ?? '').split(',').map(part => part.trim());
  const [given, ...suffixes] = rest.filter(part => part !== '' && !/\d/.test(part));
  if (!family || given === undefined) return { literal: name || family || '' };
  return parts(family, given, suffixes.join(', '));
}

function parts(family: string, given: string | undefined, suffix: string | undefined): CslName {
  return { family, ...(given ? { given } : {}), ...(suffix ? { suffix } : {}) };
}

/** Names of agents, each once, in order. */
export function distinctNames(agents: readonly CitableAgent[]): readonly CslName[] {
  const byText = new Map(agents.map(cslName).map(name => [JSON.stringify(name), name]));
  return [...byText.values()];
}

/** A name as it is said: given name first. */
export function namedInFull({ given, family, suffix, literal }: CslName): string {
  return literal ?? [given, family, suffix].filter(Boolean).join(' ');
}

/** Firms whose record says how they are filed. */
export function filedAs(agents: readonly CitableAgent[]): Readonly<Record<string, string>> | undefined {
  const filed = agents.filter(
    ({ kind, name, sortName }) => kind === 'firm' && sortName !== undefined && sortName !== name,
  );
  return filed.length === 0
    ? undefined
    : Object.fromEntries(filed.map(({ name, sortName }) => [name.trim(), sortName!]));
}
