import type { SlackConvention } from '../dates/slack.ts';
import type { Conventions } from './conventions.ts';

/** How far approximate dates may lie from what is written, as the conventions say. */
export function slackOf(conventions: Conventions): SlackConvention {
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
