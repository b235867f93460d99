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

/** Claims that count, of some editions, their plates and the surfaces of these. */
export interface PlateClaims {
  readonly descents: readonly ClaimOf<'EditionDescent'>[];
  readonly appearances: readonly ClaimOf<'Appearance'>[];
  readonly printings: readonly ClaimOf<'PrintedFrom'>[];
  readonly castings: readonly ClaimOf<'Casting'>[];
  readonly copyings: readonly ClaimOf<'Copying'>[];
}

/**
 * Plates of each edition, by id of the appearance, each with what joins it to a plate of an edition that this one
 * descends from: the surest, in the nearest edition. A cast of a surface is taken as that surface. Then plates of the
 * editions that it descends from directly to which none of its own is joined.
 */
export function platesOfEditions(
  editions: readonly string[],
  claims: PlateClaims,
): ReadonlyMap<string, readonly PlateInEdition[]> {
  const index = indexOf(claims);
  const parentsOf = (edition: string) => [
    ...new Set((index.descents.get(edition) ?? []).map(({ earlier }) => earlier)),
  ];
  return new Map(
    editions.map(edition => {
      const own = index.present.get(edition) ?? [];
      const earlier = earlierPlates(ancestors(edition, parentsOf), index);
      const joins = own.map(appearance => joinsOf(appearance, earlier, index));
      const joined = new Set(joins.flat().map(({ from }) => from?.plate));
      const left = new Map(
        parentsOf(edition)
          .flatMap(parent => index.present.get(parent) ?? [])
          .filter(({ plate }) => !joined.has(plate))
          .toReversed()
          .map(appearance => [appearance.plate, leftBehind(appearance, index.absent.get(edition) ?? [])]),
      );
      return [edition, [...joins.map((of, i) => of[0] ?? fresh(own[i]!)), ...[...left.values()].toReversed()]];
    }),
  );
}

interface Index {
  readonly present: ReadonlyMap<string, readonly ClaimOf<'Appearance'>[]>;
  readonly absent: ReadonlyMap<string, readonly ClaimOf<'Appearance'>[]>;
  readonly descents: ReadonlyMap<string, readonly ClaimOf<'EditionDescent'>[]>;
  /** By the copy. */
  readonly copyings: ReadonlyMap<string, readonly ClaimOf<'Copying'>[]>;
  /** Surfaces that a plate was printed from, and those that they were cast from, with the claims that say so. */
  surfacesOf(plate: string): ReadonlyMap<string, readonly string[]>;
}

function indexOf({ appearances, descents, printings, castings, copyings }: PlateClaims): Index {
  const byEdition = (presence: 'PRESENT' | 'ABSENT') =>
    Map.groupBy(
      appearances.filter(claim => claim.presence === presence),
      claim => claim.edition,
    );
  return {
    present: byEdition('PRESENT'),
    absent: byEdition('ABSENT'),
    descents: Map.groupBy(descents, claim => claim.later),
    copyings: Map.groupBy(copyings, claim => claim.copy),
    surfacesOf: surfacesBy(
      Map.groupBy(printings, claim => claim.picture),
      Map.groupBy(castings, claim => claim.cast),
    ),
  };
}

function surfacesBy(
  printings: ReadonlyMap<string, readonly ClaimOf<'PrintedFrom'>[]>,
  castings: ReadonlyMap<string, readonly ClaimOf<'Casting'>[]>,
): Index['surfacesOf'] {
  const known = new Map<string, ReadonlyMap<string, readonly string[]>>();
  return plate => {
    const before = known.get(plate);
    if (before !== undefined) return before;
    const surfaces = new Map<string, readonly string[]>();
    for (const { id, matrix } of printings.get(plate) ?? []) if (!surfaces.has(matrix)) surfaces.set(matrix, [id]);
    for (const [surface, by] of surfaces)
      for (const { id, parent } of castings.get(surface) ?? [])
        if (!surfaces.has(parent)) surfaces.set(parent, [...by, id]);
    known.set(plate, surfaces);
    return surfaces;
  };
}

/** Editions that it descends from, nearest first, itself left out. */
function ancestors(edition: string, parentsOf: (edition: string) => readonly string[]): readonly string[] {
  const seen = new Set([edition]);
  for (const at of seen) for (const parent of parentsOf(at)) seen.add(parent);
  seen.delete(edition);
  return [...seen];
}

/** Nearest appearance of each plate, and of each surface, in earlier editions. */
interface EarlierPlates {
  readonly plates: ReadonlyMap<string, ClaimOf<'Appearance'>>;
  readonly surfaces: ReadonlyMap<
    string,
    { readonly appearance: ClaimOf<'Appearance'>; readonly by: readonly string[] }
  >;
}

function earlierPlates(editions: readonly string[], { present, surfacesOf }: Index): EarlierPlates {
  const plates = new Map<string, ClaimOf<'Appearance'>>();
  const surfaces = new Map<string, { readonly appearance: ClaimOf<'Appearance'>; readonly by: readonly string[] }>();
  for (const appearance of editions.flatMap(edition => present.get(edition) ?? [])) {
    if (plates.has(appearance.plate)) continue;
    plates.set(appearance.plate, appearance);
    for (const [surface, by] of surfacesOf(appearance.plate))
      if (!surfaces.has(surface)) surfaces.set(surface, { appearance, by });
  }
  return { plates, surfaces };
}

/** What joins a plate to those of earlier editions, the surest first. */
function joinsOf(
  { id, plate }: ClaimOf<'Appearance'>,
  { plates, surfaces }: EarlierPlates,
  { copyings, surfacesOf }: Index,
): readonly PlateInEdition[] {
  const join = (fate: PlateFate, before: ClaimOf<'Appearance'>, by: readonly string[]): PlateInEdition => ({
    plate,
    fate,
    from: { plate: before.plate, edition: before.edition },
    by: [id, before.id, ...by],
  });
  const same = plates.get(plate);
  const shared = [...surfacesOf(plate)].flatMap(([surface, by]) => {
    const other = surfaces.get(surface);
    if (other === undefined || other.appearance.plate === plate) return [];
    return [join('SAME_SURFACE', other.appearance, [...new Set([...by, ...other.by])])];
  });
  const copied = (copyings.get(plate) ?? []).flatMap(copying => {
    const before = plates.get(copying.source);
    return before === undefined ? [] : [join('COPIED', before, [copying.id])];
  });
  return [...(same === undefined ? [] : [join('WENT_ALONG', same, [])]), ...shared, ...copied];
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
