import type { Via } from '../graph-store.ts';
import { linkType, pastLinkType } from './names.ts';

/** Stands for "now" in a view: no change set has so high a number. */
export const now = Number.MAX_SAFE_INTEGER;

/**
 * Statements that read what is asked for by id, key or number, and those about the store as a whole. Values are always
 * parameters. What answers a list for a list is one list of places in it with what is found for each: as records of their
 * own they would cost more than what is in them.
 */
export const cypher = {
  schema: `
OPTIONAL MATCH (s:Store {application: 'platestemma'})
RETURN s.schema, NOT EXISTS { MATCH () }`,

  awaitIndexes: 'CALL db.awaitIndexes(300)',

  putSchema: `
MERGE (s:Store {application: 'platestemma'})
ON CREATE SET s += $state
SET s.schema = $schema, s.foldVersion = $foldVersion`,

  facts: `
MATCH (s:Store {application: 'platestemma'})
RETURN s.schema, s.foldVersion, COUNT { MATCH (:Record) }, COUNT { MATCH (:Claim) }`,

  rows: `
UNWIND range(0, size($ids) - 1) AS i
MATCH (n:Row {id: $ids[i]})
RETURN collect([i, properties(n)])`,

  rowsAsOf: `
UNWIND range(0, size($ids) - 1) AS i
MATCH (n:Row|Gone {id: $ids[i]})
${versionAsOf('n')}
RETURN collect([i, properties(v)])`,

  versions: `
MATCH (n:Row|Gone {id: $id})
CALL (n) { WITH n WHERE n:Row RETURN n AS v UNION ALL MATCH (n)-[:PAST]->(v) RETURN v }
RETURN properties(v) ORDER BY v._since`,

  inGroups: `
UNWIND range(0, size($ids) - 1) AS i
MATCH (n:Claim {alternativeTo: $ids[i]})
RETURN collect([i, properties(n)])`,

  scan: `
MATCH (n:Row) WHERE n.id > $after
RETURN properties(n) ORDER BY n.id LIMIT $limit`,

  scanAsOf: `
MATCH (n:Row|Gone) WHERE n.id > $after
${versionAsOf('n')}
RETURN properties(v) ORDER BY n.id LIMIT $limit`,

  list: `
CALL () {
  MATCH (n:Record) USING INDEX n:Record(kind, _sort, id)
  WHERE n.kind = $kind AND n._sort = $sort AND n.id > $id
  RETURN n._sort AS sort, n.id AS id ORDER BY n.kind, n._sort, n.id LIMIT $limit
  UNION ALL
  MATCH (n:Record) USING INDEX n:Record(kind, _sort, id)
  WHERE n.kind = $kind AND n._sort > $sort AND n.id > ''
  RETURN n._sort AS sort, n.id AS id ORDER BY n.kind, n._sort, n.id LIMIT $limit
}
RETURN sort, id ORDER BY sort, id LIMIT $limit`,

  sortKeysOf: `
UNWIND range(0, size($ids) - 1) AS i
MATCH (n:Row {id: $ids[i]})
RETURN collect([i, n._sort])`,

  datedDaysOf: `
UNWIND range(0, size($ids) - 1) AS i
MATCH (n:Row {id: $ids[i]}) WHERE n._firstDay IS NOT NULL OR n._date IS NOT NULL
RETURN collect([i, [n._firstDay, n._lastDay, n._date]])`,

  byOrigin: `
UNWIND range(0, size($keys) - 1) AS i
MATCH (o:Origin {key: $keys[i], source: $sources[i]})-[:ORIGIN_OF]->(n:Row)
RETURN collect([i, [n.id, o.digest]])`,

  byOriginKey: `
UNWIND range(0, size($keys) - 1) AS i
MATCH (o:Origin) USING INDEX o:Origin(key, source)
WHERE o.key = $keys[i] AND o.source >= ''
MATCH (o)-[:ORIGIN_OF]->(n:Row)
WITH i, o, n ORDER BY i, o.source
RETURN collect([i, [o.source, o.key, n.id, o.digest]])`,

  originsOf: `
UNWIND range(0, size($ids) - 1) AS i
MATCH (:Row {id: $ids[i]})<-[:ORIGIN_OF]-(o)
WITH i, o ORDER BY i, o.source, o.key
RETURN collect([i, [o.source, o.key]])`,

  originsAfter: `
MATCH (o:Origin) USING INDEX o:Origin(key, source)
WHERE o.key >= $key AND o.source >= '' AND ($isFirst OR o.key > $key OR o.source > $source)
WITH o ORDER BY o.key, o.source LIMIT $limit
MATCH (o)-[:ORIGIN_OF]->(n)
RETURN o.key, o.source, n.id, o.digest ORDER BY o.key, o.source`,

  awaited: `
UNWIND range(0, size($keys) - 1) AS i
MATCH (a:Awaited {key: $keys[i], source: $sources[i]})
WITH i, a ORDER BY i, a.number
RETURN collect([i, [a.claim, a.role]])`,

  awaitedAfter: `
MATCH (a:Awaited) USING INDEX a:Awaited(key, source)
WHERE a.key >= $key AND a.source >= '' AND ($isFirst OR a.key > $key OR a.source > $source)
WITH DISTINCT a.key AS key, a.source AS source ORDER BY key, source LIMIT $limit
MATCH (a:Awaited {key: key, source: source})
RETURN key, source, a.claim, a.role ORDER BY key, source, a.number`,

  checkpoint: `
MATCH (c:Checkpoint {intake: $intake})
RETURN c.records, c.report`,

  checkpointsAfter: `
MATCH (c:Checkpoint) WHERE c.intake >= $after AND ($isFirst OR c.intake > $after)
RETURN c.intake, c.records, c.report ORDER BY c.intake LIMIT $limit`,

  changeSets: `
UNWIND range(0, size($numbers) - 1) AS i
MATCH (c:ChangeSet {number: $numbers[i]})
RETURN collect([i, [c.number, c.moment, c.who, c.why, c.batch]])`,

  lastChangeSet: `
MATCH (s:Store {application: 'platestemma'})
RETURN s.changeSet`,

  /** Change sets after a number, with how many versions each has put. */
  changesAfter: `
MATCH (c:ChangeSet) WHERE c.number > $number
RETURN c.number, c.moment, c.who, c.why, c.batch, size(c.written), coalesce(c.removed, []) ORDER BY c.number LIMIT $limit`,

  /** Versions that some change sets put, in the order in which their rows came. */
  versionsOfChanges: `
UNWIND $numbers AS number
MATCH (c:ChangeSet {number: number})
UNWIND c.written AS id
MATCH (n:Row|Gone {id: id})
CALL (n, number) {
  WITH n WHERE n:Row AND n._since = number RETURN n AS v
  UNION ALL
  MATCH (n)-[:PAST]->(v) WHERE v._since = number RETURN v
}
RETURN properties(v) ORDER BY v._since, v._number`,
} as const;

/** The version of a row that is valid as of the change set $asOf, as v. */
export function versionAsOf(row: string): string {
  return `CALL (${row}) {
  WITH ${row} WHERE ${row}:Row AND ${row}._since <= $asOf RETURN ${row} AS v
  UNION ALL
  MATCH (${row})-[:PAST]->(v) WHERE v._since <= $asOf AND v._until > $asOf RETURN v
}`;
}

/** Whether a link holds as of the change set $asOf. */
export function linkAsOf(link: string): string {
  return `${link}.since <= $asOf AND coalesce(${link}.until > $asOf, true)`;
}

/** What holds some records in links now: the place of the record in the list, and what holds it. */
export function linkedText(via: readonly Via[]): string {
  return `
UNWIND range(0, size($ids) - 1) AS i
MATCH (:Row {id: $ids[i]})<-[:${via.map(linkType).join('|')}]-(n)
WITH DISTINCT i, n
RETURN collect([i, properties(n)])`;
}

/** The same as of a change set. */
export function linkedAsOfText(via: readonly Via[]): string {
  return `
UNWIND range(0, size($ids) - 1) AS i
MATCH (:Row|Gone {id: $ids[i]})<-[l:${via.flatMap(link => [linkType(link), pastLinkType(link)]).join('|')}]-(n) WHERE ${linkAsOf('l')}
WITH DISTINCT i, n
${versionAsOf('n')}
RETURN collect([i, properties(v)])`;
}
