import { connectedParts } from './connected-parts.ts';
import type { DateChoice, DatesNetwork } from './dates-network.ts';

/** Networks that have nothing to do with each other: each one with choices by itself, everything without them together. */
export function splitNetwork(network: DatesNetwork): readonly DatesNetwork[] {
  if (network.choices.length === 0) return [network];
  const numbers = new Map<string, number>();
  const number = (name: string) => {
    if (!numbers.has(name)) numbers.set(name, numbers.size);
  };
  for (const part of [network, ...network.choices.flatMap(({ options }) => options)]) {
    for (const { variable } of part.bounds) number(variable);
    for (const { from, to } of part.links) [number(from), number(to)];
  }
  const parts = connectedParts(numbers.size);
  for (const { from, to } of network.links) parts.join(numbers.get(from)!, numbers.get(to)!);
  const firstOf = new Map<DateChoice, string | undefined>();
  for (const choice of network.choices) {
    const [first, ...others] = namesInChoice(choice);
    firstOf.set(choice, first);
    for (const other of others) parts.join(numbers.get(first!)!, numbers.get(other)!);
  }
  const partOf = (name: string | undefined) => (name === undefined ? rest : parts.of(numbers.get(name)!));
  const partOfChoice = (choice: DateChoice) => partOf(firstOf.get(choice));
  const chosen = new Set([rest, ...network.choices.map(partOfChoice)]);
  const byPart = (name: string) => (chosen.has(partOf(name)) ? partOf(name) : rest);
  const bounds = Map.groupBy(network.bounds, ({ variable }) => byPart(variable));
  const links = Map.groupBy(network.links, ({ from }) => byPart(from));
  const choices = Map.groupBy(network.choices, partOfChoice);
  return [...chosen].map(part => ({
    bounds: bounds.get(part) ?? [],
    links: links.get(part) ?? [],
    choices: choices.get(part) ?? [],
  }));
}

/** What no choice has to do with. */
const rest = -1;

function namesInChoice({ options }: DateChoice): readonly string[] {
  return options.flatMap(({ bounds, links }) => [
    ...bounds.map(({ variable }) => variable),
    ...links.flatMap(({ from, to }) => [from, to]),
  ]);
}
