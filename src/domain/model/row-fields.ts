import type { Field, ItemField, Role } from './declaration.ts';
import { claimKinds, isRecordKind, type KindName, recordKinds } from './kinds.ts';

/** How a value of a row is kept: one scalar, the id of another row, or a value with parts of its own. */
export type FieldShape = 'text' | 'integer' | 'number' | 'flag' | 'link' | 'json';

export interface RowField {
  readonly name: string;
  readonly shape: FieldShape;
  /** Number of the schema of stores that first has it in a kind that was there before; absent: as long as the kind. */
  readonly since?: number;
}

const recordBase: readonly RowField[] = [
  { name: 'labels', shape: 'json' },
  { name: 'sameAs', shape: 'json' },
  { name: 'notes', shape: 'json' },
  { name: 'columns', shape: 'json' },
  { name: 'notebook', shape: 'text' },
];

const claimBase: readonly RowField[] = [
  { name: 'standing', shape: 'text' },
  { name: 'withdrawnBecause', shape: 'text' },
  { name: 'supersededBy', shape: 'text' },
  { name: 'stance', shape: 'text' },
  { name: 'certainty', shape: 'text' },
  { name: 'alternativeTo', shape: 'text' },
  { name: 'evidence', shape: 'json' },
  { name: 'by', shape: 'text' },
  { name: 'on', shape: 'text' },
  { name: 'notebook', shape: 'text' },
];

/**
 * What a row of a kind may have beside `id` and `kind`, in the order in which every store answers it: roles, fields as
 * declared, then what all records or all claims have.
 */
export function rowFields(kind: KindName): readonly RowField[] {
  return byKind.get(kind)!;
}

const byKind = new Map<KindName, readonly RowField[]>(
  [...Object.keys(recordKinds), ...Object.keys(claimKinds)].map(name => {
    const kind = name as KindName;
    return [kind, isRecordKind(kind) ? [...ownFields(recordKinds[kind].fields), ...recordBase] : claimFields(kind)];
  }),
);

function claimFields(kind: Exclude<KindName, keyof typeof recordKinds>): RowField[] {
  const roles = Object.entries<Role>(claimKinds[kind].roles).map(([name, role]) => ({
    ...{ name, shape: 'link' as const },
    ...addedIn(role),
  }));
  return [...roles, ...ownFields(claimKinds[kind].fields), ...claimBase];
}

function ownFields(fields: Readonly<Record<string, Field>>): RowField[] {
  return Object.entries(fields).map(([name, field]) => ({ name, shape: shapeOf(field), ...addedIn(field) }));
}

function addedIn({ since }: Field | Role): Pick<RowField, 'since'> {
  return since === undefined ? {} : { since };
}

function shapeOf(field: Field | ItemField): FieldShape {
  if ('many' in field && field.many) return 'json';
  switch (field.type) {
    case 'record':
      return 'link';
    case 'integer':
    case 'number':
    case 'flag':
      return field.type;
    case 'items':
    case 'json':
      return 'json';
    default:
      return 'text';
  }
}
