import type { Layout } from '../layout/layout.ts';
import type { RoutedLane, RoutedUpright } from '../layout/route.ts';
import { measures } from '../measures.ts';
import { type LineLook, line } from './line.ts';
import { palette } from './palette.ts';
import { arrow, cross, sign, signWidth } from './signs.ts';
import { stepLooks } from './step-looks.ts';
import { n } from './xml.ts';

const { mark, corner } = measures;

/** All lines: first the uprights, then the level lines with their signs and arrows. */
export function stepLines({ routes, levels, spots }: Layout, of: string): string {
  const clear = (spot: number) => (spots[spot]!.node.id === of ? measures.ring : mark) + 2;
  const uprights = routes.map(route => upright(route, spots[route.source]!.x, levels[route.source]!));
  const lanes = routes.flatMap(route =>
    route.lanes.map(lane => laneLine(lane, spots[lane.from]!.x, levels[lane.from]!, levels[lane.to]!, clear(lane.to))),
  );
  return `<g fill="none">${uprights.join('')}${lanes.join('')}</g>`;
}

/** Up and down from the node to where the farthest lanes leave. */
function upright(route: RoutedUpright, nodeX: number, level: number): string {
  const look = commonLook(route);
  const ends = [route.top, route.bottom].filter(end => Math.abs(end - level) > 0.5);
  return ends
    .filter(end => !isStraight(route.x, nodeX, end, level))
    .map(end => line(stem(route.x, nodeX, level, end), look))
    .join('');
}

function stem(x: number, nodeX: number, level: number, end: number): string {
  const down = end > level ? 1 : -1;
  const to = `V${n(end - down * bend(end, level))}`;
  if (Math.abs(x - nodeX) <= mark) return `M${n(x)} ${n(level + down * (mark + 0.6))}${to}`;
  return `${shoulder(x, nodeX, level, down)}${to}`;
}

/** Out of the node, and round a shoulder to an upright that stands beside it. */
function shoulder(x: number, nodeX: number, level: number, down: 1 | -1): string {
  const out = level + down * measures.shoulder;
  const towards = x < nodeX ? -1 : 1;
  const from = nodeX + towards * 2.4;
  const first = `M${n(from)} ${n(level + down * mark)}V${n(out - down * 3)}Q${n(from)} ${n(out)} ${n(from + towards * 3)} ${n(out)}`;
  return `${first}H${n(x - towards * corner)}Q${n(x)} ${n(out)} ${n(x)} ${n(out + down * corner)}`;
}

/** The arrow takes the last of a lane, a slant towards the mark what is before it, the sign the next. */
const slant = { from: 10, to: 4 } as const;
const signFrom = 18;

function laneLine(lane: RoutedLane, nodeX: number, sourceLevel: number, level: number, clear: number): string {
  const { kind, certainty, sign: what } = lane.step;
  const look: LineLook = { form: stepLooks[kind].form, certainty, contrary: lane.contrary };
  const colour = lane.contrary ? palette.contradiction : palette.ink;
  const towards = lane.end >= lane.start ? 1 : -1;
  const tip = lane.end - towards * clear;
  const arrival = level + Math.max(-4, Math.min(4, lane.level - level));
  const turn = tip - towards * (lane.level === arrival ? slant.to : slant.from);
  const signAt = tip - towards * signFrom;
  return [
    line(`${departure(lane, nodeX, sourceLevel, towards)}H${n(turn)}`, look),
    lane.level === arrival
      ? ''
      : line(`M${n(turn)} ${n(lane.level)}L${n(tip - towards * slant.to)} ${n(arrival)}`, { ...look, form: 'single' }),
    arrow(tip, arrival, towards, colour),
    what === undefined ? '' : sign(what, signAt, lane.level, colour),
    lane.contrary ? crossOn(lane, signAt - towards * (signWidth / 2 + 8), towards, sourceLevel) : '',
  ].join('');
}

/** On the lane before its sign; where that is too short, on the upright. */
function crossOn(lane: RoutedLane, x: number, towards: 1 | -1, sourceLevel: number): string {
  return (x - lane.start) * towards > 6 ? cross(x, lane.level) : cross(lane.start, (lane.level + sourceLevel) / 2);
}

function departure(lane: RoutedLane, nodeX: number, sourceLevel: number, towards: 1 | -1): string {
  if (isStraight(lane.start, nodeX, lane.level, sourceLevel))
    return `M${n(nodeX + towards * (mark + 0.6))} ${n(lane.level)}`;
  const turn = bend(lane.level, sourceLevel);
  const down = lane.level > sourceLevel ? 1 : -1;
  return `M${n(lane.start)} ${n(lane.level - down * turn)}Q${n(lane.start)} ${n(lane.level)} ${n(lane.start + towards * turn)} ${n(lane.level)}`;
}

function isStraight(x: number, nodeX: number, level: number, sourceLevel: number): boolean {
  return level === sourceLevel && Math.abs(x - nodeX) <= mark;
}

function bend(level: number, sourceLevel: number): number {
  return Math.min(corner, Math.abs(level - sourceLevel) / 2);
}

/** What all steps on an upright have in common; where they differ it is a plain line, and each lane shows its own. */
function commonLook({ lanes, contrary }: RoutedUpright): LineLook {
  const forms = new Set(lanes.map(lane => stepLooks[lane.step.kind].form));
  const certainties = new Set(lanes.map(lane => lane.step.certainty));
  const [form] = forms.size === 1 ? forms : ['single' as const];
  const [certainty] = forms.size === 1 && certainties.size === 1 ? certainties : ['CERTAIN' as const];
  return { form: form!, certainty: certainty!, contrary };
}
