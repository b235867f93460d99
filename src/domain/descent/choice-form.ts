import type { DateChoice } from './dates-network.ts';

/** Whether a choice says anything: an open one, or one of which an option says nothing, does not. */
export function saysSomething({ open, options }: DateChoice): boolean {
  return !open && options.every(({ bounds, links }) => bounds.length + links.length > 0);
}

/**
 * DAYS: all options bound the days of one variable. LATER: all say that one variable is no earlier than others. MIXED:
 * anything else.
 */
export function choiceForm({ options }: DateChoice): 'DAYS' | 'LATER' | 'MIXED' {
  const variables = new Set(options.flatMap(({ bounds }) => bounds.map(({ variable }) => variable)));
  const heads = new Set(options.flatMap(({ links }) => links.map(({ to }) => to)));
  const bounded = options.every(({ bounds }) => bounds.length === 1);
  if (heads.size === 0 && variables.size === 1 && bounded) return 'DAYS';
  const only = options.every(({ links }) => links.length > 0 && links.every(({ most }) => most === undefined));
  return variables.size === 0 && heads.size === 1 && only ? 'LATER' : 'MIXED';
}
