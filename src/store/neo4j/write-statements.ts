import type { WalkStep } from '../../domain/descent/walk-steps.ts';
import type { KindName } from '../../domain/model/kinds.ts';
import type { LinkKind } from '../../domain/model/links.ts';
import { everyLinkType, labelsOf, linkType, pastLinkType, stepType } from './names.ts';
import { propertyNames } from './row-codec.ts';

/** The version of n that was valid until now stays as p, without what is derived. */
const keepPast = `CREATE (n)-[:PAST]->(p:Past)
SET p = properties(n)
SET p._until = $changeSet, p._words = null, p._window = null, p._traits = null, p._spread = null, p._firstDay = null, p._lastDay = null, p._date = null`;

/** Statements of a change, in the order in which they are made. */
export const writeCypher = {
  /** Others who write wait from here on until this change is made. */
  lock: `
MATCH (s:Store {application: 'platestemma'})
SET s.token = $token`,

  /** How far the store has come, and its last moment; the number that a change set with this token has, or the change made nothing but was made. */
  state: `
MATCH (s:Store {application: 'platestemma'})
OPTIONAL MATCH (c:ChangeSet {token: $token})
OPTIONAL MATCH (l:ChangeSet {number: s.changeSet})
RETURN s.changeSet, l.moment, s.number, s.texts, s.tally, s.tallies, s.tallyRows, c.number, $token IN s.tokens`,

  /** Which of some ids are there. */
  present: `
UNWIND $ids AS id
MATCH (n:Row {id: id})
RETURN id`,

  /** Which of some ids are there, or were. */
  everThere: `
UNWIND $ids AS id
MATCH (n:Row|Gone {id: id})
RETURN id`,

  /** Rows that get a new version. */
  before: `
UNWIND $ids AS id
MATCH (n:Row {id: id})
RETURN properties(n)`,

  /** Which of some ids were taken out, with their numbers. */
  gone: `
UNWIND $ids AS id
MATCH (n:Gone {id: id})
RETURN n.id, n._number`,

  /** What links to some rows that are taken out, the first found. */
  namedBy: `
UNWIND $ids AS id
MATCH (:Gone {id: id})<-[:${everyLinkType}]-(by)
RETURN id, by.id LIMIT 1`,

  createChangeSet: 'CREATE (c:ChangeSet) SET c = $changeSet',

  /** The version that was valid now is kept as a node of its own. */
  putVersions: `
UNWIND $rows AS row
MATCH (n:Row {id: row.id})
${keepPast}
SET n += row.values`,

  putOrigins: `
UNWIND $origins AS origin
MERGE (o:Origin {key: origin[0], source: origin[1]})
SET o.digest = origin[3]
WITH o, origin
MATCH (n:Row|Gone {id: origin[2]})
OPTIONAL MATCH (o)-[old:ORIGIN_OF]->()
DELETE old
CREATE (o)-[:ORIGIN_OF]->(n)`,

  deleteAwaited: `
UNWIND $origins AS origin
MATCH (a:Awaited {key: origin[0], source: origin[1]})
DELETE a`,

  createAwaited: `
UNWIND $links AS link
CREATE (:Awaited {key: link[0], source: link[1], claim: link[2], role: link[3], number: link[4]})`,

  putCheckpoint: `
MERGE (c:Checkpoint {intake: $intake})
SET c.records = $records, c.report = $report`,

  putState: `
MATCH (s:Store {application: 'platestemma'})
SET s += $state`,

  /** The last tokens of changes that made no change set. */
  keepToken: `
MATCH (s:Store {application: 'platestemma'})
SET s.tokens = (s.tokens + $token)[-$kept..]`,

  windowsBefore: `
UNWIND $ids AS id
MATCH (e:Row {id: id}) WHERE e._window IS NOT NULL
RETURN id, e._window, e._traits`,

  putWindows: `
UNWIND $windows AS window
MATCH (e:Row {id: window[0]})
SET e._window = window[1], e._traits = window[2]`,

  createTexts: `
UNWIND $texts AS text
CREATE (:WindowText {list: text[0], number: text[1], text: text[2], digest: text[3]})`,

  allWindows: `
MATCH (e:Edition) WHERE e._window IS NOT NULL
RETURN e._window, e._traits, count(*)`,

  createTally: 'CREATE (:WindowTally {number: $number, numbers: $numbers})',

  talliesOfNumbers: `
UNWIND $numbers AS number
MATCH (t:WindowTally {number: number})
RETURN t.numbers`,

  deleteTallies: `
UNWIND $numbers AS number
MATCH (t:WindowTally {number: number})
DELETE t`,
} as const;

/** New rows of a kind, each a list of its id, number and properties, with some of their links, whose ends are there. */
export function createRowsText(kind: KindName, links: readonly LinkKind[]): string {
  const names = ['id', '_number', ...propertyNames(kind)];
  const properties = names.map((name, i) => `\`${name}\`: row[${i}]`).join(', ');
  return [
    '',
    'UNWIND $rows AS row',
    ...links.map(({ name }, i) => `MATCH (to${i}:Row {id: row[${names.indexOf(name)}]})`),
    `CREATE (n:${labelsOf(kind)} {kind: $kind, _since: $changeSet, ${properties}})`,
    ...links.map((link, i) => `CREATE (n)-[:${linkType(link)} {since: $changeSet}]->(to${i})`),
  ].join('\n');
}

/** Versions are kept; of the row itself stays what they are found by. */
export function takeOutText(kind: KindName): string {
  return `
UNWIND $ids AS id
MATCH (n:Row {id: id})
${keepPast}
REMOVE n:${labelsOf(kind)}
SET n:Gone
SET n = {id: id, _number: p._number}`;
}

/** Rows that were taken out are there again. */
export function bringBackText(kind: KindName): string {
  return `
UNWIND $rows AS row
MATCH (n:Gone {id: row.id})
REMOVE n:Gone
SET n:${labelsOf(kind)}
SET n += row`;
}

export function createLinksText(link: LinkKind): string {
  return `
UNWIND $links AS link
MATCH (n:Row {id: link[0]})
MATCH (to:Row {id: link[1]})
CREATE (n)-[:${linkType(link)} {since: $changeSet}]->(to)`;
}

/** What a row linked to before stays as a relationship of another type. */
export function closeLinksText(link: LinkKind): string {
  return `
UNWIND $ids AS id
MATCH (n:Row {id: id})-[l:${linkType(link)}]->(to)
CREATE (n)-[:${pastLinkType(link)} {since: l.since, until: $changeSet}]->(to)
DELETE l`;
}

/** Steps of claims from copy to source, or of details each way. */
export function createStepsText(step: WalkStep): string {
  const create =
    step === 'Detail'
      ? `CREATE (from)-[:${stepType(step)} {part: step[2]}]->(to) CREATE (to)-[:${stepType(step)} {part: step[2]}]->(from)`
      : `CREATE (from)-[:${stepType(step)} {claim: step[2]}]->(to)`;
  return `
UNWIND $steps AS step
MATCH (from:Row {id: step[0]})
MATCH (to:Row {id: step[1]})
${create}`;
}

export function deleteStepsText(step: WalkStep): string {
  const [link, by] = step === 'Detail' ? ['-', 'part'] : ['->', 'claim'];
  return `
UNWIND $steps AS step
MATCH (:Row {id: step[0]})-[s:${stepType(step)} {${by}: step[2]}]${link}()
DELETE s`;
}
