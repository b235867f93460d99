import { linkKind } from '../../domain/model/links.ts';
import { goOn } from './go-on.ts';

const workOfEdition = linkKind('Edition', 'work')!.code;
const placeOfImprint = linkKind('Imprint', 'place')!.code;
const plateOfAppearance = linkKind('Appearance', 'plate')!.code;

/** Still said, held and at least possible. */
export const counted = (claim: string): string =>
  `${claim}._until IS NULL AND ifnull(${claim}.standing, 'STANDING') = 'STANDING' AND ifnull(${claim}.stance, 'HELD') = 'HELD' AND ifnull(${claim}.certainty, 'CERTAIN') <> 'DOUBTFUL'`;

const depicted = `SELECT d.picture AS picture FROM depiction AS d WHERE d.iconclass >= :subject AND d.iconclass < :subjectEnd AND ${counted('d')} AND ${goOn('d._key')}`;

/** Conditions that name what has few editions: their editions are found by the links, not by looking at all. */
const sets = {
  work: `SELECT node AS edition FROM link WHERE target = :work AND code = ${workOfEdition} AND until IS NULL AND ${goOn('node')}`,
  place: `SELECT i.edition AS edition FROM link AS l CROSS JOIN imprint AS i ON i._key = l.node WHERE l.target = :place AND l.code = ${placeOfImprint} AND l.until IS NULL AND ${goOn('l.node')} AND ${counted('i')}`,
  subject: `SELECT picture AS edition FROM (${depicted}) UNION SELECT l.node AS edition FROM (${depicted}) AS p CROSS JOIN link AS l ON l.target = p.picture WHERE l.code = ${workOfEdition} AND l.until IS NULL AND ${goOn('l.node')} UNION SELECT a.edition AS edition FROM (${depicted}) AS p CROSS JOIN link AS l ON l.target = p.picture CROSS JOIN appearance AS a ON a._key = l.node WHERE l.code = ${plateOfAppearance} AND l.until IS NULL AND ${goOn('l.node')} AND a.presence = 'PRESENT' AND ${counted('a')}`,
} as const;

/** What a filter asks: that the traits are among some, or that the edition is in all of some sets. */
export type Condition = 'traits' | keyof typeof sets;

export const setConditions: ReadonlySet<Condition> = new Set(Object.keys(sets) as Condition[]);

/** Windows (w) that pass a filter. */
function windowsThatPass(filter: readonly Condition[], join = ''): string {
  const named = filter.filter(name => name in sets) as (keyof typeof sets)[];
  const chosen = named.map(name => `SELECT edition FROM (${sets[name]})`).join(' INTERSECT ');
  const from =
    named.length === 0
      ? 'edition_window AS w'
      : `(SELECT DISTINCT edition FROM (${chosen})) AS c CROSS JOIN edition_window AS w ON w.edition = c.edition`;
  const traits = filter.includes('traits') ? ' AND w.traits IN (SELECT value FROM json_each(:traits))' : '';
  return `${from}${join} WHERE ${goOn('w.edition')}${traits}`;
}

const joinNode = ' CROSS JOIN node AS n ON n.key = w.edition';
const joinProfile = ' CROSS JOIN profile AS p ON p.number = w.profile';
const joinDetail = ' LEFT JOIN window_detail AS d ON d.number = w.detail';
const window = 'w.profile, w.class, w.detail, w.first, w.last';
const joinTraits = ' LEFT JOIN window_traits AS t ON t.number = w.traits';
const namedWindow = 'p.name, w.class, d.text, w.first, w.last, t.text';

/** Statements of questions about reach, by filter. */
export const reachSql = {
  groups: (filter: readonly Condition[]): string =>
    `SELECT ${window}, count(*) FROM ${windowsThatPass(filter)} GROUP BY ${window}`,

  inWindow: (filter: readonly Condition[]): string =>
    `SELECT w.id FROM ${windowsThatPass(filter)} AND w.profile = :profile AND w.class = :class AND w.detail = :detail AND w.first = :first AND w.last = :last AND w.id > :after ORDER BY w.id LIMIT :limit`,

  /** Every edition that passes with the numbers of its window, in no order. */
  windows: (filter: readonly Condition[]): string => `SELECT w.id, ${window} FROM ${windowsThatPass(filter)}`,

  byTitle: (filter: readonly Condition[]): string => {
    const inOrder = filter.every(name => !setConditions.has(name));
    const from = inOrder
      ? `node AS n CROSS JOIN ${windowsThatPass(filter, joinProfile + joinDetail + joinTraits)} AND w.edition = n.key`
      : windowsThatPass(filter, joinNode + joinProfile + joinDetail + joinTraits);
    return `SELECT n.id, n.sort, ${namedWindow} FROM ${from} AND n.kind = :kind AND n.sort IS NOT NULL AND (n.sort, n.id) > (:sort, :after) ORDER BY n.sort, n.id LIMIT :limit`;
  },
} as const;
