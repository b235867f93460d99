import type { Day, DayRange } from '../dates/day-bounds.ts';

/**
 * Dates linked by claims: variables (each one day), the days that claims allow each of them, how many days at least and
 * at most lie between two of them, and alternatives of which at least one holds. Variables are those that are named.
 */
export interface DatesNetwork {
  readonly bounds: readonly DayBound[];
  readonly links: readonly DateLink[];
  readonly choices: readonly DateChoice[];
}

/** What a claim, a field of a record or an axiom rests on: who says it, and by which rule it follows. */
export interface DateGrounds {
  /** Id of the rule in `dateRules`, or another word where a question adds something of its own. */
  readonly rule: string;
  /** Ids of claims, of records whose fields say it, and of conventions; empty for an axiom. */
  readonly by: readonly string[];
}

/** The variable lies on one of the days. */
export interface DayBound extends DateGrounds {
  readonly variable: string;
  /** At least one range; disjoint, ascending. `[{}]` bounds nothing. */
  readonly days: readonly DayRange[];
  /** The days as recorded, where `days` begin earlier because imprint years run ahead. */
  readonly recorded?: readonly DayRange[] | undefined;
  /** Ids of the conventions that let them begin earlier. */
  readonly earlyBy?: readonly string[] | undefined;
}

/** From the day of one variable to that of another are at least and at most so many days; absent: not bounded. */
export interface DateLink extends DateGrounds {
  readonly from: string;
  readonly to: string;
  readonly least?: number | undefined;
  readonly most?: number | undefined;
}

/** At least one option holds, with all that it says. An open choice has one more that says nothing. */
export interface DateChoice {
  /** Id of the group of alternatives; absent where a rule of itself leaves a choice. */
  readonly group?: string | undefined;
  readonly open: boolean;
  readonly options: readonly DateOption[];
}

export interface DateOption {
  /** Id of the claim that is the alternative. Two options of a claim are two ways in which it can hold. */
  readonly claim: string;
  readonly bounds: readonly DayBound[];
  readonly links: readonly DateLink[];
}

/** Which end of the days of a variable. */
export type DayEnd = 'FIRST' | 'LAST';

/** What solving a network tells. Nothing in it depends on the order in which the network was given. */
export interface LinkedDates {
  /** Names of all variables, ascending. */
  readonly variables: readonly string[];
  /** Throws BROKEN_PROMISE for a name that is not of the network. */
  days(variable: string): LinkedDays;
  /** Why the days begin or end where they do; empty for an open end and where nothing but contradictions say it. */
  why(variable: string, end: DayEnd): readonly DateReason[];
  /** Stable order; at most as many as were asked for, `more` says whether some were left out. */
  contradictions(): readonly DateContradiction[];
  readonly more: boolean;
  /** Alternatives of every choice that a group of claims makes. */
  alternatives(): readonly AlternativeStanding[];
  /** Room of the claim, record or convention with an id, over all that it says outside alternatives. */
  room(id: string): DateRoom;
  /** False: some days may be wider than the claims allow (never narrower), and an alternative less possible. */
  readonly exact: boolean;
}

/**
 * Days by which what a claim says could be tightened until it contradicts the others, each by itself; negative where it
 * takes part in a contradiction: days short. Absent: it says nothing of the kind, or there is no end to it.
 */
export interface DateRoom {
  /** Its first day could be later. */
  readonly first?: number | undefined;
  /** Its last day could be earlier. */
  readonly last?: number | undefined;
  /** Its least number of days could be greater. */
  readonly least?: number | undefined;
  /** Its greatest number of days could be smaller. */
  readonly most?: number | undefined;
}

export interface LinkedDays {
  /** Hull of the days recorded for the variable itself; reversed where its own claims have no day in common. */
  readonly recorded: DayRange;
  /**
   * The days that are left by all claims. Where some of these contradict each other: by all but those that the
   * contradictions name, whichever is wrong; of a variable that they speak of, the days recorded that lie within these.
   */
  readonly linked: DayRange;
  /** The days recorded that lie within those: several ranges where they have gaps. */
  readonly parts: readonly DayRange[];
  /** Claims that speak of it contradict each other. */
  readonly contradictory: boolean;
}

/** A step of an explanation, in order from the recorded day to the variable that is explained. */
export type DateReason = BoundReason | LinkReason | ChoiceReason;

/** A day recorded for a variable: nothing before (FIRST) or after (LAST) it, nor in a gap between recorded days. */
export interface BoundReason extends DateGrounds {
  readonly kind: 'BOUND';
  readonly variable: string;
  readonly end: DayEnd;
  readonly day: Day;
  /** Days by which it is earlier than recorded, because imprint years run ahead. */
  readonly ahead?: number | undefined;
}

/** The days between two variables: at least (`LEAST`) or at most (`MOST`) so many. */
export interface LinkReason extends DateGrounds {
  readonly kind: 'LINK';
  readonly from: string;
  readonly to: string;
  readonly end: 'LEAST' | 'MOST';
  readonly days: number;
}

/** Whichever alternative holds, it leads there: each with its own explanation. */
export interface ChoiceReason {
  readonly kind: 'CHOICE';
  readonly group?: string | undefined;
  readonly options: readonly { readonly claim: string; readonly reasons: readonly DateReason[] }[];
}

/** Claims that cannot all be right. Without alternatives among them, each one of them taken away leaves none. */
export interface DateContradiction {
  /**
   * LOOP: links that lead back to where they began. DATES: recorded days that do not fit. NO_ALTERNATIVE: each of the
   * alternatives contradicts by itself.
   */
  readonly code: 'LOOP' | 'DATES' | 'NO_ALTERNATIVE';
  readonly message: string;
  /** Ids of claims, records and conventions, without repetition, in the order of the reasons. */
  readonly involved: readonly string[];
  readonly daysShort: number;
  readonly reasons: readonly DateReason[];
  /** A contradiction at the same place with fewer steps, if fewer days are short. */
  readonly smaller?: DateContradiction | undefined;
}

export interface AlternativeStanding {
  readonly group: string;
  readonly claim: string;
  /** It fits with all other claims. */
  readonly possible: boolean;
  /** None of the others fits, and nothing unrecorded may stand in its place. */
  readonly necessary: boolean;
  /** Why it does not fit. */
  readonly contradiction?: DateContradiction | undefined;
}
