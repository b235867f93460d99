import { type KindName, type RecordKindName, recordKindNames } from '../../domain/model/kinds.ts';
import { linkKind } from '../../domain/model/links.ts';
import { widest } from './dated-codec.ts';
import { goOn } from './go-on.ts';
import { counted } from './reach-statements.ts';
import { kindNumber } from './row-codec.ts';
import { tableOf } from './schema-text.ts';

/** Those that mostly fewer records pass come first. */
export const searchConditions = ['subject', 'place', 'days'] as const;

export type Condition = (typeof searchConditions)[number];

/** A way by which records come to pass a condition. */
export interface Way {
  /** Kinds of the records. */
  readonly kinds: readonly RecordKindName[];
  /** Statement that gives their keys as `record`, in no order and some more than once. */
  readonly text: string;
}

/**
 * Whether the record n passes. Values: days `firstDay` and `lastDay`, and `dates`, the numbers of dates that meet them, as JSON; place `places`, the keys of the place and of all within
 * it, and `workshops`, those of the workshops that stayed at one of them, as JSON; subject `subject` and `subjectEnd`.
 */
export const passes: Readonly<Record<Condition, string>> = {
  days: `EXISTS (SELECT 1 FROM link AS l CROSS JOIN dated AS d ON d.dating = l.node WHERE ${holds('l', 'n.key', 'Dating', 'of')} AND CASE d.date WHEN 0 THEN d.first <= :lastDay AND d.last >= :firstDay ELSE d.date IN (${list(':dates')}) END)`,
  place: `CASE n.kind WHEN ${kindNumber('Place')} THEN n.key IN (${list(':places')}) WHEN ${kindNumber('Edition')} THEN ${says('Imprint', 'edition', 'n.key', 'place', ':places')} OR ${fromWorkshop('n.key')} WHEN ${kindNumber('Motif')} THEN ${madeThere('n.key')} OR EXISTS (SELECT 1 FROM motif AS m WHERE m._key = n.key AND m._until IS NULL AND (${madeThere('m.piece')})) WHEN ${kindNumber('Agent')} THEN ${stayedThere()} WHEN ${kindNumber('Workshop')} THEN ${stayedThere()} ELSE ${madeThere('n.key')} END`,
  subject: `CASE n.kind WHEN ${kindNumber('Edition')} THEN ${depicted('n.key')} OR EXISTS (SELECT 1 FROM edition AS e WHERE e._key = n.key AND e._until IS NULL AND ${depicted('e.work')}) OR EXISTS (SELECT 1 FROM link AS a CROSS JOIN appearance AS b ON b._key = a.node WHERE ${holds('a', 'n.key', 'Appearance', 'edition')} AND b.presence = 'PRESENT' AND ${counted('b')} AND ${depicted('b.plate')}) WHEN ${kindNumber('Piece')} THEN EXISTS (SELECT 1 FROM link AS a WHERE ${holds('a', 'n.key', 'Motif', 'piece')} AND ${depicted('a.node')}) ELSE ${depicted('n.key')} END`,
};

const made = claimsOf('MadeAt', 'place', 'record', ':places');
const fromWorkshops = claimsOf('Attribution', 'agent', 'record', ':workshops');
const pictures = `SELECT d.picture AS record FROM depiction AS d WHERE d._until IS NULL AND d.iconclass >= :subject AND d.iconclass < :subjectEnd AND ${counted('d')} AND ${goOn('d._key')}`;

/** Every record that passes comes by one of these at least. */
export const ways: Readonly<Record<Condition, readonly Way[]>> = {
  days: recordKindNames.map(kind => ({ kinds: [kind], text: datedMeeting(kindNumber(kind)) })),
  place: [
    { kinds: ['Place'], text: 'SELECT value AS record FROM json_each(:places)' },
    { kinds: ['Edition'], text: claimsOf('Imprint', 'place', 'edition', ':places') },
    { kinds: toOf('MadeAt', 'record'), text: made },
    { kinds: ['Agent', 'Workshop'], text: claimsOf('Stay', 'where', 'who', ':places') },
    { kinds: toOf('Attribution', 'record'), text: fromWorkshops },
    { kinds: ['Motif'], text: holding('Motif', 'piece', `${made} UNION ALL ${fromWorkshops}`) },
  ],
  subject: [
    { kinds: toOf('Depiction', 'picture'), text: pictures },
    { kinds: ['Edition'], text: holding('Edition', 'work', pictures) },
    {
      kinds: ['Edition'],
      text: `SELECT b.edition AS record FROM (${pictures}) AS g CROSS JOIN link AS l ON l.target = g.record CROSS JOIN appearance AS b ON b._key = l.node WHERE ${linkOf('l', 'Appearance', 'plate')} AND b.presence = 'PRESENT' AND ${goOn('l.node')} AND ${counted('b')}`,
    },
    {
      kinds: ['Piece'],
      text: `SELECT m.piece AS record FROM (${pictures}) AS g CROSS JOIN motif AS m ON m._key = g.record AND m._until IS NULL`,
    },
  ],
};

function madeThere(record: string): string {
  return `${says('MadeAt', 'record', record, 'place', ':places')} OR ${fromWorkshop(record)}`;
}

function fromWorkshop(record: string): string {
  return says('Attribution', 'record', record, 'agent', ':workshops');
}

function stayedThere(): string {
  return says('Stay', 'who', 'n.key', 'where', ':places');
}

function depicted(record: string): string {
  return `EXISTS (SELECT 1 FROM link AS l CROSS JOIN depiction AS d ON d._key = l.node WHERE ${holds('l', record, 'Depiction', 'picture')} AND d.iconclass >= :subject AND d.iconclass < :subjectEnd AND ${counted('d')})`;
}

/** A claim that counts holds the record in a role, and one of a list in another. */
function says(kind: KindName, role: string, record: string, other: string, of: string): string {
  return `EXISTS (SELECT 1 FROM link AS l CROSS JOIN ${tableOf(kind)} AS c ON c._key = l.node WHERE ${holds('l', record, kind, role)} AND c."${other}" IN (${list(of)}) AND ${counted('c')})`;
}

/** What claims that count hold in a role, where they hold one of a list in another. */
function claimsOf(kind: KindName, role: string, other: string, of: string): string {
  return `SELECT c."${other}" AS record FROM json_each(${of}) AS j CROSS JOIN link AS l ON l.target = j.value CROSS JOIN ${tableOf(kind)} AS c ON c._key = l.node WHERE ${linkOf('l', kind, role)} AND ${goOn('l.node')} AND ${counted('c')}`;
}

/** Records that hold one of those of another statement in a field. */
function holding(kind: KindName, field: string, records: string): string {
  return `SELECT l.node AS record FROM (${records}) AS g CROSS JOIN link AS l ON l.target = g.record WHERE ${linkOf('l', kind, field)} AND ${goOn('l.node')}`;
}

/** Records of a kind with a dating that meets the days: of each spread, those that begin near them; and those of dates that do. */
function datedMeeting(kind: number): string {
  const spreads = Array.from({ length: widest + 1 }, (_, spread) => spread);
  return `SELECT d.record AS record FROM json_each('[${spreads.join()}]') AS s CROSS JOIN dated AS d ON d.kind = ${kind} AND d.spread = s.value AND d.first >= :firstDay - (1 << s.value) AND d.first <= :lastDay WHERE d.last >= :firstDay AND ${goOn('d.dating')} UNION ALL SELECT d.record AS record FROM json_each(:dates) AS t CROSS JOIN dated AS d ON d.date = t.value AND d.date > 0 AND d.kind = ${kind} WHERE ${goOn('d.dating')}`;
}

function holds(link: string, record: string, kind: KindName, name: string): string {
  return `${link}.target = ${record} AND ${linkOf(link, kind, name)}`;
}

function linkOf(link: string, kind: KindName, name: string): string {
  return `${link}.code = ${linkKind(kind, name)!.code} AND ${link}.until IS NULL`;
}

function list(name: string): string {
  return `SELECT value FROM json_each(${name})`;
}

function toOf(kind: KindName, role: string): readonly RecordKindName[] {
  return linkKind(kind, role)!.to as readonly RecordKindName[];
}
