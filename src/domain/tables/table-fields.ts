import type { Field, ItemField, ItemsField, Role } from '../model/declaration.ts';
import { claimKinds, isRecordKind, type KindName, recordKinds } from '../model/kinds.ts';
import { percentRectangle } from '../model/percent-rectangle.ts';
import { rowFields } from '../model/row-fields.ts';
import { certainty, stance, standing } from '../model/vocabularies.ts';

/** A part of the items in a field; evidence alone has items in its items. */
export type CellPart = ItemField | ItemsField;

/** Items whose parts may have items themselves. */
export interface CellItems extends Omit<ItemsField, 'item'> {
  readonly item: Readonly<Record<string, CellPart>>;
}

/** What a cell may hold: the value of a role, a field, or of a part that all records or all claims have. */
export type CellField = Exclude<Field, ItemsField> | CellItems;

export const evidence = {
  type: 'items',
  name: 'Evidence',
  doc: 'Why it is said.',
  item: {
    reference: { type: 'record', to: ['Reference'], doc: 'A source that can be cited.' },
    locator: { type: 'text', doc: 'Page, number or field in the reference.' },
    record: { type: 'record', to: ['any record'], doc: 'A record or exemplar that was seen.' },
    mark: { type: 'text', doc: 'Id of a mark within the record seen.' },
    claim: { type: 'record', to: ['any claim'], doc: 'Another claim.' },
    words: { type: 'text', doc: 'Words of a document.' },
    note: { type: 'text', doc: 'A note.' },
    photograph: { type: 'record', to: ['Photograph'], doc: 'A photograph on which it can be seen.' },
    region: { type: 'items', ...percentRectangle, doc: 'Where on the photograph it can be seen.' },
  },
} as const satisfies CellItems;

/** Parts that all records or all claims have and that have one column each; labels and free columns have several. */
const common: Readonly<Record<string, CellField>> = {
  sameAs: { type: 'uri', many: true, doc: 'Addresses of the same thing elsewhere.' },
  notes: { type: 'text', many: true, doc: 'Notes.' },
  notebook: { type: 'text', doc: 'Notebook that it belongs to.' },
  standing: { type: 'word', of: standing, doc: standing.doc },
  withdrawnBecause: { type: 'text', doc: 'Why it was withdrawn.' },
  supersededBy: { type: 'record', to: ['any claim'], doc: 'The claim that took its place.' },
  stance: { type: 'word', of: stance, doc: stance.doc },
  certainty: { type: 'word', of: certainty, doc: certainty.doc },
  alternativeTo: {
    type: 'record',
    to: ['Alternatives'],
    doc: 'Group of claims of which exactly one is true: all of one kind, and about the same.',
  },
  evidence,
  by: { type: 'text', doc: 'Who says so.' },
  on: { type: 'edtf', doc: 'Day on which it was said.' },
};

/** What has one column in the table of a kind, by name, in the order of columns. */
export function tableFields(kind: KindName): ReadonlyMap<string, CellField> {
  let fields = byKind.get(kind);
  if (fields === undefined) {
    const own = ownFields(kind);
    const named = rowFields(kind).flatMap(({ name }) => {
      const field = own[name] ?? common[name];
      return field === undefined ? [] : [[name, field] as const];
    });
    fields = new Map(named);
    byKind.set(kind, fields);
  }
  return fields;
}

const byKind = new Map<KindName, ReadonlyMap<string, CellField>>();

function ownFields(kind: KindName): Readonly<Record<string, CellField>> {
  if (isRecordKind(kind)) return recordKinds[kind].fields;
  const roles = Object.entries<Role>(claimKinds[kind].roles).map(([name, { to, doc }]) => [
    name,
    { type: 'record', to, doc },
  ]);
  return { ...Object.fromEntries(roles), ...claimKinds[kind].fields };
}
