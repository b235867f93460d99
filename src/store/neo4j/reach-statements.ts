/** Still said, held and at least possible. */
export const counted = (claim: string): string =>
  `coalesce(${claim}.standing, 'STANDING') = 'STANDING' AND coalesce(${claim}.stance, 'HELD') = 'HELD' AND coalesce(${claim}.certainty, 'CERTAIN') <> 'DOUBTFUL'`;

/** Conditions that name what has few editions: their editions e are found by the links, not by looking at all. */
const sets = {
  work: `
  MATCH (:Row {id: $work})<-[:EDITION_WORK]-(e) RETURN e`,
  place: `
  MATCH (:Row {id: $place})<-[:IMPRINT_PLACE]-(c)-[:IMPRINT_EDITION]->(e) WHERE ${counted('c')} RETURN e`,
  subject: `
  MATCH (d:Depiction) WHERE d.iconclass STARTS WITH $subject AND ${counted('d')}
  MATCH (d)-[:DEPICTION_PICTURE]->(p)
  CALL (p) {
    RETURN p AS e
    UNION
    MATCH (p)<-[:EDITION_WORK]-(e) RETURN e
    UNION
    MATCH (p)<-[:APPEARANCE_PLATE]-(a)-[:APPEARANCE_EDITION]->(e) WHERE a.presence = 'PRESENT' AND ${counted('a')} RETURN e
  }
  RETURN e`,
} as const;

export type SetCondition = keyof typeof sets;

/** In the order in which their editions are found: mostly the fewest first. */
export const setConditions = Object.keys(sets) as readonly SetCondition[];

/** Window and traits of e, if it passes. */
const passes = (traits: boolean): string => `e._window IS NOT NULL${traits ? ' AND e._traits IN $traits' : ''}`;

/** Editions e that are in all of some sets. */
function inSets(chosen: readonly SetCondition[], traits: boolean): string {
  const found = chosen.map((name, i) => {
    if (i === 0) return `CALL () {${sets[name]}\n}\nWITH DISTINCT e`;
    return `WITH collect(e) AS before\nCALL () {${sets[name]}\n}\nWITH before, collect(DISTINCT e) AS those\nUNWIND [e IN before WHERE e IN those] AS e\nWITH e`;
  });
  return `${found.join('\n')} WHERE ${passes(traits)}`;
}

/** Lists of texts: those that windows name by number, and dates that datings are found by. */
export const textLists = ['profile', 'detail', 'traits', 'date'] as const;
export type TextList = (typeof textLists)[number];

export const textsOf = (list: TextList): string =>
  `COLLECT { MATCH (t:WindowText) WHERE t.list = '${list}' AND t.number > $${list} RETURN [t.number, t.text] }`;

const textsAfter = (['profile', 'detail', 'traits'] as const).map(textsOf).join(', ');

/** Statements of questions about reach, by filter. */
export const reachCypher = {
  /** Texts that came after some numbers. */
  textsAfter: `
MATCH (s:Store {application: 'platestemma'})
RETURN s.changeSet, ${textsAfter}`,

  traitsAfter: `RETURN ${textsOf('traits')}`,

  /** All texts, with what is counted beforehand and not known yet. */
  tallies: `
MATCH (s:Store {application: 'platestemma'})
RETURN s.changeSet, ${textsAfter}, s.tallies,
  COLLECT { MATCH (t:WindowTally) WHERE t.number IN s.tallies AND NOT t.number IN $known RETURN [t.number, t.numbers] }`,

  textsOfNumbers: `
UNWIND $numbers AS number
MATCH (t:WindowText {list: $list, number: number})
RETURN number, t.text`,

  numbersOfDigests: `
UNWIND $digests AS digest
MATCH (t:WindowText {digest: digest})
RETURN digest, t.number`,

  windowsOf: `
UNWIND range(0, size($ids) - 1) AS i
MATCH (e:Row {id: $ids[i]}) WHERE e._window IS NOT NULL
RETURN i, e._window, e._traits`,

  groups: (chosen: readonly SetCondition[], traits: boolean): string => `
${inSets(chosen, traits)}
RETURN e._window, count(*)`,

  /** Every edition that passes with its window, in no order. */
  windows: (chosen: readonly SetCondition[], traits: boolean): string => `
${inSets(chosen, traits)}
RETURN e.id, e._window`,

  /** Editions with some windows: the place of the window in the list, and the first ids with it after $after[i]. */
  inWindows: (traits: boolean): string => `
UNWIND range(0, size($windows) - 1) AS i
CALL (i) {
  MATCH (e:Edition) WHERE e._window = $windows[i] AND e.id > $after[i]${traits ? ' AND e._traits IN $traits' : ''}
  RETURN e.id AS id ORDER BY e._window, e.id LIMIT $limit
}
RETURN i, id`,

  byTitle: (traits: boolean): string => `
CALL () {
  MATCH (e:Record) USING INDEX e:Record(kind, _sort, id)
  WHERE e.kind = 'Edition' AND e._sort = $sort AND e.id > $id AND ${passes(traits)}
  RETURN e ORDER BY e.kind, e._sort, e.id LIMIT $limit
  UNION ALL
  MATCH (e:Record) USING INDEX e:Record(kind, _sort, id)
  WHERE e.kind = 'Edition' AND e._sort > $sort AND e.id > '' AND ${passes(traits)}
  RETURN e ORDER BY e.kind, e._sort, e.id LIMIT $limit
}
RETURN e._sort, e.id, e._window, e._traits ORDER BY e._sort, e.id LIMIT $limit`,

  byTitleInSets: (chosen: readonly SetCondition[], traits: boolean): string => `
${inSets(chosen, traits)} AND (e._sort > $sort OR (e._sort = $sort AND e.id > $id))
RETURN e._sort, e.id, e._window, e._traits ORDER BY e._sort, e.id LIMIT $limit`,
} as const;
