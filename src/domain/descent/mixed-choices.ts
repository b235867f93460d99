import { arcEnds } from './arc-ends.ts';
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
  const numbers = new Map<string, number>();
  for (const name of links.flatMap(({ from, to }) => [from, to])) {
    if (!numbers.has(name)) numbers.set(name, numbers.size);
  }
  const ends = arcEnds(links, [], name => numbers.get(name)!);
  const { of } = strongComponents(dateArcs(numbers.size, ends));
  return ({ from, to }) => of[numbers.get(from)!] === of[numbers.get(to)!];
}
