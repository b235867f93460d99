import { linkKind } from '../../domain/model/links.ts';
import { goOn } from './go-on.ts';

const workOfEdition = linkKind('Edition', 'work')!.code;
const placeOfImprint = linkKind('Imprint', 'place')!.code;
const plateOfAppearance = linkKind('Appearance', 'plate')!.code;

/** Still said, held and at least possible. */
const counted = (claim: string): string =>
  `${claim}._until IS NULL AND ifnull(${claim}.standing, 'STANDING') = 'STANDING' AND ifnull(${claim}.stance, 'HELD') = 'HELD' AND ifnull(${claim}.certainty, 'CERTAIN') <> 'DOUBTFUL'`;

/** Conditions on the row of an edition (e). */
const rowConditions = {
  form: 'EXISTS (SELECT 1 FROM work AS k WHERE k._key = e.work AND k._until IS NULL AND k.form = :form)',
  language: 'EXISTS (SELECT 1 FROM json_each(e.languages) WHERE value = :language)',
  illustrated: 'ifnull(e.illustrated, 0) = :illustrated',
} as const;

const depicted = `SELECT d.picture AS picture FROM depiction AS d WHERE d.iconclass >= :subject AND d.iconclass < :subjectEnd AND ${counted('d')} AND ${goOn('d._key')}`;

/** Conditions that name what has few editions: their editions are found by the links, not by looking at all. */
const sets = {
  work: `SELECT node AS edition FROM link WHERE target = :work AND code = ${workOfEdition} AND until IS NULL AND ${goOn('node')}`,
  place: `SELECT i.edition AS edition FROM link AS l CROSS JOIN imprint AS i ON i._key = l.node WHERE l.target = :place AND l.code = ${placeOfImprint} AND l.until IS NULL AND ${goOn('l.node')} AND ${counted('i')}`,
  subject: `SELECT picture AS edition FROM (${depicted}) UNION SELECT l.node AS edition FROM (${depicted}) AS p CROSS JOIN link AS l ON l.target = p.picture WHERE l.code = ${workOfEdition} AND l.until IS NULL AND ${goOn('l.node')} UNION SELECT a.edition AS edition FROM (${depicted}) AS p CROSS JOIN link AS l ON l.target = p.picture CROSS JOIN appearance AS a ON a._key = l.node WHERE l.code = ${plateOfAppearance} AND l.until IS NULL AND ${goOn('l.node')} AND a.presence = 'PRESENT' AND ${counted('a')}`,
} as const;

export type Condition = keyof typeof rowConditions | keyof typeof sets;

export const setConditions: ReadonlySet<Condition> = new Set(Object.keys(sets) as Condition[]);

/** Windows (w) that pass a filter; without conditions on the row of the edition it is not looked at. */
function windowsThatPass(filter: readonly Condition[], join = ''): string {
  const named = filter.filter(name => name in sets) as (keyof typeof sets)[];
  const others = filter.filter(name => name in rowConditions) as (keyof typeof rowConditions)[];
  const chosen = named.map(name => `SELECT edition FROM (${sets[name]})`).join(' INTERSECT ');
  const from =
    named.length === 0
      ? 'edition_window AS w'
      : `(SELECT DISTINCT edition FROM (${chosen})) AS c CROSS JOIN edition_window AS w ON w.edition = c.edition`;
  const edition = others.length === 0 ? '' : ' CROSS JOIN edition AS e ON e._key = w.edition AND e._until IS NULL';
  return `${from}${edition}${join} WHERE ${[goOn('w.edition'), ...others.map(name => rowConditions[name])].join(' AND ')}`;
}

const joinNode = ' CROSS JOIN node AS n ON n.key = w.edition';
const joinProfile = ' CROSS JOIN profile AS p ON p.number = w.profile';
const joinDetail = ' LEFT JOIN window_detail AS d ON d.number = w.detail';
const window = 'w.profile, w.class, w.detail, w.first, w.last';
const namedWindow = 'p.name, w.class, d.text, w.first, w.last';

/** Statements of questions about reach, by filter. */
export const reachSql = {
  groups: (filter: readonly Condition[]): string =>
    `SELECT ${window}, count(*) FROM ${windowsThatPass(filter)} GROUP BY ${window}`,

  inWindow: (filter: readonly Condition[]): string =>
    `SELECT n.id FROM ${windowsThatPass(filter, joinNode)} AND w.profile = :profile AND w.class = :class AND w.detail = :detail AND w.first = :first AND w.last = :last AND n.id > :after ORDER BY n.id LIMIT :limit`,

  /** Every edition that passes with the numbers of its window, in no order. */
  windows: (filter: readonly Condition[]): string => `SELECT n.id, ${window} FROM ${windowsThatPass(filter, joinNode)}`,

  byTitle: (filter: readonly Condition[]): string => {
    const inOrder = filter.every(name => !setConditions.has(name));
    const from = inOrder
      ? `node AS n CROSS JOIN ${windowsThatPass(filter, joinProfile + joinDetail)} AND w.edition = n.key`
      : windowsThatPass(filter, joinNode + joinProfile + joinDetail);
    return `SELECT n.id, n.sort, ${namedWindow} FROM ${from} AND n.kind = :kind AND n.sort IS NOT NULL AND (n.sort, n.id) > (:sort, :after) ORDER BY n.sort, n.id LIMIT :limit`;
  },
} as const;
