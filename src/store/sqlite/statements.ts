import type { KindName } from '../../domain/model/kinds.ts';
import { linkKind } from '../../domain/model/links.ts';
import { rowFields } from '../row-fields.ts';
import { tableOf } from './schema-text.ts';

/** Stands for "now" in a view: no change set has so high a number. */
export const now = Number.MAX_SAFE_INTEGER;

const editionOfImprint = linkKind('Imprint', 'edition')!.code;
const pictureOfDepiction = linkKind('Depiction', 'picture')!.code;
const editionOfAppearance = linkKind('Appearance', 'edition')!.code;

const counted = (claim: string): string =>
  `${claim}._until IS NULL AND ifnull(${claim}.standing, 'STANDING') = 'STANDING' AND ifnull(${claim}.stance, 'HELD') = 'HELD' AND ifnull(${claim}.certainty, 'CERTAIN') <> 'DOUBTFUL'`;

/** Asked every 1,024th row, before any filter can skip it: ends a statement that is past its limit. */
const goOn = (key: string): string => `((${key} & 1023) <> 0 OR go_on())`;

/** Every statement of this engine but those made a kind at a time (below). Values are always bound. */
export const sql = {
  keyOfId: 'SELECT key FROM node WHERE id = ?',
  nodeOfId: 'SELECT key, kind FROM node WHERE id = ?',
  nodeOfKey: 'SELECT id, kind, sort FROM node WHERE key = ?',
  insertNode: 'INSERT INTO node (key, id, kind, sort) VALUES (?, ?, ?, ?)',
  updateSort: 'UPDATE node SET sort = ? WHERE key = ? AND sort IS NOT ?',
  lastKey: 'SELECT ifnull(max(key), 0) AS key FROM node',
  nodesAfter: `SELECT key, id, kind FROM node WHERE id > ? AND ${goOn('key')} ORDER BY id LIMIT ?`,
  countOfKind: `SELECT count(*) AS n FROM node WHERE kind = ? AND sort IS NOT NULL AND ${goOn('key')}`,
  countRecords: `SELECT count(*) AS n FROM node WHERE sort IS NOT NULL AND ${goOn('key')}`,
  countNodes: `SELECT count(*) AS n FROM node WHERE ${goOn('key')}`,
  listKind:
    'SELECT sort, id FROM node WHERE kind = ? AND sort IS NOT NULL AND (sort, id) > (?, ?) ORDER BY sort, id LIMIT ?',
  wholeName:
    'SELECT id, kind, sort FROM node WHERE kind = ? AND sort = ? AND sort IS NOT NULL ORDER BY sort, id LIMIT ?',
  nameBeginning: 'SELECT id, kind, sort FROM node WHERE kind = ? AND sort > ? AND sort < ? ORDER BY sort, id LIMIT ?',
  byWords: `SELECT n.id AS id, n.kind AS kind, n.sort AS sort FROM search CROSS JOIN node AS n ON n.key = search.rowid WHERE search MATCH ? AND ${goOn('search.rowid')} LIMIT ?`,
  byWordsOfKinds: `SELECT n.id AS id, n.kind AS kind, n.sort AS sort FROM search CROSS JOIN node AS n ON n.key = search.rowid WHERE search MATCH ? AND ${goOn('search.rowid')} AND n.kind IN (SELECT value FROM json_each(?)) LIMIT ?`,
  linkedNodes: 'SELECT node FROM link WHERE target = ? AND code = ? AND since <= ? AND (until IS NULL OR until > ?)',
  insertLink: 'INSERT INTO link (target, code, node, since) VALUES (?, ?, ?, ?)',
  closeLink: 'UPDATE link SET until = ? WHERE target = ? AND code = ? AND node = ? AND until IS NULL',
  insertWords: 'INSERT INTO search (rowid, tokens) VALUES (?, ?)',
  deleteWords: 'DELETE FROM search WHERE rowid = ?',
  originOf:
    'SELECT n.id AS id, o.digest AS digest FROM origin AS o JOIN node AS n ON n.key = o.node WHERE o.key = ? AND o.source = ?',
  originsOfKey:
    'SELECT o.source AS source, o.key AS key, n.id AS id, o.digest AS digest FROM origin AS o JOIN node AS n ON n.key = o.node WHERE o.key = ? ORDER BY o.source',
  originsOfNode: 'SELECT source, key FROM origin WHERE node = ? ORDER BY source, key',
  putOrigin: 'INSERT OR REPLACE INTO origin (key, source, node, digest) VALUES (?, ?, ?, ?)',
  insertChangeSet: 'INSERT INTO change_set (moment, who, why, batch) VALUES (?, ?, ?, ?)',
  changeSet: 'SELECT number, moment, who, why, batch FROM change_set WHERE number = ?',
  lastChangeSet: 'SELECT ifnull(max(number), 0) AS number FROM change_set',
  insertAwaited: 'INSERT INTO awaited (key, source, claim, role) VALUES (?, ?, ?, ?)',
  awaited: 'SELECT claim, role FROM awaited WHERE key = ? AND source = ? ORDER BY number',
  deleteAwaited: 'DELETE FROM awaited WHERE key = ? AND source = ?',
  putCheckpoint: 'INSERT OR REPLACE INTO checkpoint (intake, records, report) VALUES (?, ?, ?)',
  checkpoint: 'SELECT records, report FROM checkpoint WHERE intake = ?',
  profileOfName: 'SELECT number FROM profile WHERE name = ?',
  insertProfile: 'INSERT INTO profile (name) VALUES (?)',
  putWindow:
    'INSERT OR REPLACE INTO edition_window (edition, regular, profile, class, first, last) VALUES (?, ?, ?, ?, ?, ?)',
  windowOf:
    'SELECT w.regular AS regular, p.name AS profile, w.class AS class, w.first AS first, w.last AS last FROM edition_window AS w JOIN profile AS p ON p.number = w.profile WHERE w.edition = ?',
  foldVersion: "SELECT version FROM derived WHERE name = 'fold'",
  pages: 'SELECT page_count * page_size AS bytes FROM pragma_page_count(), pragma_page_size()',
} as const;

/** Conditions of a filter, each with the name of the value it binds. */
const conditions = {
  form: 'EXISTS (SELECT 1 FROM work AS k WHERE k._key = e.work AND k._until IS NULL AND k.form = :form)',
  language: 'EXISTS (SELECT 1 FROM json_each(e.languages) WHERE value = :language)',
  illustrated: 'ifnull(e.illustrated, 0) = :illustrated',
  work: 'e.work = :work',
  place: `EXISTS (SELECT 1 FROM link AS l CROSS JOIN imprint AS i ON i._key = l.node WHERE l.target = w.edition AND l.code = ${editionOfImprint} AND l.until IS NULL AND i.place = :place AND ${counted('i')})`,
  subject: `(${depicted('w.edition')} OR ${depicted('e.work')} OR EXISTS (SELECT 1 FROM link AS l CROSS JOIN appearance AS a ON a._key = l.node WHERE l.target = w.edition AND l.code = ${editionOfAppearance} AND l.until IS NULL AND a.presence = 'PRESENT' AND ${counted('a')} AND ${depicted('a.plate')}))`,
} as const;

export type Condition = keyof typeof conditions;

function depicted(picture: string): string {
  return `EXISTS (SELECT 1 FROM link AS d CROSS JOIN depiction AS p ON p._key = d.node WHERE d.target = ${picture} AND d.code = ${pictureOfDepiction} AND d.until IS NULL AND p.iconclass >= :subject AND substr(p.iconclass, 1, length(:subject)) = :subject AND ${counted('p')})`;
}

/** Source of rows of edition_window that pass a filter: without conditions the rows of editions are not looked at. */
function windowsThatPass(filter: readonly Condition[], join = ''): string {
  if (filter.length === 0) return `edition_window AS w${join} WHERE ${goOn('w.edition')}`;
  const all = filter.map(name => conditions[name]).join(' AND ');
  return `edition_window AS w CROSS JOIN edition AS e ON e._key = w.edition AND e._until IS NULL${join} WHERE ${goOn('w.edition')} AND ${all}`;
}

const joinNode = ' CROSS JOIN node AS n ON n.key = w.edition';
const joinProfile = ' CROSS JOIN profile AS p ON p.number = w.profile';

/** Statements of questions about reach, by filter. */
export const reachSql = {
  groups: (filter: readonly Condition[]): string =>
    `SELECT p.name AS profile, g.class AS class, g.first AS first, g.last AS last, g.n AS n FROM (SELECT w.profile AS profile, w.class AS class, w.first AS first, w.last AS last, count(*) AS n FROM ${windowsThatPass(filter)} AND w.regular = 1 GROUP BY w.profile, w.class, w.first, w.last) AS g JOIN profile AS p ON p.number = g.profile`,
  irregularCount: (filter: readonly Condition[]): string =>
    `SELECT count(*) AS n FROM ${windowsThatPass(filter)} AND w.regular = 0`,
  irregular: (filter: readonly Condition[]): string =>
    `SELECT n.id AS id FROM ${windowsThatPass(filter, joinNode)} AND w.regular = 0 ORDER BY n.id`,
  inWindow: (filter: readonly Condition[]): string =>
    `SELECT n.id AS id FROM ${windowsThatPass(filter, joinNode)} AND w.regular = 1 AND w.profile = :profile AND w.class = :class AND w.first IS :first AND w.last IS :last AND n.id > :after ORDER BY n.id LIMIT :limit`,
  byTitle: (filter: readonly Condition[]): string =>
    `SELECT n.id AS id, n.sort AS sort, p.name AS profile, w.regular AS regular, w.class AS class, w.first AS first, w.last AS last FROM node AS n CROSS JOIN ${windowsThatPass(filter, joinProfile)} AND w.edition = n.key AND n.kind = :kind AND n.sort IS NOT NULL AND (n.sort, n.id) > (:sort, :after) ORDER BY n.sort, n.id LIMIT :limit`,
} as const;

/** Statements of one kind's table. */
export function kindSql(kind: KindName): {
  readonly insert: string;
  readonly close: string;
  readonly current: string;
  readonly at: string;
  readonly versions: string;
} {
  const table = `"${tableOf(kind)}"`;
  const fields = rowFields(kind);
  const names = fields.map(({ name }) => `"${name}"`);
  const read = fields.map(({ name, shape }) =>
    shape === 'link' ? `(SELECT id FROM node WHERE node.key = t."${name}")` : `t."${name}"`,
  );
  const columns = ['t._since', 't._until', ...read].join(', ');
  return {
    insert: `INSERT INTO ${table} (_key, _since, ${names.join(', ')}) VALUES (?, ?${', ?'.repeat(names.length)})`,
    close: `UPDATE ${table} SET _until = ? WHERE _key = ? AND _until IS NULL`,
    current: `SELECT ${['_since', ...names].join(', ')} FROM ${table} WHERE _key = ? AND _until IS NULL`,
    at: `SELECT ${columns} FROM ${table} AS t WHERE t._key = ? AND t._since <= ? AND (t._until IS NULL OR t._until > ?)`,
    versions: `SELECT ${columns} FROM ${table} AS t WHERE t._key = ? ORDER BY t._since`,
  };
}
