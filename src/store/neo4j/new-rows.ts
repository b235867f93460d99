import type { KindName } from '../../domain/model/kinds.ts';
import { type LinkKind, linksOfKind } from '../../domain/model/links.ts';
import type { WrittenRow } from './written-batch.ts';

/** New rows of one kind that are created at once, and those of their links whose ends are there by then. */
export interface NewRows {
  readonly kind: KindName;
  readonly links: readonly LinkKind[];
  readonly rows: readonly WrittenRow[];
}

/** A link that is made once both its ends are there. */
export type LinkRow = readonly [from: string, to: string];

/**
 * In which order new rows are created, so that most of them find what they link to: kinds before those that link to them.
 * @returns the other links too, which are made when all rows are there
 */
export function inOrderOfLinks(rows: readonly WrittenRow[]): {
  readonly created: readonly NewRows[];
  readonly linkedLater: ReadonlyMap<LinkKind, readonly LinkRow[]>;
} {
  const kindOf = new Map(rows.map(({ id, kind }) => [id, kind]));
  const coming = Map.groupBy(rows, ({ kind }) => kind);
  const created: NewRows[] = [];
  const linkedLater = new Map<LinkKind, LinkRow[]>();
  const needs = new Map([...coming].map(([kind, those]) => [kind, kindsLinkedTo(those, kindOf)]));
  while (coming.size > 0) {
    const kind = firstWithoutNeed(coming, needs);
    const mayLink = (to: unknown): boolean => {
      const ofEnd = kindOf.get(to as string);
      return ofEnd === undefined || !coming.has(ofEnd);
    };
    const links = linksOfKind(kind);
    const byLinks = new Map<string, { readonly links: readonly LinkKind[]; readonly rows: WrittenRow[] }>();
    for (const row of coming.get(kind)!) {
      const named = links.filter(({ name }) => row.fields[name] !== undefined);
      const now = named.filter(({ name }) => mayLink(row.fields[name]));
      const key = now.map(({ name }) => name).join();
      const group = byLinks.get(key);
      if (group === undefined) byLinks.set(key, { links: now, rows: [row] });
      else group.rows.push(row);
      for (const link of named) {
        if (now.includes(link)) continue;
        const later = linkedLater.get(link) ?? [];
        linkedLater.set(link, later);
        later.push([row.id, row.fields[link.name] as string]);
      }
    }
    for (const group of byLinks.values()) created.push({ kind, ...group });
    coming.delete(kind);
  }
  return { created, linkedLater };
}

/** Other kinds of new rows that some link to. */
function kindsLinkedTo(rows: readonly WrittenRow[], kindOf: ReadonlyMap<string, KindName>): ReadonlySet<KindName> {
  const kinds = new Set<KindName>();
  for (const { kind, fields } of rows) {
    for (const { name } of linksOfKind(kind)) {
      const ofEnd = kindOf.get(fields[name] as string);
      if (ofEnd !== undefined && ofEnd !== kind) kinds.add(ofEnd);
    }
  }
  return kinds;
}

/** The first kind of which no row links to a kind that is still to come; the first of all where kinds link in a circle. */
function firstWithoutNeed(
  coming: ReadonlyMap<KindName, unknown>,
  needs: ReadonlyMap<KindName, ReadonlySet<KindName>>,
): KindName {
  const kinds = [...coming.keys()];
  return kinds.find(kind => [...needs.get(kind)!].every(need => !coming.has(need))) ?? kinds[0]!;
}
