import type { Candidate } from './candidates.ts';
import type { Reason } from './reach-outcome.ts';
import { reachWords } from './reach-words.ts';
import type { MarginDays, VerdictAndMargin } from './verdict.ts';

/** What the reasons are made of. */
export interface Explained extends VerdictAndMargin {
  readonly cautious?: VerdictAndMargin | undefined;
  /** The way that decides; absent: there was nowhere to see it. */
  readonly decides: Candidate | undefined;
  /** Days before an imprint year from which it may have been for sale. */
  readonly ahead: number;
}

/** Why the answer is what it is, weightiest first. */
export function reasonsOf({ verdict, margin, cautious, decides, ahead }: Explained): readonly Reason[] {
  const reasons: Reason[] = [{ code: 'ROOM', message: `${reachWords[verdict]}: ${roomInWords(verdict, margin)}` }];
  if (decides !== undefined) reasons.push(...wayReasons(decides));
  if (ahead > 0) {
    reasons.push({
      code: 'IMPRINT_AHEAD',
      message: `it may have been for sale ${inDays(ahead)} before its imprint year`,
    });
  }
  if (cautious !== undefined) reasons.push(...markReasons(verdict, cautious));
  return reasons;
}

function roomInWords(verdict: VerdictAndMargin['verdict'], { every, some }: MarginDays): string {
  const earliest =
    some === undefined ? 'the earliest reckoning has no limit' : `${roomOf(some)} on the earliest reckoning`;
  const latest = every === undefined ? 'the latest reckoning has no limit' : `${roomOf(every)} on the latest reckoning`;
  if (verdict === 'IN_EVERY_CASE') return latest;
  return verdict === 'IN_NO_CASE'
    ? some === undefined
      ? 'nowhere to see it is recorded'
      : earliest
    : `${earliest}, ${latest}`;
}

/** Days of room, or days short. */
export function roomOf(days: number): string {
  return days < 0 ? `${inDays(-days)} short` : `${inDays(days)} of room`;
}

function inDays(days: number): string {
  return days === 1 ? '1 day' : `${days} days`;
}

function wayReasons({ outlet, stay, lag, access }: Candidate): readonly Reason[] {
  const reasons: Reason[] = [];
  if (access !== undefined) reasons.push({ code: 'ACCESS', message: 'it is recorded that it was there' });
  if (lag.flags.includes('PLACE_UNKNOWN')) {
    reasons.push({ code: 'PLACE_UNKNOWN', message: 'it is not known where it came from, or how far that is' });
  } else {
    const days = lag.most === undefined ? `${inDays(lag.least)} or more` : `${lag.least} to ${inDays(lag.most)}`;
    const ends = `from ${outlet.place?.name ?? 'a place not known'} to ${stay.place.name}`;
    reasons.push({ code: 'WAY', message: `${ends} in ${days} (${lag.route.by})` });
  }
  if (stay.from !== undefined || stay.to !== undefined) {
    reasons.push({ code: 'STAY', message: `seen during a stay at ${stay.place.name}` });
  }
  return reasons;
}

function markReasons(verdict: VerdictAndMargin['verdict'], cautious: VerdictAndMargin): readonly Reason[] {
  const mark: Reason = { code: 'MARK_WINDOW', message: 'the mark dates the body of the piece, not its decoration' };
  if (cautious.verdict === verdict) return [mark];
  const message = `with no end assumed for the decoration: ${reachWords[cautious.verdict]}; a date of the decoration itself would decide`;
  return [mark, { code: 'MARK_ANSWERS_DIFFER', message }];
}
