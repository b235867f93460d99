import { counted } from './reach-statements.ts';

/** Those that mostly fewer records pass come first. */
export const searchConditions = ['subject', 'place', 'days'] as const;

export type Condition = (typeof searchConditions)[number];

/**
 * Whether the record n passes. Values: days `firstDay` and `lastDay`, and `dates`, those dates that meet them; place `places`, the ids of the place and of all within it,
 * and `workshops`, those of the workshops that stayed at one of them; subject `subject`. A record that a link is not for has
 * none.
 */
export const passes: Readonly<Record<Condition, string>> = {
  days: 'EXISTS { MATCH (n)<-[:DATING_OF]-(d) WHERE (d._firstDay <= $lastDay AND d._lastDay >= $firstDay) OR d._date IN $dates }',
  place: `(n.id IN $places OR ${says('n', 'IMPRINT_EDITION', 'IMPRINT_PLACE', '$places')} OR ${says('n', 'STAY_WHO', 'STAY_WHERE', '$places')} OR ${madeThere('n')} OR EXISTS { MATCH (n)-[:MOTIF_PIECE]->(m) WHERE ${madeThere('m')} })`,
  subject: `(${depicted('n')} OR EXISTS { MATCH (n)-[:EDITION_WORK]->(w) WHERE ${depicted('w')} } OR EXISTS { MATCH (n)<-[:APPEARANCE_EDITION]-(a)-[:APPEARANCE_PLATE]->(p) WHERE a.presence = 'PRESENT' AND ${counted('a')} AND ${depicted('p')} } OR EXISTS { MATCH (n)<-[:MOTIF_PIECE]-(m) WHERE ${depicted('m')} })`,
};

const madeAt = holders('$places', 'MADE_AT_PLACE', 'MADE_AT_RECORD');
const fromWorkshops = holders('$workshops', 'ATTRIBUTION_AGENT', 'ATTRIBUTION_RECORD');
const pictures = `MATCH (d:Depiction) WHERE d.iconclass STARTS WITH $subject AND ${counted('d')} MATCH (d)-[:DEPICTION_PICTURE]->(p)`;

/** Every record n that passes comes by one of these at least, some more than once. Days: `starts`, by spread, beside those above. */
export const ways: Readonly<Record<Condition, readonly string[]>> = {
  days: [
    `UNWIND range(0, size($starts) - 1) AS spread MATCH (d:Dating) WHERE d._spread = spread AND d._firstDay >= $starts[spread] AND d._firstDay <= $lastDay AND d._lastDay >= $firstDay MATCH (d)-[:DATING_OF]->(n) RETURN n`,
    'MATCH (d:Dating) WHERE d._date IN $dates MATCH (d)-[:DATING_OF]->(n) RETURN n',
  ],
  place: [
    'UNWIND $places AS id MATCH (n:Row {id: id}) RETURN n',
    `${holders('$places', 'IMPRINT_PLACE', 'IMPRINT_EDITION')} RETURN n`,
    `${holders('$places', 'STAY_WHERE', 'STAY_WHO')} RETURN n`,
    `${madeAt} RETURN n`,
    `${fromWorkshops} RETURN n`,
    `${madeAt} MATCH (n)<-[:MOTIF_PIECE]-(m) RETURN m AS n`,
    `${fromWorkshops} MATCH (n)<-[:MOTIF_PIECE]-(m) RETURN m AS n`,
  ],
  subject: [
    `${pictures} RETURN p AS n`,
    `${pictures} MATCH (p)<-[:EDITION_WORK]-(n) RETURN n`,
    `${pictures} MATCH (p)<-[:APPEARANCE_PLATE]-(a)-[:APPEARANCE_EDITION]->(n) WHERE a.presence = 'PRESENT' AND ${counted('a')} RETURN n`,
    `${pictures} MATCH (p)-[:MOTIF_PIECE]->(n) RETURN n`,
  ],
};

/** What claims that count hold by one link, where they hold one of a list by another. */
function holders(list: string, held: string, holds: string): string {
  return `UNWIND ${list} AS id MATCH (:Row {id: id})<-[:${held}]-(c)-[:${holds}]->(n) WHERE ${counted('c')}`;
}

/** A claim that counts holds the record by one link, and one of a list by another. */
function says(record: string, holds: string, held: string, list: string): string {
  return `EXISTS { MATCH (${record})<-[:${holds}]-(c)-[:${held}]->(x) WHERE x.id IN ${list} AND ${counted('c')} }`;
}

function madeThere(record: string): string {
  return `${says(record, 'MADE_AT_RECORD', 'MADE_AT_PLACE', '$places')} OR ${says(record, 'ATTRIBUTION_RECORD', 'ATTRIBUTION_AGENT', '$workshops')}`;
}

function depicted(record: string): string {
  return `EXISTS { MATCH (${record})<-[:DEPICTION_PICTURE]-(d) WHERE d.iconclass STARTS WITH $subject AND ${counted('d')} }`;
}
