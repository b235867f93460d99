import { deepestWalk } from '../domain/descent/walk-steps.ts';
import type { Field, Role } from '../domain/model/declaration.ts';
import { checkId, kindOfId } from '../domain/model/id.ts';
import { claimKinds, isRecordKind, type KindName, recordKinds } from '../domain/model/kinds.ts';
import { linksOfKind } from '../domain/model/links.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { hasHalfCharacter } from '../domain/text/half-character.ts';
import { invariant, PlatestemmaError } from '../errors.ts';
import type { GraphStore, NewRows, PackedPart, PutRow, WalkAsked, WriteBatch } from './graph-store.ts';
import { writtenIds } from './written-ids.ts';

/**
 * An engine whose input has been checked: rows are of the kind their id says, have what their kind must have, and name
 * what is of a kind that may stand there. The form of rows is checked where they come in, by the schema of graph files.
 * Walks take a whole number of steps, 30 at most.
 * @throws INPUT_INVALID, ID_MISTYPED, KIND_MISMATCH from `write` and `pack`, INPUT_INVALID from `walk`, besides what the engine throws
 */
export function checkedGraphStore(engine: GraphStore): GraphStore {
  return new Proxy(engine, {
    get(target, name) {
      if (name === 'write') return (batch: WriteBatch) => writeChecked(target, batch);
      if (name === 'pack') return (part: NewRows) => packChecked(target, part);
      if (name === 'walk') return (asked: WalkAsked) => walkChecked(target, asked);
      const member: unknown = Reflect.get(target, name);
      return typeof member === 'function' ? member.bind(target) : member;
    },
  });
}

async function walkChecked(engine: GraphStore, asked: WalkAsked): ReturnType<GraphStore['walk']> {
  const { depth, limit } = asked;
  if (!Number.isInteger(depth) || depth < 0 || depth > deepestWalk)
    throw new PlatestemmaError(
      'INPUT_INVALID',
      `depth: expected a whole number from 0 to ${deepestWalk}, came ${depth}`,
    );
  if (!Number.isInteger(limit) || limit < 1)
    throw new PlatestemmaError('INPUT_INVALID', `limit: expected a whole number from 1, came ${limit}`);
  return engine.walk(asked);
}

async function writeChecked(engine: GraphStore, batch: WriteBatch): ReturnType<GraphStore['write']> {
  checkOnce(writtenIds(batch));
  for (const put of batch.put) checkPut(put);
  for (const { id } of batch.remove ?? []) checkId(id);
  return engine.write(batch);
}

function packChecked(engine: GraphStore, part: NewRows): PackedPart {
  invariant(part.rows.length > 0, 'a part has rows');
  for (const row of part.rows) checkRow(row);
  return engine.pack(part);
}

function checkOnce(ids: readonly string[]): void {
  const seen = new Set(ids);
  if (seen.size === ids.length) return;
  const twice = ids.find(id => !seen.delete(id))!;
  throw new PlatestemmaError('INPUT_INVALID', `expected each row once in a change, came "${twice}" twice`, {
    place: { key: twice },
  });
}

function checkPut({ row, sort }: PutRow): void {
  checkRow(row);
  if (isRecordKind(row.kind) === (sort !== undefined)) return;
  throw new PlatestemmaError('BROKEN_PROMISE', `records and only records come with a sort key: ${row.id}`, {
    place: { key: row.id },
  });
}

function checkRow(row: AnyRow): void {
  const place = { key: row.id };
  if (kindOfId(row.id) !== row.kind) {
    throw new PlatestemmaError(
      'KIND_MISMATCH',
      `expected an id that begins with "${row.kind.toLowerCase()}-", came "${row.id}" for a ${row.kind}`,
      { place },
    );
  }
  checkId(row.id);
  const values = row as unknown as Readonly<Record<string, unknown>>;
  for (const name of requiredNames.get(row.kind)!) if (values[name] === undefined) throw missing(row, name);
  for (const link of linksOfKind(row.kind)) {
    const id = values[link.name];
    if (id !== undefined) checkLink(row, link.name, link.to, id);
  }
  for (const name in values) if (hasHalfCharacter(values[name])) throw halfCharacter(row, name);
}

const requiredNames: ReadonlyMap<KindName, readonly string[]> = new Map(
  [...Object.values(recordKinds), ...Object.values(claimKinds)].map(declaration => {
    const named: Readonly<Record<string, Field | Role>> =
      declaration.type === 'claim' ? { ...declaration.roles, ...declaration.fields } : declaration.fields;
    return [declaration.kind, Object.keys(named).filter(name => named[name]!.required)];
  }),
);

function missing(row: AnyRow, name: string): PlatestemmaError {
  const message = `${row.id}: expected "${name}", which every ${row.kind} has, came none`;
  return new PlatestemmaError('INPUT_INVALID', message, { place: { key: row.id, field: name } });
}

/** Engines keep texts as UTF-8, which has no half of a surrogate pair (Unicode D92). */
function halfCharacter(row: AnyRow, name: string): PlatestemmaError {
  const message = `${row.id}, ${name}: expected a text of whole characters, came one with half a surrogate pair`;
  return new PlatestemmaError('INPUT_INVALID', message, { place: { key: row.id, field: name } });
}

function checkLink(row: AnyRow, name: string, to: readonly string[], id: unknown): void {
  const kind = typeof id === 'string' ? kindOfId(id) : undefined;
  const fits =
    kind !== undefined && (to.includes(kind) || to.includes(isRecordKind(kind) ? 'any record' : 'any claim'));
  if (fits) return;
  throw new PlatestemmaError(
    'KIND_MISMATCH',
    `${row.id}, ${name}: expected the id of ${to.join(', ')}, came ${JSON.stringify(id)}`,
    {
      place: { key: row.id, field: name },
    },
  );
}
