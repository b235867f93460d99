import type { SlackConvention } from '../dates/slack.ts';
import type { Conventions } from './conventions.ts';

const known = new WeakMap<Conventions, SlackConvention>();

/** How far approximate dates may lie from what is written, as the conventions say; the same object for the same conventions. */
export function slackOf(conventions: Conventions): SlackConvention {
  let slack = known.get(conventions);
  if (slack === undefined) {
    slack = makeSlack(conventions);
    known.set(conventions, slack);
  }
  return slack;
}

function makeSlack(conventions: Conventions): SlackConvention {
  const openSetBound = conventions.get('date.openSetBound');
  return {
    day: conventions.get('date.slack.day'),
    month: conventions.get('date.slack.month'),
    season: conventions.get('date.slack.season'),
    year: conventions.get('date.slack.year'),
    decade: conventions.get('date.slack.decade'),
    century: conventions.get('date.slack.century'),
    uncertainFactor: conventions.get('date.uncertainFactor'),
    ...(typeof openSetBound === 'number' ? { openSetBound } : {}),
  };
}
