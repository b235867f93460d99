/**
 * What our answers say, asked of the same database by the driver alone: one statement an answer, in the best shape known.
 * Days, verdicts, handedness and names are not worked out: the rows from which they are come as they are.
 */
const steps = 'STEP_COPYING|STEP_PRINTED_FROM|STEP_CASTING|STEP_DETAIL';

const datings = (of: string): string =>
  `COLLECT { MATCH (${of})<-[:DATING_OF]-(t) RETURN [t.id, t.event, t.date, t.basis] }`;

const copyings = (of: string): string =>
  `COLLECT { MATCH (${of})-[s:STEP_COPYING]->(f) MATCH (c:Row {id: s.claim}) RETURN [c.id, c.handedness, c.certainty, f.id] }`;

/** Depth is part of the text: how long a path may be is no value. */
export const bareCypher = {
  lineage: (depth: number): string => `
MATCH (p:Row {id: $id})
CALL (p) {
  MATCH (p)-[r:${steps}*0..${depth}]->(q) RETURN q, min(size(r)) AS d
  UNION ALL
  MATCH (p)<-[r:${steps}*0..${depth}]-(q) RETURN q, min(size(r)) AS d
}
WITH q, min(d) AS depth ORDER BY depth, q.id
RETURN q.id, q.kind, q.caption, q.labels, depth, ${copyings('q')}, ${datings('q')},
  COLLECT { MATCH (q)<-[:APPEARANCE_PLATE]-(a)-[:APPEARANCE_EDITION]->(e) RETURN [a.id, a.presence, a.number, e.id, e.title, ${datings('e')}] },
  COLLECT { MATCH (q)-[:MOTIF_PIECE]->(m) RETURN [m.id, ${datings('m')}] }`,

  /** Pictures and copyings alone. */
  pictures: (depth: number): string => `
MATCH (p:Row {id: $id})
CALL (p) {
  MATCH (p)-[r:${steps}*0..${depth}]->(q) RETURN q, min(size(r)) AS d
  UNION ALL
  MATCH (p)<-[r:${steps}*0..${depth}]-(q) RETURN q, min(size(r)) AS d
}
WITH q, min(d) AS depth ORDER BY depth, q.id
RETURN q.id, q.kind, q.caption, q.labels, depth, ${copyings('q')}`,

  lattice: (layers: number): string => `
MATCH (p:Row {id: $id})
MATCH (p)-[r:${steps}*0..${layers}]->(q)
WITH q, min(size(r)) AS depth ORDER BY depth, q.id
RETURN q.id, q.caption, depth, ${copyings('q')}`,

  recordPage: `
MATCH (e:Row {id: $id})
RETURN e.id, e.title, e.imprint, e.languages,
  COLLECT { MATCH (e)-[:EDITION_WORK]->(w) RETURN [w.id, w.labels, w.form] },
  COLLECT { MATCH (e)<-[:IMPRINT_EDITION]-(i) RETURN [i.id, i.role, COLLECT { MATCH (i)-[:IMPRINT_PLACE]->(p) RETURN [p.id, p.labels] }] },
  ${datings('e')},
  COLLECT {
    MATCH (e)<-[:APPEARANCE_EDITION]-(a)-[:APPEARANCE_PLATE]->(p)
    WITH a, p ORDER BY a.id LIMIT 20
    RETURN [a.id, a.presence, a.number, p.id, p.caption,
      COLLECT { MATCH (p)<-[:COPYING_COPY]-(c)-[:COPYING_SOURCE]->(f) RETURN [c.id, c.handedness, c.certainty, f.id, f.caption, f.labels] },
      COLLECT { MATCH (p)<-[:COPYING_SOURCE]-(c)-[:COPYING_COPY]->(f) RETURN [c.id, c.handedness, c.certainty, f.id] }]
  }`,

  /**
   * The first of the editions with some windows, best window first, with what their verdicts rest on. Which windows are best is
   * given: it is worked out from tallies that are read once, and hold while the number of the last change set does.
   */
  reach: `
MATCH (s:Store {application: 'platestemma'})
CALL () {
  UNWIND range(0, size($windows) - 1) AS i
  CALL (i) {
    MATCH (e:Edition) WHERE e._window = $windows[i] AND e.id > $after[i]
    RETURN e ORDER BY e._window, e.id LIMIT $limit
  }
  RETURN i, e ORDER BY i, e.id LIMIT $limit
}
RETURN s.changeSet, e.id, e.title, ${datings('e')},
  COLLECT { MATCH (e)-[:EDITION_WORK]->(w) RETURN [w.id, w.form] },
  COLLECT { MATCH (e)<-[:IMPRINT_EDITION]-(m) RETURN [m.id, m.role, COLLECT { MATCH (m)-[:IMPRINT_PLACE]->(p) RETURN [p.id, p.labels, p.latitude, p.longitude, p.country] }] }`,

  /** What is named so, and then what the words find, those that came first. */
  search: `
CALL () {
  UNWIND $kinds AS kind
  CALL (kind) {
    MATCH (n:Record) WHERE n.kind = kind AND n._sort >= $whole AND n._sort < $end AND n.id > ''
    RETURN n ORDER BY n.kind, n._sort, n.id LIMIT $room
  }
  RETURN n, 0 AS class
  UNION ALL
  CALL db.index.fulltext.queryNodes('record_words', $query) YIELD node AS n
  WITH n WHERE NOT n._sort STARTS WITH $whole
  WITH n ORDER BY n._number LIMIT $cap
  RETURN n, 1 AS class
}
RETURN n.id, n.kind, n._sort, n.title, n.caption, n.labels ORDER BY class, n._sort, n.id LIMIT $room`,
} as const;
