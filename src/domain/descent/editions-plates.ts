import type { ClaimOf } from '../model/row.ts';

/**
 * What became of a plate from an earlier edition to a later one, surest first. NEW: nothing joins it to a plate of an
 * earlier one. LEFT_OUT: it is said not to be in the later one; NOT_KNOWN: nothing says whether it is.
 */
export const plateFates = ['WENT_ALONG', 'SAME_SURFACE', 'COPIED', 'NEW', 'LEFT_OUT', 'NOT_KNOWN'] as const;
export type PlateFate = (typeof plateFates)[number];

export interface PlateInEdition {
  readonly plate: string;
  readonly fate: PlateFate;
  /** The plate of the earlier edition, and that edition; absent: NEW. */
  readonly from?: { readonly plate: string; readonly edition: string };
  /** Ids of the claims that say it: its appearance in the later edition, if it is in it, first. */
  readonly by: readonly string[];
}

/** Claims that count, of some editions and their plates. */
export interface PlateClaims {
  readonly descents: readonly ClaimOf<'EditionDescent'>[];
  readonly appearances: readonly ClaimOf<'Appearance'>[];
  readonly printings: readonly ClaimOf<'PrintedFrom'>[];
  readonly copyings: readonly ClaimOf<'Copying'>[];
}

/**
 * Plates of each edition, by id of the appearance, each with what joins it to a plate of an edition that this one
 * descends from: the surest, in the nearest edition. Then plates of the editions that it descends from directly to which
 * none of its own is joined.
 */
export function platesOfEditions(
  editions: readonly string[],
  claims: PlateClaims,
): ReadonlyMap<string, readonly PlateInEdition[]> {
  const { present, absent, descents, printings, copyings } = indexOf(claims);
  const parentsOf = (edition: string) => [...new Set((descents.get(edition) ?? []).map(({ earlier }) => earlier))];
  return new Map(
    editions.map(edition => {
      const own = present.get(edition) ?? [];
      const earlier = ancestors(edition, parentsOf).flatMap(before => present.get(before) ?? []);
      const joins = own.map(appearance => joinsOf(appearance, earlier, printings, copyings));
      const joined = new Set(joins.flat().map(({ from }) => from?.plate));
      const left = new Map(
        parentsOf(edition)
          .flatMap(parent => present.get(parent) ?? [])
          .filter(({ plate }) => !joined.has(plate))
          .toReversed()
          .map(appearance => [appearance.plate, leftBehind(appearance, absent.get(edition) ?? [])]),
      );
      return [edition, [...joins.map((of, i) => of[0] ?? fresh(own[i]!)), ...[...left.values()].toReversed()]];
    }),
  );
}

interface Index {
  readonly present: ReadonlyMap<string, readonly ClaimOf<'Appearance'>[]>;
  readonly absent: ReadonlyMap<string, readonly ClaimOf<'Appearance'>[]>;
  readonly descents: ReadonlyMap<string, readonly ClaimOf<'EditionDescent'>[]>;
  /** By plate. */
  readonly printings: ReadonlyMap<string, readonly ClaimOf<'PrintedFrom'>[]>;
  /** By the copy. */
  readonly copyings: ReadonlyMap<string, readonly ClaimOf<'Copying'>[]>;
}

function indexOf({ appearances, descents, printings, copyings }: PlateClaims): Index {
  const byEdition = (presence: 'PRESENT' | 'ABSENT') =>
    Map.groupBy(
      appearances.filter(claim => claim.presence === presence),
      claim => claim.edition,
    );
  return {
    present: byEdition('PRESENT'),
    absent: byEdition('ABSENT'),
    descents: Map.groupBy(descents, claim => claim.later),
    printings: Map.groupBy(printings, claim => claim.picture),
    copyings: Map.groupBy(copyings, claim => claim.copy),
  };
}

/** Editions that it descends from, nearest first, itself left out. */
function ancestors(edition: string, parentsOf: (edition: string) => readonly string[]): readonly string[] {
  const seen = new Set([edition]);
  for (const at of seen) for (const parent of parentsOf(at)) seen.add(parent);
  seen.delete(edition);
  return [...seen];
}

/** All that joins a plate to those of earlier editions, which come nearest first; the surest first, then the nearest. */
function joinsOf(
  { id, plate }: ClaimOf<'Appearance'>,
  earlier: readonly ClaimOf<'Appearance'>[],
  printings: Index['printings'],
  copyings: Index['copyings'],
): readonly PlateInEdition[] {
  const join = (fate: PlateFate, before: ClaimOf<'Appearance'>, ...by: readonly string[]): PlateInEdition => ({
    plate,
    fate,
    from: { plate: before.plate, edition: before.edition },
    by: [id, before.id, ...by],
  });
  const surfaces = printings.get(plate) ?? [];
  const sources = copyings.get(plate) ?? [];
  return [
    ...earlier.filter(before => before.plate === plate).map(before => join('WENT_ALONG', before)),
    ...earlier.flatMap(before =>
      before.plate === plate
        ? []
        : surfaces.flatMap(own =>
            (printings.get(before.plate) ?? [])
              .filter(({ matrix }) => matrix === own.matrix)
              .map(other => join('SAME_SURFACE', before, own.id, other.id)),
          ),
    ),
    ...earlier.flatMap(before =>
      sources.filter(({ source }) => source === before.plate).map(copying => join('COPIED', before, copying.id)),
    ),
  ];
}

function fresh({ id, plate }: ClaimOf<'Appearance'>): PlateInEdition {
  return { plate, fate: 'NEW', by: [id] };
}

function leftBehind(
  { id, plate, edition }: ClaimOf<'Appearance'>,
  absent: readonly ClaimOf<'Appearance'>[],
): PlateInEdition {
  const said = absent.filter(claim => claim.plate === plate).map(claim => claim.id);
  const fate = said.length > 0 ? 'LEFT_OUT' : 'NOT_KNOWN';
  return { plate, fate, from: { plate, edition }, by: [...said, id] };
}
