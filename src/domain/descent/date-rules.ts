import { accessRules } from './access-date-rules.ts';
import { copyingRules } from './copying-date-rules.ts';
import type { DateRule, SharedDateRule } from './date-rule.ts';
import { datingRules } from './dating-date-rules.ts';
import { editionRules } from './edition-date-rules.ts';
import { objectRules } from './object-date-rules.ts';
import { personRules } from './person-date-rules.ts';
import { printingRules } from './printing-date-rules.ts';
import { recordRules } from './record-date-rules.ts';
import { sharedRules } from './shared-date-rules.ts';

/**
 * The rules by which claims and records bound and link dates, one row an inequality. Every kind, role or event that is
 * not among them says nothing of dates. A new kind needs a row here and its test, nothing else.
 */
export const dateRules: readonly DateRule[] = [
  ...datingRules,
  ...copyingRules,
  ...editionRules,
  ...printingRules,
  ...accessRules,
  ...personRules,
  ...objectRules,
  ...recordRules,
];

/** The rules that look at all variables of a network at once. */
export const sharedDateRules: readonly SharedDateRule[] = sharedRules;
