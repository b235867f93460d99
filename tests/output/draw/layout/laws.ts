import type { Drawing } from '../../../../src/output/draw/drawing.ts';
import type { Layout } from '../../../../src/output/draw/layout/layout.ts';
import { nameDepth } from '../../../../src/output/draw/layout/name-of.ts';
import { placeInTime } from '../../../../src/output/draw/layout/place-in-time.ts';
import { measures } from '../../../../src/output/draw/measures.ts';

interface Box {
  readonly what: string;
  readonly node: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Nodes that do not stand at their date, and pairs that stand in another order than their dates. */
export function dateBreaches(drawing: Drawing, { spots, scale }: Layout): string[] {
  const places = placeInTime(drawing.nodes, drawing.steps);
  const dated = spots.flatMap(({ node, x }) => {
    const place = places.get(node.id);
    return place === undefined ? [] : [{ id: node.id, x, place }];
  });
  const astray = dated.filter(({ x, place }) => Math.abs(x - scale!.x(place)) > 1e-6);
  const turned = dated.flatMap(a =>
    dated.filter(b => a.place < b.place && a.x >= b.x).map(b => `${a.id} is not left of ${b.id}`),
  );
  return [...astray.map(({ id }) => `${id} does not stand at its date`), ...turned];
}

/** Marks, names and bars of one node that lie on those of another. */
export function overlaps(layout: Layout): string[] {
  const boxes = layout.spots.flatMap((_, i) => boxesOf(layout, i));
  return boxes.flatMap((a, i) =>
    boxes
      .slice(i + 1)
      .filter(b => a.node !== b.node && touch(a, b))
      .map(b => `${a.what} on ${b.what}`),
  );
}

/** Level lines that run through a mark or name that they do not join, or along another line. */
export function linesAstray(layout: Layout): string[] {
  const boxes = layout.spots.flatMap((_, i) => boxesOf(layout, i).filter(box => !box.what.startsWith('bar')));
  const lanes = layout.routes.flatMap(route => route.lanes);
  // A line ends before the mark that it comes to.
  const tip = ({ start, end }: (typeof lanes)[number]) => end + (start < end ? -1 : 1) * (measures.mark + 2);
  const asBox = (lane: (typeof lanes)[number]): Box => ({
    what: `line ${lane.from}-${lane.to}`,
    node: -1,
    left: Math.min(lane.start, tip(lane)),
    right: Math.max(lane.start, tip(lane)),
    top: lane.level - 0.5,
    bottom: lane.level + 0.5,
  });
  const through = lanes.flatMap(lane =>
    boxes
      .filter(box => !(box.what.startsWith('mark') && (box.node === lane.from || box.node === lane.to)))
      .filter(box => touch(asBox(lane), box))
      .map(box => `line ${lane.from}-${lane.to} through ${box.what}`),
  );
  const along = lanes.flatMap((a, i) =>
    lanes
      .slice(i + 1)
      .filter(b => touch(asBox(a), asBox(b)))
      .map(b => `${asBox(a).what} along ${asBox(b).what}`),
  );
  return [...through, ...along];
}

function boxesOf({ spots, levels, drops }: Layout, i: number): Box[] {
  const { x, nameX, name, bar, node } = spots[i]!;
  const [level, low] = [levels[i]!, levels[i]! + drops[i]!];
  const half = measures.mark;
  const box = (what: string, left: number, right: number, top: number, bottom: number): Box[] => [
    { what: `${what} ${node.id}`, node: i, left, right, top, bottom },
  ];
  const barY = low + (name.beside ? measures.barBeside : measures.bar);
  // Letters reach about 0.8 of their size above the line they stand on.
  const top = name.beside ? level + 2.8 - measures.nameSize * 0.8 : low + measures.nameBase - measures.nameSize * 0.8;
  return [
    ...box('mark', x - half, x + half, level - half, level + half),
    ...box('name', nameX, nameX + name.width, top, low + nameDepth(name, node.plates?.length ?? 0) - 3),
    ...(bar === undefined ? [] : box('bar', bar.from, bar.to, barY - 1.2, barY + 1.2)),
  ];
}

function touch(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
