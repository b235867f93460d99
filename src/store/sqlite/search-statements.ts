import { linkKind } from '../../domain/model/links.ts';
import { goOn } from './go-on.ts';
import { counted } from './reach-statements.ts';
import { kindNumber } from './row-codec.ts';
import { type Condition, passes } from './search-conditions.ts';

const row = 'n.id, n.kind, n.sort';
const inStretch = `(n.sort, n.id) > (:sort, :id) AND n.sort < :end AND ${goOn('n.key')}`;

/** Statements of searches, those with conditions by which these are. */
export const searchSql = {
  /** Keys of a place and of all places within it. */
  placesWithin: `WITH RECURSIVE inside (place) AS (SELECT :place UNION SELECT l.node FROM inside CROSS JOIN link AS l ON l.target = inside.place WHERE l.code = ${linkKind('Place', 'within')!.code} AND l.until IS NULL AND ${goOn('l.node')}) SELECT place FROM inside`,

  /** Keys of workshops that stayed at one of some places. */
  workshopsAt: `SELECT DISTINCT s.who FROM json_each(:places) AS p CROSS JOIN link AS l ON l.target = p.value CROSS JOIN stay AS s ON s._key = l.node CROSS JOIN node AS n ON n.key = s.who WHERE l.code = ${linkKind('Stay', 'where')!.code} AND l.until IS NULL AND ${goOn('l.node')} AND ${counted('s')} AND n.kind = ${kindNumber('Workshop')}`,

  /** Dates that came after a number. */
  datesAfter: 'SELECT number, text FROM dated_date WHERE number > :last ORDER BY number',

  /** Keys that come by a way, at most so many. */
  byWay: (way: string): string => `SELECT DISTINCT record FROM (${way}) LIMIT :most`,

  /** Records of a kind by (sort, id), from after a position to before an end. */
  inOrder: (conditions: readonly Condition[]): string =>
    `SELECT ${row} FROM node AS n WHERE n.kind = :kind AND n.sort IS NOT NULL AND ${inStretch}${and(conditions)} ORDER BY n.sort, n.id LIMIT :room`,

  /** The same of some kinds, among a list of records. */
  inOrderOfKeys: (conditions: readonly Condition[]): string =>
    `SELECT ${row} FROM json_each(:keys) AS j CROSS JOIN node AS n ON n.key = j.value WHERE n.kind IN (SELECT value FROM json_each(:kinds)) AND ${inStretch}${and(conditions)} ORDER BY n.sort, n.id LIMIT :room`,

  /** Records that a query of words finds, in the order of their keys, but for those between two sort keys. */
  byWords: (conditions: readonly Condition[]): string => byWords(and(conditions)),

  /** The same, among a list of records. */
  byWordsOfKeys: (conditions: readonly Condition[]): string =>
    byWords(` AND +search.rowid IN (SELECT value FROM json_each(:keys))${and(conditions)}`),

  /** How many records a word finds, counted up to a number. */
  countUpTo: 'SELECT count(*) FROM (SELECT rowid FROM search WHERE search MATCH :query LIMIT :most)',
} as const;

function byWords(more: string): string {
  return `SELECT ${row} FROM search CROSS JOIN node AS n ON n.key = search.rowid WHERE search MATCH :query AND ${goOn('search.rowid')}${more} AND NOT (n.sort >= :whole AND n.sort < :end) LIMIT :room`;
}

function and(conditions: readonly Condition[]): string {
  return conditions.map(condition => ` AND ${passes[condition]}`).join('');
}
