import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackOf } from '../domain/conventions/slack-of.ts';
import { editionVerdicts } from '../domain/reach/edition-verdicts.ts';
import { publishedClasses } from '../domain/reach/published-window.ts';
import type { ReachEdition } from '../domain/reach/reach-edition-input.ts';
import { type ReachVerdict, reachVerdicts, type VerdictAndMargin } from '../domain/reach/verdict.ts';
import type { WindowGroups } from '../store/graph-store.ts';
import type { DatedColumns } from './dated-columns.ts';
import { detailWindows } from './detail-windows.ts';
import { profileOutlets } from './profile-outlets.ts';
import { recordedAccess } from './reach-inputs.ts';
import type { TargetFound } from './reach-target.ts';
import { detailAccesses } from './window-detail.ts';
import { windowDetails } from './window-details.ts';
import type { WindowPlaces } from './window-places.ts';

/** Windows with a detail that are judged one by one: their first and last day do not decide. */
export interface SingleWindows {
  has(columns: DatedColumns, at: number): boolean;
  /** Place of the verdict in `reachVerdicts`. */
  verdict(columns: DatedColumns, at: number): number;
  room(columns: DatedColumns, at: number, verdict: ReachVerdict): number;
}

/** Equal windows are judged once. */
export function singleWindows(
  groups: WindowGroups,
  { target, asked }: TargetFound,
  named: WindowPlaces,
  conventions: Conventions,
): SingleWindows {
  const windows = detailWindows(groups, named, conventions);
  const verdictOn = editionVerdicts(target, conventions);
  const details = windowDetails(groups);
  const slack = slackOf(conventions);
  const { outlets, ofProfile } = profileOutlets(groups);
  const width = details.length;
  const judged = new Map<number, VerdictAndMargin>();

  const edition = (profile: number, dateClass: number, detail: number): ReachEdition => ({
    published: windows.published(detail, dateClass),
    outlets: ofProfile[profile]!.map(number => {
      const { kind, place } = outlets[number]!;
      return { kind, place: named.places.get(place) };
    }),
    accesses: detailAccesses(details[detail]!, slack).map(access => recordedAccess(access, named.places, asked)),
  });
  const judge = ({ stored: { profile, dateClass, detail } }: DatedColumns, at: number): VerdictAndMargin => {
    const name = (profile[at]! * width + detail[at]!) * publishedClasses.length + dateClass[at]!;
    const known = judged.get(name) ?? verdictOn(edition(profile[at]!, dateClass[at]!, detail[at]!));
    judged.set(name, known);
    return known;
  };
  return {
    has: (columns, at) => columns.detail[at] !== 0 && !windows.endsDecide(columns, at),
    verdict: (columns, at) => reachVerdicts.indexOf(judge(columns, at).verdict),
    room: (columns, at, verdict) => {
      const { every, some } = judge(columns, at).margin;
      return (verdict === 'IN_EVERY_CASE' ? every : some) ?? Number.POSITIVE_INFINITY;
    },
  };
}
