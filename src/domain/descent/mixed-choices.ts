import { choiceForm, saysSomething } from './choice-form.ts';
import { dateArcs } from './date-arcs.ts';
import type { DateChoice, DateLink, DatesNetwork } from './dates-network.ts';
import { strongComponents } from './strong-components.ts';

/**
 * Choices of a network that are to be solved case by case: those of mixed form, and those by which links may lead round
 * in a circle. All others come to rest in one pass in the course of time.
 */
export function mixedChoices(network: DatesNetwork): readonly DateChoice[] {
  const saying = network.choices.filter(saysSomething);
  if (saying.length === 0) return [];
  const inCircle = circles([...network.links, ...saying.flatMap(linksOf)]);
  return saying.filter(choice => {
    const form = choiceForm(choice);
    return form === 'MIXED' || (form === 'LATER' && linksOf(choice).some(inCircle));
  });
}

function linksOf({ options }: DateChoice): readonly DateLink[] {
  return options.flatMap(({ links }) => links);
}

/** Whether a link is part of a circle. */
function circles(links: readonly DateLink[]): (link: DateLink) => boolean {
  const numbers = new Map([...new Set(links.flatMap(({ from, to }) => [from, to]))].map((name, i) => [name, i]));
  const ends = links.flatMap(({ from, to, least, most }) => [
    ...(least === undefined ? [] : [[numbers.get(from)!, numbers.get(to)!]]),
    ...(most === undefined ? [] : [[numbers.get(to)!, numbers.get(from)!]]),
  ]);
  const arcs = dateArcs(numbers.size, {
    from: Int32Array.from(ends, ([from]) => from!),
    to: Int32Array.from(ends, ([, to]) => to!),
    weight: new Float64Array(ends.length),
    source: new Int32Array(ends.length),
  });
  const { of } = strongComponents(arcs);
  return ({ from, to }) => of[numbers.get(from)!] === of[numbers.get(to)!];
}
