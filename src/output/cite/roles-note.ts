import type { CitableAgent } from './citable.ts';
import { relatorTerm } from './relator-term.ts';

/** Agents that have no variable of their own in CSL, by role: `Engraver: Rook, J.; Stone, K. Printer: Perkins & Bacon.` */
export function rolesNote(agents: readonly CitableAgent[]): readonly string[] {
  const byRole = new Map<string, string[]>();
  for (const agent of agents) {
    const term = relatorTerm(agent.role);
    const doubt = agent.certainty === undefined ? '' : ` (${agent.certainty})`;
    byRole.set(term, [...(byRole.get(term) ?? []), `${agent.sortName ?? agent.name}${doubt}`]);
  }
  return [...byRole].map(([term, names]) => `${term}: ${[...new Set(names)].join('; ')}.`);
}

/** What is not certain of those who stand as authors, where nothing shows it. */
export function doubtNote(authors: readonly CitableAgent[]): readonly string[] {
  return authors.flatMap(({ name, role, certainty }) =>
    certainty === undefined ? [] : [`Attributed to ${name} as ${relatorTerm(role).toLowerCase()} (${certainty}).`],
  );
}

/** Sentences as one note, without doubled stops. */
export function joinedNote(sentences: readonly string[]): string | undefined {
  const note = sentences.join(' ').replace(/\.\.(?= |$)/gu, '.');
  return note === '' ? undefined : note;
}

/** A text with a stop at its end. */
export function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}

export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
