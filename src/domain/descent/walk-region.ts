/** A rectangle on a picture, in percent of its width and height from the top left corner. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Which part of a picture is meant; UNKNOWN: some of it, or all. */
export type Region = 'WHOLE' | 'UNKNOWN' | readonly Rectangle[];

/** A region as a claim or detail gives it: undefined where it gives none, WHOLE where it covers the picture. */
export function regionGiven(rectangles: readonly Rectangle[] | undefined): Exclude<Region, 'UNKNOWN'> | undefined {
  const given = (rectangles ?? []).filter(({ width, height }) => width > 0 && height > 0);
  if (given.length === 0) return undefined;
  return area(given) >= wholeArea ? 'WHOLE' : given;
}

/**
 * Whether two regions of a picture are of one part: their common area is at least a share of the smaller one's.
 * PERHAPS where one of them is not known and the other is not the whole.
 */
export function regionsMeet(a: Region, b: Region, share: number): 'YES' | 'NO' | 'PERHAPS' {
  if (a === 'WHOLE' || b === 'WHOLE') return 'YES';
  if (a === 'UNKNOWN' || b === 'UNKNOWN') return 'PERHAPS';
  return area(common(a, b)) >= share * Math.min(area(a), area(b)) ? 'YES' : 'NO';
}

/** A region of a detail on the picture that it is part of; only a detail that is one rectangle says it closely. */
export function regionOnWhole(region: Region, detail: Exclude<Region, 'UNKNOWN'> | undefined): Region {
  if (detail === undefined) return 'UNKNOWN';
  if (detail === 'WHOLE') return region;
  const [frame] = detail;
  if (detail.length !== 1 || frame === undefined || typeof region === 'string') return detail;
  return region.map(({ x, y, width, height }) => ({
    x: frame.x + (x * frame.width) / 100,
    y: frame.y + (y * frame.height) / 100,
    width: (width * frame.width) / 100,
    height: (height * frame.height) / 100,
  }));
}

/** What a region of a picture is on a detail of it that it meets. */
export function regionOnDetail(region: Region, detail: Exclude<Region, 'UNKNOWN'> | undefined): Region {
  if (typeof region === 'string' || detail === 'WHOLE') return region;
  const [frame] = detail ?? [];
  if (detail?.length !== 1 || frame === undefined) return 'UNKNOWN';
  const inside = common(region, detail).map(({ x, y, width, height }) => ({
    x: ((x - frame.x) * 100) / frame.width,
    y: ((y - frame.y) * 100) / frame.height,
    width: (width * 100) / frame.width,
    height: (height * 100) / frame.height,
  }));
  return regionGiven(inside) ?? 'UNKNOWN';
}

/** Less than all of it by what is lost in reckoning with fractions. */
const wholeArea = 100 * 100 - 1e-6;

function common(a: readonly Rectangle[], b: readonly Rectangle[]): readonly Rectangle[] {
  return a.flatMap(one =>
    b.flatMap(other => {
      const [x, y] = [Math.max(one.x, other.x), Math.max(one.y, other.y)];
      const width = Math.min(one.x + one.width, other.x + other.width) - x;
      const height = Math.min(one.y + one.height, other.y + other.height) - y;
      return width > 0 && height > 0 ? [{ x, y, width, height }] : [];
    }),
  );
}

/** What rectangles cover together, where they overlap once: strip by strip between their edges. */
function area(rectangles: readonly Rectangle[]): number {
  if (rectangles.length === 1) return rectangles[0]!.width * rectangles[0]!.height;
  const edges = [...new Set(rectangles.flatMap(({ x, width }) => [x, x + width]))].sort((a, b) => a - b);
  let covered = 0;
  for (const [i, left] of edges.slice(0, -1).entries()) {
    const right = edges[i + 1]!;
    const across = rectangles.filter(({ x, width }) => x <= left && x + width >= right);
    covered += (right - left) * coveredHeight(across);
  }
  return covered;
}

function coveredHeight(across: readonly Rectangle[]): number {
  let covered = 0;
  let below = -Infinity;
  for (const { y, height } of across.toSorted((a, b) => a.y - b.y)) {
    covered += Math.max(0, y + height - Math.max(y, below));
    below = Math.max(below, y + height);
  }
  return covered;
}
