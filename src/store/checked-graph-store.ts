import { kindOfId } from '../domain/model/id.ts';
import { isRecordKind } from '../domain/model/kinds.ts';
import { linksOfKind } from '../domain/model/links.ts';
import type { AnyRow } from '../domain/model/row.ts';
import { PlatestemmaError } from '../errors.ts';
import type { GraphStore, PutRow, WriteBatch } from './graph-store.ts';

/**
 * An engine whose input has been checked: rows are of the kind their id says, and what they name is of a kind that may
 * stand there. The form of rows is checked where they come in, by the schema of graph files.
 */
export function checkedGraphStore(engine: GraphStore): GraphStore {
  return new Proxy(engine, {
    get(target, name) {
      if (name === 'write') return (batch: WriteBatch) => writeChecked(target, batch);
      const member: unknown = Reflect.get(target, name);
      return typeof member === 'function' ? member.bind(target) : member;
    },
  });
}

async function writeChecked(engine: GraphStore, batch: WriteBatch): ReturnType<GraphStore['write']> {
  const seen = new Set<string>();
  for (const put of batch.put) {
    if (seen.has(put.row.id))
      throw new PlatestemmaError('INPUT_INVALID', `expected each row once in a change, came "${put.row.id}" twice`, {
        place: { key: put.row.id },
      });
    seen.add(put.row.id);
    checkPut(put);
  }
  return engine.write(batch);
}

function checkPut({ row, sort }: PutRow): void {
  const place = { key: row.id };
  if (kindOfId(row.id) !== row.kind) {
    throw new PlatestemmaError(
      'KIND_MISMATCH',
      `expected an id that begins with "${row.kind.toLowerCase()}-", came "${row.id}" for a ${row.kind}`,
      { place },
    );
  }
  if (isRecordKind(row.kind) !== (sort !== undefined)) {
    throw new PlatestemmaError('BROKEN_PROMISE', `records and only records come with a sort key: ${row.id}`, { place });
  }
  for (const link of linksOfKind(row.kind)) {
    const id = (row as unknown as Readonly<Record<string, unknown>>)[link.name];
    if (id !== undefined) checkLink(row, link.name, link.to, id);
  }
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
