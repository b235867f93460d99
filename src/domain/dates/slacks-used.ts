import { remember } from '../text/remember.ts';
import { tryEdtf } from './edtf.ts';
import { defaultSlack, type SlackConvention } from './slack.ts';

export type SlackName = keyof SlackConvention;

/** As many as the readings of dates that are remembered. */
const remembered = 5000;
const bySlack = new WeakMap<SlackConvention, (text: string) => readonly SlackName[]>();

/**
 * The slacks by which the days of an EDTF expression were read: with any others of the same values they are the same. None
 * for what is no such expression.
 */
export function slacksUsed(text: string, slack: SlackConvention): readonly SlackName[] {
  const known = bySlack.get(slack) ?? remember(remembered, each => noted(each, slack));
  bySlack.set(slack, known);
  return known(text);
}

/** A question mark widens too where it may. */
const every: SlackConvention = Object.freeze({ ...defaultSlack, uncertainFactor: 1 });

/** Whether the days of an EDTF expression may be others by other slacks. */
export function restsOnSlack(text: string): boolean {
  return slacksUsed(text, every).length > 0;
}

function noted(text: string, slack: SlackConvention): readonly SlackName[] {
  const used = new Set<SlackName>();
  const noting = new Proxy(slack, {
    get: (from, name: SlackName) => {
      used.add(name);
      return from[name];
    },
  });
  tryEdtf(text, noting);
  return [...used].sort();
}
