import { mergeRanges } from '../dates/day-ranges.ts';
import { arcEnds } from './arc-ends.ts';
import { choiceForm, saysSomething } from './choice-form.ts';
import { type CompiledChoice, type Course, courseAgainst, courseOf } from './course.ts';
import { type DateArcs, dateArcs } from './date-arcs.ts';
import type { DateChoice, DateLink, DatesNetwork } from './dates-network.ts';
import { type DomainBound, type RecordedDomain, recordedDomain } from './recorded-domain.ts';

/** A network with numbered variables and arcs. */
export interface CompiledNetwork {
  readonly names: readonly string[];
  readonly numbers: ReadonlyMap<string, number>;
  readonly domains: readonly RecordedDomain[];
  readonly forward: Course;
  readonly backward: Course;
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
  const domains: RecordedDomain[] = new Array(numbers.size).fill(unbounded);
  for (const [variable, known] of bounds) domains[variable] = recordedDomain(known);
  const forward = courseOf(dateArcs(numbers.size, ends), domains, network.links, choices);
  return { names: [...numbers.keys()], numbers, domains, forward, backward: courseAgainst(forward) };
}

/** The same courses with other weights of their arcs. */
export function withArcs(network: CompiledNetwork, arcs: DateArcs): CompiledNetwork {
  const forward = { ...network.forward, arcs };
  return { ...network, forward, backward: courseAgainst(forward) };
}

const unbounded = recordedDomain([]);

function boundsByVariable(
  { bounds, choices }: DatesNetwork,
  closed: readonly DateChoice[],
  number: (name: string) => number,
): ReadonlyMap<number, readonly DomainBound[]> {
  const found = new Map<number, DomainBound[]>();
  const add = (variable: string, ...bound: readonly DomainBound[]) => {
    const at = number(variable);
    const known = found.get(at);
    if (known === undefined) found.set(at, [...bound]);
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
