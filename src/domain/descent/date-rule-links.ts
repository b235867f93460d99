import { type LinkKind, linksOfKind } from '../model/links.ts';
import { dateRules } from './date-rules.ts';

/**
 * Roles and fields over which dates are linked: a network is whole if, for each of its records, the rows that name it
 * there are known, and the records that those name. Without a claim the network says less; but where a plate is copied,
 * all its appearances must be known, since it may have been copied from any of them.
 */
export const dateRuleLinks: readonly LinkKind[] = [...new Set(dateRules.map(rule => rule.of))]
  .concat('Identity')
  .flatMap(linksOfKind);
