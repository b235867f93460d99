import { counted, textsOf } from './reach-statements.ts';
import { type Condition, passes, ways } from './search-conditions.ts';

const row = 'n.id, n.kind, n._sort';

/** Statements of searches, those with conditions by which these are. */
export const searchCypher = {
  /** Ids of a place and of all places within it. */
  placesWithin: `
MATCH (:Row {id: $place})<-[:PLACE_WITHIN*0..]-(p:Place)
RETURN DISTINCT p.id`,

  /** Ids of workshops that stayed at one of some places. */
  workshopsAt: `
UNWIND $places AS id
MATCH (:Row {id: id})<-[:STAY_WHERE]-(c)-[:STAY_WHO]->(w:Workshop) WHERE ${counted('c')}
RETURN DISTINCT w.id`,

  /** Dates that came after a number. */
  datesAfter: `RETURN ${textsOf('date')}`,

  /** How many records of some kinds pass a condition, counted up to a number. */
  passing: (condition: Condition): string => `
${gathered(condition)}
WITH n LIMIT $most
RETURN count(n)`,

  /** Records of some kinds by (sort, id), from after a position to before an end, so many of each kind. */
  inOrder: (conditions: readonly Condition[]): string => `
UNWIND $kinds AS kind
CALL (kind) {
  MATCH (n:Record) USING INDEX n:Record(kind, _sort, id)
  WHERE n.kind = kind AND n._sort >= $sort AND n._sort < $end AND n.id > ''
  WITH n ORDER BY n.kind, n._sort, n.id
  WHERE (n._sort > $sort OR n.id > $id)${and(conditions)}
  RETURN n LIMIT $room
}
RETURN ${row} ORDER BY n._sort, n.id LIMIT $room`,

  /** The same, where few pass a condition: they are gathered, and looked at for the others. */
  inOrderOfGathered: (gather: Condition, conditions: readonly Condition[]): string => `
${gathered(gather)} AND n._sort >= $sort AND n._sort < $end AND (n._sort > $sort OR n.id > $id)${and(conditions)}
RETURN ${row} ORDER BY n._sort, n.id LIMIT $room`,

  /** Records that a query of words finds, in the order in which they came, but for those named so. */
  byWords: (conditions: readonly Condition[]): string => `
CALL db.index.fulltext.queryNodes('record_words', $query) YIELD node AS n
WHERE NOT n._sort STARTS WITH $whole${and(conditions)}
RETURN ${row} ORDER BY n._number LIMIT $room`,

  /** How many a query of words finds, counted up to a number; where they are fewer, the same; the greatest number of a row. */
  byFewWords: (conditions: readonly Condition[]): string => `
MATCH (s:Store {application: 'platestemma'})
CALL () {
  CALL db.index.fulltext.queryNodes('record_words', $query, {limit: $most}) YIELD node
  RETURN count(*) AS found
}
RETURN found, COLLECT {
  WITH found WHERE found < $most
  CALL db.index.fulltext.queryNodes('record_words', $query) YIELD node AS n
  WHERE NOT n._sort STARTS WITH $whole${and(conditions)}
  RETURN [${row}] ORDER BY n._number LIMIT $room
}, s.number`,

  /** The same, where few pass a condition: they are gathered, and their words looked at. */
  byWordsOfGathered: (gather: Condition, conditions: readonly Condition[]): string => `
${gathered(gather)} AND NOT n._sort STARTS WITH $whole
  AND all(word IN $all WHERE n._words CONTAINS word)
  AND any(word IN $some WHERE n._words CONTAINS word)
  AND NOT all(word IN $not WHERE n._words CONTAINS word)${and(conditions)}
RETURN ${row} ORDER BY n._number LIMIT $room`,

  /** How many records each of some queries finds, counted up to a number. */
  countUpTo: `
UNWIND $queries AS query
CALL db.index.fulltext.queryNodes('record_words', query, {limit: $most}) YIELD node
RETURN query, count(*)`,
} as const;

/** Records n of some kinds that pass a condition, each once. */
function gathered(condition: Condition): string {
  return `CALL () {
  ${ways[condition].join('\n  UNION\n  ')}
}
WITH DISTINCT n WHERE n.kind IN $kinds`;
}

function and(conditions: readonly Condition[]): string {
  return conditions.map(condition => ` AND ${passes[condition]}`).join('');
}
