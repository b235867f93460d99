import type { ClaimOf } from '../model/row.ts';
import { dateVariable, type VariableEvent } from './date-variable.ts';

type DatedEvent = ClaimOf<'Dating'>['event'];

/** First and last variable of an event: the same for what happens on one day. */
const events: Readonly<Record<DatedEvent, readonly [first: VariableEvent, last: VariableEvent]>> = {
  MADE: ['made', 'made'],
  PUBLISHED: ['published', 'published'],
  INTRODUCED: ['introduced', 'introduced'],
  ACQUIRED: ['acquired', 'acquired'],
  SEEN: ['seen', 'seen'],
  LIVED: ['born', 'died'],
  RAN: ['began', 'ended'],
};

/** The day on which an event of a record began. */
export function firstDayOf(record: string, event: DatedEvent): string {
  return dateVariable(record, events[event][0]);
}

/** The day on which an event of a record ended. */
export function lastDayOf(record: string, event: DatedEvent): string {
  return dateVariable(record, events[event][1]);
}
