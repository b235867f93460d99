import type { CitableAgent } from './citable.ts';

/** MARC relators of those who make the printed image: they are the authors of a print. */
const printmakers = new Set(['egr', 'etr', 'ltg', 'mte', 'wde', 'wdc', 'prm', 'art']);

export function isPrintmaker(agent: CitableAgent): boolean {
  return printmakers.has(agent.role);
}
