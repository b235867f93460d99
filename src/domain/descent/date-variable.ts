/** What happens to a record or claim on one day; a life and a run have two such days each. */
export type VariableEvent =
  | 'made'
  | 'published'
  | 'introduced'
  | 'acquired'
  | 'seen'
  | 'arrived'
  | 'born'
  | 'died'
  | 'began'
  | 'ended';

/** One unknown day: of an event of a record or claim, at a place where the event is an arrival. */
export interface DateVariable {
  readonly of: string;
  readonly event: VariableEvent;
  readonly at?: string | undefined;
}

/** Name of a variable in a network: `edition-… published`, `edition-… arrived place-…`. */
export function dateVariable(of: string, event: VariableEvent, at?: string): string {
  return at === undefined ? `${of} ${event}` : `${of} ${event} ${at}`;
}

/** Inverse of `dateVariable`. */
export function readDateVariable(name: string): DateVariable {
  const [of = '', event, at] = name.split(' ');
  return { of, event: event as VariableEvent, at };
}
