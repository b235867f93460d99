import type { ItemsField, Kind } from './declaration.ts';
import { claimKindNames, claimKinds, type KindName, recordKindNames, recordKinds } from './kinds.ts';

/** A place in a row that holds the id of another row: a role of a claim, or a field of a record. */
export interface LinkKind {
  /** Kind of the row that holds the id. */
  readonly kind: KindName;
  /** Name of the role or field. */
  readonly name: string;
  /** Stable number, for stores; never reused. */
  readonly code: number;
  readonly to: readonly string[];
  readonly ofClaim: boolean;
}

/** Every link of every kind. A new kind goes last in its list, and new links of an old kind last in it: codes stay. */
export const linkKinds: readonly LinkKind[] = [...recordLinks(), ...claimLinks()];

const byName = new Map(linkKinds.map(link => [`${link.kind}.${link.name}`, link]));
const byKind = Map.groupBy(linkKinds, link => link.kind);

export function linkKind(kind: KindName, name: string): LinkKind | undefined {
  return byName.get(`${kind}.${name}`);
}

export function linksOfKind(kind: KindName): readonly LinkKind[] {
  return byKind.get(kind) ?? [];
}

/** A part of the items in a field that holds the id of another row. Stores find no row by it. */
export interface ItemLinkKind {
  readonly field: string;
  readonly part: string;
  readonly to: readonly string[];
}

export function itemLinksOfKind(kind: KindName): readonly ItemLinkKind[] {
  return itemLinks.get(kind) ?? [];
}

const itemLinks = new Map<KindName, readonly ItemLinkKind[]>(
  [...Object.values<Kind>(recordKinds), ...Object.values<Kind>(claimKinds)].map(({ kind, fields }) => [
    kind as KindName,
    Object.entries(fields).flatMap(([field, declared]) =>
      declared.type === 'items' ? linksOfItems(field, declared) : [],
    ),
  ]),
);

function linksOfItems(field: string, { item }: ItemsField): ItemLinkKind[] {
  return Object.entries(item).flatMap(([part, declared]) =>
    declared.type === 'record' ? [{ field, part, to: declared.to }] : [],
  );
}

/** Codes: records 1000 + 100 × place of the kind + place of the link; claims the same from 5000. */
function recordLinks(): LinkKind[] {
  return recordKindNames.flatMap((kind, k) =>
    Object.entries(recordKinds[kind].fields).flatMap(([name, field], f) =>
      field.type === 'record' ? [{ kind, name, code: 1000 + 100 * k + f, to: field.to, ofClaim: false }] : [],
    ),
  );
}

function claimLinks(): LinkKind[] {
  return claimKindNames.flatMap((kind, k) =>
    Object.entries(claimKinds[kind].roles).map(([name, role], r) => ({
      kind,
      name,
      code: 5000 + 100 * k + r,
      to: role.to,
      ofClaim: true,
    })),
  );
}
