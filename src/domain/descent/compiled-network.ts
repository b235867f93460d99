import type { DayRange } from '../dates/day-bounds.ts';
import { mergeRanges } from '../dates/day-ranges.ts';
import { choiceForm, saysSomething } from './choice-form.ts';
import { type ArcEnds, againstTime, type DateArcs, dateArcs } from './date-arcs.ts';
import type { DateChoice, DateLink, DateOption, DatesNetwork } from './dates-network.ts';
import { type DomainBound, mirrorDays, type RecordedDomain, recordedDomain } from './recorded-domain.ts';
import { componentsAgainst, type StrongComponents, strongComponents } from './strong-components.ts';

/** A network with numbered variables and arcs. */
export interface CompiledNetwork {
  readonly names: readonly string[];
  readonly numbers: ReadonlyMap<string, number>;
  readonly domains: readonly RecordedDomain[];
  readonly forward: Course;
  readonly backward: Course;
}

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

/** Numbers a network in the order in which it comes. Its choices are such that `choiceForm` names DAYS or LATER. */
export function compileNetwork(network: DatesNetwork): CompiledNetwork {
  const closed = network.choices.filter(saysSomething);
  const numbers = new Map<string, number>();
  const number = (name: string) => {
    const known = numbers.get(name);
    if (known !== undefined) return known;
    numbers.set(name, numbers.size);
    return numbers.size - 1;
  };
  const bounds = boundsByVariable(network, closed, number);
  const choices = closed.filter(choice => choiceForm(choice) === 'LATER').map(choice => compiledChoice(choice, number));
  for (const link of optionLinks(network.choices)) [number(link.from), number(link.to)];
  const ends = arcEnds(network.links, choices, number);
  const domains = Array.from({ length: numbers.size }, (_, v) => domainOf(bounds.get(v)));
  const forward = course({ arcs: dateArcs(numbers.size, ends), domains, links: network.links }, choices);
  return { names: [...numbers.keys()], numbers, domains, forward, backward: courseAgainst(forward) };
}

/** The same courses with other weights of their arcs. */
export function withArcs(network: CompiledNetwork, arcs: DateArcs): CompiledNetwork {
  const forward = { ...network.forward, arcs };
  return { ...network, forward, backward: courseAgainst(forward) };
}

const unbounded = recordedDomain([]);

function domainOf(bounds: readonly DomainBound[] | undefined): RecordedDomain {
  return bounds === undefined ? unbounded : recordedDomain(bounds);
}

function boundsByVariable(
  { bounds, choices }: DatesNetwork,
  closed: readonly DateChoice[],
  number: (name: string) => number,
): ReadonlyMap<number, readonly DomainBound[]> {
  const found = new Map<number, DomainBound[]>();
  const add = (variable: string, ...bound: readonly DomainBound[]) => {
    const known = found.get(number(variable));
    if (known === undefined) found.set(number(variable), [...bound]);
    else known.push(...bound);
  };
  for (const bound of bounds) add(bound.variable, { days: bound.days, recorded: bound.recorded ?? bound.days, bound });
  for (const choice of closed) {
    if (choiceForm(choice) !== 'DAYS') continue;
    const alternatives = choice.options.flatMap(option => option.bounds);
    const days = mergeRanges(alternatives.flatMap(bound => bound.days));
    const recorded = mergeRanges(alternatives.flatMap(bound => bound.recorded ?? bound.days));
    add(alternatives[0]!.variable, { days, recorded, choice });
  }
  for (const { bounds: named } of choices.flatMap(({ options }) => options)) {
    for (const { variable } of named) add(variable);
  }
  return found;
}

function optionLinks(choices: readonly DateChoice[]): readonly DateLink[] {
  return choices.flatMap(({ options }) => options.flatMap(({ links }) => links));
}

function compiledChoice(choice: DateChoice, number: (name: string) => number): CompiledChoice {
  const options = choice.options.map(option => ({
    option,
    arcs: option.links.map(link => ({ from: number(link.from), weight: link.least ?? -Infinity, link })),
  }));
  return { choice, head: number(choice.options[0]!.links[0]!.to), options };
}

function arcEnds(
  links: readonly DateLink[],
  choices: readonly CompiledChoice[],
  number: (name: string) => number,
): ArcEnds {
  const between = choices.flatMap(({ head, options }) => options.flatMap(({ arcs }) => arcs.map(a => [a.from, head])));
  const writer = arcWriter(2 * links.length + between.length);
  for (let n = 0; n < links.length; n += 1) {
    const { from, to, least, most } = links[n]!;
    const [a, b] = [number(from), number(to)];
    if (least !== undefined) writer.add(a, b, least, 2 * n);
    if (most !== undefined) writer.add(b, a, 0 - most, 2 * n + 1);
  }
  for (const [from, head] of between) writer.add(from!, head!, -Infinity, -1);
  return writer.ends();
}

/** @param most arcs at most */
function arcWriter(most: number) {
  const [from, to, source] = [new Int32Array(most), new Int32Array(most), new Int32Array(most)];
  const weight = new Float64Array(most);
  let arc = 0;
  return {
    add(start: number, end: number, days: number, said: number) {
      from[arc] = start;
      to[arc] = end;
      weight[arc] = days;
      source[arc] = said;
      arc += 1;
    },
    ends: () => ({
      ...{ from: from.subarray(0, arc), to: to.subarray(0, arc) },
      ...{ weight: weight.subarray(0, arc), source: source.subarray(0, arc) },
    }),
  };
}

type CourseParts = Pick<Course, 'arcs' | 'domains' | 'links'>;

function course(parts: CourseParts, choices: readonly CompiledChoice[]): Course {
  const first = Float64Array.from(parts.domains, domain => domain.first);
  const last = Float64Array.from(parts.domains, domain => domain.last);
  const byHead = Map.groupBy(choices, ({ head }) => head);
  const components = strongComponents(parts.arcs);
  return { ...parts, sign: 1, components, first, last, gaps: gapsOf(parts.domains, days => days), choices: byHead };
}

/** Choices are left aside against the course of time: they make nothing earlier by themselves. */
function courseAgainst({ arcs, domains, links, components, ...forward }: Course): Course {
  const [first, last] = [forward.last, forward.first].map(days => days.map(day => 0 - day)) as [
    Float64Array,
    Float64Array,
  ];
  return {
    ...{ sign: -1, domains, links, first, last },
    ...{ arcs: againstTime(arcs), components: componentsAgainst(components) },
    ...{ gaps: gapsOf(domains, mirrorDays), choices: new Map() },
  };
}

type Days = readonly DayRange[];

function gapsOf(domains: readonly RecordedDomain[], seen: (days: Days) => Days): ReadonlyMap<number, readonly Days[]> {
  const gaps = new Map<number, readonly Days[]>();
  domains.forEach(({ gaps: some, bounds }, v) => {
    if (!some) return;
    const days = bounds.map(bound => seen(bound.days));
    gaps.set(v, days);
  });
  return gaps;
}
