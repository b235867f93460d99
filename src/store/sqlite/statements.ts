import { isClaimKind, type KindName } from '../../domain/model/kinds.ts';
import { rowFields } from '../../domain/model/row-fields.ts';
import { goOn } from './go-on.ts';
import { kindNames, tableOf } from './schema-text.ts';

/** Stands for "now" in a view: no change set has so high a number. */
export const now = Number.MAX_SAFE_INTEGER;

/** Every statement of this engine but those made a kind at a time (below). Values are always bound. */
export const sql = {
  keyOfId: 'SELECT key FROM node WHERE id = ?',
  keyOfIdThere: 'SELECT key FROM node WHERE id = ? AND gone IS NULL',
  goneKeyOfId: 'SELECT key FROM node WHERE id = ? AND gone IS NOT NULL',
  takeOut: 'UPDATE node SET gone = ?, sort = NULL WHERE key = ?',
  bringBack: 'UPDATE node SET gone = NULL, sort = ? WHERE key = ?',
  namedBy:
    'SELECT n.id FROM link AS l CROSS JOIN node AS n ON n.key = l.node WHERE l.target = ? AND l.until IS NULL LIMIT 1',
  nodesOfIds: 'SELECT json_each.key, n.key, n.kind FROM json_each(?) CROSS JOIN node AS n ON n.id = json_each.value',
  idsOfKeys: 'SELECT n.key, n.id FROM json_each(?) CROSS JOIN node AS n ON n.key = json_each.value',
  sortOfId: 'SELECT sort FROM node WHERE id = ?',
  insertNode: 'INSERT INTO node (key, id, kind, sort) VALUES (?, ?, ?, ?)',
  updateSort: 'UPDATE node SET sort = ? WHERE key = ? AND sort IS NOT ?',
  lastKey: 'SELECT ifnull(max(key), 0) FROM node',
  nodesAfter: 'SELECT key, id, kind FROM node WHERE id > ? AND gone IS NULL ORDER BY id LIMIT ?',
  nodesEverAfter: 'SELECT key, id, kind FROM node WHERE id > ? ORDER BY id LIMIT ?',
  addToTally:
    'INSERT INTO tally (kind, rows) VALUES (?, ?) ON CONFLICT (kind) DO UPDATE SET rows = rows + excluded.rows',
  rowsOfKind: 'SELECT rows FROM tally WHERE kind = ?',
  tallies: 'SELECT kind, rows FROM tally',
  listKind:
    'SELECT sort, id FROM node WHERE kind = ? AND sort IS NOT NULL AND (sort, id) > (?, ?) ORDER BY sort, id LIMIT ?',
  insertLink: 'INSERT INTO link (target, code, node, since) VALUES (?, ?, ?, ?)',
  closeLink: 'UPDATE link SET until = ? WHERE target = ? AND code = ? AND node = ? AND until IS NULL',
  insertWords: 'INSERT INTO search (rowid, tokens) VALUES (?, ?)',
  deleteWords: 'DELETE FROM search WHERE rowid = ?',
  putDated:
    'INSERT OR REPLACE INTO dated (dating, record, kind, spread, first, last, date) VALUES (?, ?, ?, ?, ?, ?, ?)',
  deleteDated: 'DELETE FROM dated WHERE dating = ?',
  daysOfDating:
    'SELECT d.first, d.last, t.text FROM dated AS d LEFT JOIN dated_date AS t ON t.number = d.date WHERE d.dating = ?',
  dateOfText: 'SELECT number FROM dated_date WHERE text = ?',
  insertDate: 'INSERT INTO dated_date (text) VALUES (?)',
  originOf:
    'SELECT n.id, o.digest FROM origin AS o CROSS JOIN node AS n ON n.key = o.node WHERE o.key = ? AND o.source = ? AND n.gone IS NULL',
  originsOfKey:
    'SELECT o.source, o.key, n.id, o.digest FROM origin AS o CROSS JOIN node AS n ON n.key = o.node WHERE o.key = ? AND n.gone IS NULL ORDER BY o.source',
  originsOfNode:
    'SELECT o.source, o.key FROM origin AS o CROSS JOIN node AS n ON n.key = o.node WHERE o.node = ? AND n.gone IS NULL ORDER BY o.source, o.key',
  originsFrom:
    'SELECT o.key, o.source, n.id, o.digest FROM origin AS o CROSS JOIN node AS n ON n.key = o.node WHERE (o.key, o.source) >= (?, ?) ORDER BY o.key, o.source LIMIT ?',
  putOrigin: 'INSERT OR REPLACE INTO origin (key, source, node, digest) VALUES (?, ?, ?, ?)',
  insertChangeSet: 'INSERT INTO change_set (moment, who, why, batch) VALUES (?, ?, ?, ?)',
  lastMoment: 'SELECT moment FROM change_set WHERE number = (SELECT max(number) FROM change_set)',
  changeSet: 'SELECT number, moment, who, why, batch FROM change_set WHERE number = ?',
  lastChangeSet: 'SELECT ifnull(max(number), 0) FROM change_set',
  insertWritten: 'INSERT INTO written (change_set, first, last) VALUES (?, ?, ?)',
  writtenAfter: 'SELECT change_set, first, last FROM written WHERE change_set > ? ORDER BY change_set, first',
  nodesBetween: 'SELECT key, id, kind FROM node WHERE key BETWEEN ? AND ? ORDER BY key',
  insertAwaited: 'INSERT INTO awaited (key, source, claim, role) VALUES (?, ?, ?, ?)',
  awaited: 'SELECT claim, role FROM awaited WHERE key = ? AND source = ? ORDER BY number',
  awaitedFrom:
    'SELECT a.key, a.source, a.claim, a.role FROM (SELECT DISTINCT key, source FROM awaited WHERE (key, source) >= (?, ?) ORDER BY key, source LIMIT ?) AS inside CROSS JOIN awaited AS a ON a.key = inside.key AND a.source = inside.source ORDER BY a.key, a.source, a.number',
  deleteAwaited: 'DELETE FROM awaited WHERE key = ? AND source = ?',
  putCheckpoint: 'INSERT OR REPLACE INTO checkpoint (intake, records, report) VALUES (?, ?, ?)',
  checkpoint: 'SELECT records, report FROM checkpoint WHERE intake = ?',
  checkpointsFrom: 'SELECT intake, records, report FROM checkpoint WHERE intake >= ? ORDER BY intake LIMIT ?',
  profilesAfter: 'SELECT number, name FROM profile WHERE number > ? ORDER BY number',
  profileOfName: 'SELECT number FROM profile WHERE name = ?',
  insertProfile: 'INSERT INTO profile (name) VALUES (?)',
  detailsAfter: 'SELECT number, text FROM window_detail WHERE number > ? ORDER BY number',
  detailOfText: 'SELECT number FROM window_detail WHERE text = ?',
  insertDetail: 'INSERT INTO window_detail (text) VALUES (?)',
  traitsAfter: 'SELECT number, text FROM window_traits WHERE number > ? ORDER BY number',
  traitsOfText: 'SELECT number FROM window_traits WHERE text = ?',
  insertTraits: 'INSERT INTO window_traits (text) VALUES (?)',
  putWindow:
    'INSERT OR REPLACE INTO edition_window (edition, id, profile, class, detail, first, last, traits) VALUES (?, ?, ?, ?, ?, ?, ?, ?)',
  deleteWindow: 'DELETE FROM edition_window WHERE edition = ?',
  numbersOfWindow: 'SELECT profile, class, detail, first, last, traits FROM edition_window WHERE edition = ?',
  windowOf:
    'SELECT p.name, w.class, d.text, w.first, w.last, t.text FROM edition_window AS w CROSS JOIN profile AS p ON p.number = w.profile LEFT JOIN window_detail AS d ON d.number = w.detail LEFT JOIN window_traits AS t ON t.number = w.traits WHERE w.edition = ?',
  allWindows:
    'SELECT profile, class, detail, first, last, traits, count(*) FROM edition_window GROUP BY profile, class, detail, first, last, traits',
  insertTally: 'INSERT INTO window_tally (numbers) VALUES (?)',
  newestTallies: 'SELECT number, length(numbers) FROM window_tally ORDER BY number DESC LIMIT 2',
  talliesInOrder: 'SELECT number FROM window_tally ORDER BY number DESC',
  tallyOfNumber: 'SELECT numbers FROM window_tally WHERE number = ?',
  deleteTally: 'DELETE FROM window_tally WHERE number = ?',
  deleteTalliesBefore: 'DELETE FROM window_tally WHERE number < ?',
  putFoldVersion: "INSERT OR REPLACE INTO derived (name, version) VALUES ('fold', ?)",
  foldVersion: "SELECT version FROM derived WHERE name = 'fold'",
  pageBytes: 'PRAGMA page_size',
  // A version of SQLite that does not know NOOP puts back what it can.
  lengthOfLog: 'PRAGMA wal_checkpoint(NOOP)',
  bytes: 'SELECT page_count * page_size FROM pragma_page_count(), pragma_page_size()',
} as const;

/** What holds some records in links with these codes: the place of the record in the list, and what holds it, once a link. */
export function linkedSql(codes: readonly number[]): string {
  return `SELECT json_each.key, n.key, n.id, n.kind FROM json_each(?) CROSS JOIN link AS l ON l.target = json_each.value CROSS JOIN node AS n ON n.key = l.node WHERE l.code IN (${codes.join(', ')}) AND ${goOn('l.node')} AND l.since <= ? AND (l.until IS NULL OR l.until > ?)`;
}

/** Claims that stand in a group of alternatives now. */
export const inGroupSql = `SELECT n.key, n.id, n.kind FROM (${kindNames
  .filter(isClaimKind)
  .map(kind => `SELECT _key FROM "${tableOf(kind)}" WHERE "alternativeTo" = ?1 AND _until IS NULL`)
  .join(' UNION ALL ')}) AS c CROSS JOIN node AS n ON n.key = c._key`;

export interface KindSql {
  readonly insert: string;
  readonly close: string;
  /** Change set of the version that is valid now. */
  readonly sinceNow: string;
  /** Ids of the links of the version that is valid now, in the order of the fields. */
  readonly heldNow: string | undefined;
  /** Links are keys. */
  readonly at: string;
  readonly versions: string;
}

/** Statements of one kind's table. */
export function kindSql(kind: KindName): KindSql {
  return ofKind.get(kind)!;
}

const ofKind = new Map(kindNames.map(kind => [kind, makeKindSql(kind)]));

function makeKindSql(kind: KindName): KindSql {
  const table = `"${tableOf(kind)}"`;
  const fields = rowFields(kind);
  const names = fields.map(({ name }) => `"${name}"`);
  const links = fields.filter(({ shape }) => shape === 'link').map(({ name }) => `"${name}"`);
  const read = fields.map(({ name, shape }) =>
    shape === 'link' ? `(SELECT id FROM node WHERE node.key = t."${name}")` : `t."${name}"`,
  );
  const columns = ['t._since', 't._until', ...read].join(', ');
  const bare = ['t._since', 't._until', ...names.map(name => `t.${name}`)].join(', ');
  return {
    insert: `INSERT INTO ${table} (_key, _since, ${names.join(', ')}) VALUES (?, ?${', ?'.repeat(names.length)})`,
    close: `UPDATE ${table} SET _until = ? WHERE _key = ? AND _until IS NULL`,
    sinceNow: `SELECT _since FROM ${table} WHERE _key = ? AND _until IS NULL`,
    heldNow:
      links.length === 0 ? undefined : `SELECT ${links.join(', ')} FROM ${table} WHERE _key = ? AND _until IS NULL`,
    at: `SELECT t._key, ${bare} FROM json_each(?) CROSS JOIN ${table} AS t ON t._key = json_each.value WHERE ${goOn('t._key')} AND t._since <= ? AND (t._until IS NULL OR t._until > ?)`,
    versions: `SELECT ${columns} FROM ${table} AS t WHERE t._key = ? ORDER BY t._since`,
  };
}
