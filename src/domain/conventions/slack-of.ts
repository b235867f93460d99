import type { SlackConvention } from '../dates/slack.ts';
import { type SlackName, slacksUsed } from '../dates/slacks-used.ts';
import type { ConventionKey, Conventions } from './conventions.ts';

const known = new WeakMap<Conventions, SlackConvention>();

/** Key of the convention of each slack. */
export const slackKeys = {
  day: 'date.slack.day',
  month: 'date.slack.month',
  season: 'date.slack.season',
  year: 'date.slack.year',
  decade: 'date.slack.decade',
  century: 'date.slack.century',
  uncertainFactor: 'date.uncertainFactor',
  openSetBound: 'date.openSetBound',
} as const satisfies Readonly<Record<SlackName, ConventionKey>>;

/** How far approximate dates may lie from what is written, as the conventions say; the same object for the same conventions. */
export function slackOf(conventions: Conventions): SlackConvention {
  let slack = known.get(conventions);
  if (slack === undefined) {
    slack = makeSlack(conventions);
    known.set(conventions, slack);
  }
  return slack;
}

/** Keys of the conventions by which the days of some dates are read. */
export function slackKeysOf(dates: Iterable<string>, conventions: Conventions): ReadonlySet<ConventionKey> {
  const keys = new Set<ConventionKey>();
  for (const date of dates) for (const name of slacksUsed(date, slackOf(conventions))) keys.add(slackKeys[name]);
  return keys;
}

function makeSlack(conventions: Conventions): SlackConvention {
  const openSetBound = conventions.get(slackKeys.openSetBound);
  return {
    day: conventions.get(slackKeys.day),
    month: conventions.get(slackKeys.month),
    season: conventions.get(slackKeys.season),
    year: conventions.get(slackKeys.year),
    decade: conventions.get(slackKeys.decade),
    century: conventions.get(slackKeys.century),
    uncertainFactor: conventions.get(slackKeys.uncertainFactor),
    ...(typeof openSetBound === 'number' ? { openSetBound } : {}),
  };
}
