import type { Via } from '../graph-store.ts';
import { everyLinkType, linkType } from './names.ts';

/** Rows of ids, and what each round comes upon around them now: a list of properties each. */
export function surroundingsText(rounds: readonly (readonly Via[])[]): string {
  return `
CALL () {
  UNWIND $ids AS id
  MATCH (o:Row {id: id})
  RETURN collect(DISTINCT o) AS own
}
${roundsText('own', rounds)}
RETURN ${propertiesOf('own')}, ${roundsAnswer(rounds)}`;
}

/**
 * Makes rounds around the nodes of a list, each of which it has once. What is new of a round is found by grouping: to look
 * every node up in a list of those before would take the square of the time.
 */
export function roundsText(own: string, rounds: readonly (readonly Via[])[]): string {
  return [`WITH *, ${own} AS round0, ${own} AS there0`, ...rounds.map(roundText)].join('\n');
}

/** What was come upon, as `roundsText` leaves it: a list of rounds. */
export function roundsAnswer(rounds: readonly unknown[]): string {
  return `[${rounds.map((_, i) => propertiesOf(`round${i + 1}`)).join(', ')}]`;
}

export function propertiesOf(nodes: string): string {
  return `[n IN ${nodes} | properties(n)]`;
}

function roundText(via: readonly Via[], i: number): string {
  const [layer, there] = [`round${i}`, `there${i}`];
  return `CALL (${layer}, ${there}) {
  ${i === 0 ? 'WITH *' : `WITH * WHERE size(${layer}) <= $most`}
  ${heldText(layer, via)}
  CALL (${layer}, held) { UNWIND ${layer} + held AS o MATCH (o)-[:${everyLinkType}]->(e) RETURN collect(DISTINCT e) AS named }
  UNWIND [[0, ${there}], [1, held], [1, named]] AS part
  UNWIND part[1] AS n
  WITH n, min(part[0]) AS isNew WHERE isNew = 1
  RETURN collect(n) AS round${i + 1}
}
WITH *, ${there} + round${i + 1} AS there${i + 1}`;
}

function heldText(layer: string, via: readonly Via[]): string {
  if (via.length === 0) return 'WITH *, [] AS held';
  const types = via.map(linkType).join('|');
  return `CALL (${layer}) { UNWIND ${layer} AS o MATCH (o)<-[:${types}]-(h) RETURN collect(DISTINCT h) AS held }`;
}
