import type { Field, RecordKind, Role } from '../../domain/model/declaration.ts';
import {
  type ClaimKindName,
  claimKinds,
  isRecordKind,
  type KindName,
  type RecordKindName,
  recordKinds,
} from '../../domain/model/kinds.ts';
import { certainty, stance } from '../../domain/model/vocabularies.ts';

/** What a mapping may fill of every record beside the fields of its kind. */
const ofRecords: Readonly<Record<string, Field>> = {
  labels: {
    type: 'items',
    name: 'Label',
    doc: 'Names and titles.',
    item: {
      text: { type: 'text', required: true, doc: 'The name.' },
      language: { type: 'language', doc: 'Language it is in.' },
    },
  },
  sameAs: { type: 'uri', many: true, doc: 'Addresses of the same thing elsewhere.' },
  notes: { type: 'text', many: true, doc: 'Notes.' },
};

/** What a mapping may fill of every claim beside the fields of its kind. */
const ofClaims: Readonly<Record<string, Field>> = {
  stance: { type: 'word', of: stance, doc: stance.doc },
  certainty: { type: 'word', of: certainty, doc: certainty.doc },
  by: { type: 'text', doc: 'Who says so.' },
};

/** Fields that a mapping can fill, by name: those of the kind, then those that all records or all claims have. */
export function mappedFields(kind: KindName): ReadonlyMap<string, Field> {
  let fields = known.get(kind);
  if (fields === undefined) {
    const own: Readonly<Record<string, Field>> = { ...recordKinds, ...claimKinds }[kind].fields;
    fields = new Map(Object.entries({ ...own, ...(isRecordKind(kind) ? ofRecords : ofClaims) }));
    known.set(kind, fields);
  }
  return fields;
}

const known = new Map<KindName, ReadonlyMap<string, Field>>();

/** Roles and fields that a kind must have and a mapping must give. */
export function neededParts(kind: KindName): readonly string[] {
  let needed = knownNeeded.get(kind);
  if (needed === undefined) {
    const roles = isRecordKind(kind) ? [] : rolesOf(kind);
    needed = [...roles, ...mappedFields(kind)].flatMap(([name, part]) => (part.required === true ? [name] : []));
    knownNeeded.set(kind, needed);
  }
  return needed;
}

const knownNeeded = new Map<KindName, readonly string[]>();

export function rolesOf(kind: ClaimKindName): ReadonlyMap<string, Role> {
  return new Map(Object.entries<Role>(claimKinds[kind].roles));
}

/** The field by which a record of the kind is named where it has no label. */
export function namingField(kind: RecordKindName): string | undefined {
  const { namedBy }: RecordKind = recordKinds[kind];
  return namedBy;
}
