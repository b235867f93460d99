import type { DayRange } from '../dates/day-bounds.ts';
import { againstTime, type DateArcs } from './date-arcs.ts';
import type { DateChoice, DateLink, DateOption } from './dates-network.ts';
import { mirrorDays, type RecordedDomain } from './recorded-domain.ts';
import { componentsAgainst, type StrongComponents, strongComponents } from './strong-components.ts';

/** The network in one course of time: what makes days later, or, with days counted backwards, earlier. */
export interface Course {
  /** 1 in the course of time; -1 against it. */
  readonly sign: 1 | -1;
  readonly arcs: DateArcs;
  readonly components: StrongComponents;
  readonly domains: readonly RecordedDomain[];
  readonly links: readonly DateLink[];
  /** First day recorded for each variable; -Infinity if open. */
  readonly first: Float64Array;
  /** Last day recorded; Infinity if open, earlier than the first where recorded days have none in common. */
  readonly last: Float64Array;
  /** Days of all bounds of the variables that have gaps between them. */
  readonly gaps: ReadonlyMap<number, readonly (readonly DayRange[])[]>;
  /** Choices that make the day of a variable later, by its number. */
  readonly choices: ReadonlyMap<number, readonly CompiledChoice[]>;
}

/** The day of `head` is no earlier than that of one of the options, each as late as the latest of its arcs. */
export interface CompiledChoice {
  readonly choice: DateChoice;
  readonly head: number;
  readonly options: readonly CompiledOption[];
}

export interface CompiledOption {
  readonly option: DateOption;
  readonly arcs: readonly { readonly from: number; readonly weight: number; readonly link: DateLink }[];
}

/** The course of time of arcs and domains. */
export function courseOf(
  arcs: DateArcs,
  domains: readonly RecordedDomain[],
  links: readonly DateLink[],
  choices: readonly CompiledChoice[],
): Course {
  const [first, last] = [new Float64Array(domains.length), new Float64Array(domains.length)];
  const gaps = new Map<number, readonly (readonly DayRange[])[]>();
  for (let v = 0; v < domains.length; v += 1) {
    const domain = domains[v]!;
    first[v] = domain.first;
    last[v] = domain.last;
    if (domain.gaps) gaps.set(v, daysOf(domain));
  }
  const byHead = Map.groupBy(choices, ({ head }) => head);
  return { sign: 1, arcs, components: strongComponents(arcs), domains, links, first, last, gaps, choices: byHead };
}

/** Against the course of time choices are left aside: they make nothing earlier by themselves. */
export function courseAgainst({ arcs, components, domains, links, first, last, gaps }: Course): Course {
  const mirrored = [...gaps].map(([v, bounds]) => [v, bounds.map(mirrorDays)] as const);
  return {
    ...{ sign: -1, arcs: againstTime(arcs), components: componentsAgainst(components), domains, links },
    ...{ first: last.map(day => 0 - day), last: first.map(day => 0 - day) },
    ...{ gaps: new Map(mirrored), choices: new Map() },
  };
}

function daysOf({ bounds }: RecordedDomain): readonly (readonly DayRange[])[] {
  return bounds.map(({ days }) => days);
}
