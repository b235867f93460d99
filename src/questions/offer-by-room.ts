import { openDay } from '../domain/reach/open-day.ts';
import { reachVerdicts } from '../domain/reach/verdict.ts';
import type { NearestWindows } from './nearest-windows.ts';
import { firstAfter } from './window-runs.ts';
import type { ColumnVerdicts } from './window-verdicts.ts';

/** Stands for room that an open end leaves open: more than any, and still a number that a cursor can carry. */
export const openRoom = Number.MAX_SAFE_INTEGER;

const inEvery = reachVerdicts.indexOf('IN_EVERY_CASE');
const inSome = reachVerdicts.indexOf('IN_SOME_CASES');
const inNone = reachVerdicts.indexOf('IN_NO_CASE');

/**
 * Offers windows by verdict and by the days of room nearest to none. Where room is told from cut days it begins at the
 * cut day of each key and goes outward until windows are too far to be wanted; else it looks at every window.
 */
export function offerByRoom(judged: ColumnVerdicts, nearest: NearestWindows): void {
  const { columns, runs, alone } = judged;
  if (!judged.plain) {
    judged.all().forEach((verdict, at) => {
      if (nearest.takes(verdict)) nearest.offer(verdict, roomAt(judged, at, verdict), columns, at);
    });
    return;
  }
  for (const at of runs.apart) {
    const verdict = alone(at);
    if (nearest.takes(verdict)) nearest.offer(verdict, roomAt(judged, at, verdict), columns, at);
  }
  for (let run = 0; run < runs.keys.length && nearest.takes(inEvery); run++) offerInEvery(judged, run, nearest);
  for (let run = 0; run < runs.keys.length && nearest.takes(inSome); run++) offerInSome(judged, run, nearest);
  for (let run = 0; run < runs.keys.length && nearest.takes(inNone); run++) offerInNone(judged, run, nearest);
}

function roomAt({ room }: ColumnVerdicts, at: number, verdict: number): number {
  return Math.min(Math.abs(room(at, verdict)), openRoom);
}

/** From the last day that is in time on every reckoning back. */
function offerInEvery({ columns, runs, every }: ColumnVerdicts, run: number, nearest: NearestWindows): void {
  const { places, days } = runs.byLast;
  const cut = every[runs.keys[run]!]!;
  const from = runs.starts[run]!;
  const least = Math.max(0, nearest.least(inEvery));
  for (let i = firstAfter(days, cut - least, from, runs.starts[run + 1]!) - 1; i >= from; i--) {
    if (cut - days[i]! > nearest.most(inEvery)) return;
    nearest.offer(inEvery, cut - days[i]!, columns, places[i]!);
  }
}

/** From the last first day that is in time back; open ones come last. */
function offerInSome({ columns, runs, every, some }: ColumnVerdicts, run: number, nearest: NearestWindows): void {
  const { places, days } = runs.byStart;
  const key = runs.keys[run]!;
  const from = runs.starts[run]!;
  for (let i = firstAfter(days, some[key]!, from, runs.starts[run + 1]!) - 1; i >= from; i--) {
    if (columns.last[places[i]!]! <= every[key]!) continue;
    const room = days[i]! <= -openDay ? openRoom : Math.min(some[key]! - days[i]!, openRoom);
    if (room > nearest.most(inSome)) return;
    nearest.offer(inSome, room, columns, places[i]!);
  }
}

/** From the first first day that is too late on. */
function offerInNone({ columns, runs, some }: ColumnVerdicts, run: number, nearest: NearestWindows): void {
  const { places, days } = runs.byStart;
  const cut = some[runs.keys[run]!]!;
  const end = runs.starts[run + 1]!;
  const least = Math.max(1, nearest.least(inNone));
  for (let i = firstAfter(days, cut + least - 1, runs.starts[run]!, end); i < end; i++) {
    const room = Math.min(days[i]! - cut, openRoom);
    if (room > nearest.most(inNone)) return;
    nearest.offer(inNone, room, columns, places[i]!);
  }
}
