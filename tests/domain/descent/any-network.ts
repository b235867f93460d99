import fc from 'fast-check';
import { mergeRanges } from '../../../src/domain/dates/day-ranges.ts';
import type {
  DateChoice,
  DateLink,
  DateOption,
  DatesNetwork,
  DayBound,
} from '../../../src/domain/descent/dates-network.ts';

export interface NetworkShape {
  /** Variables, named v0, v1, … */
  readonly variables: number;
  readonly links: number;
  readonly bounds: number;
  readonly choices: number;
  /** Days recorded lie between 0 and this. */
  readonly days: number;
  /** Greatest number of days of a link. */
  readonly lag: number;
  /** Greatest days beside least ones, and links in both directions. */
  readonly limits: boolean;
  readonly gaps: boolean;
  /** Options of any form; else those that bound one variable, or say that it is no earlier than others. */
  readonly mixed: boolean;
}

/** Networks in which each bound and link is a claim of its own. */
export function anyNetwork(shape: NetworkShape): fc.Arbitrary<DatesNetwork> {
  return fc
    .record({
      bounds: fc.array(anyBound(shape), { maxLength: shape.bounds }),
      links: fc.array(anyLink(shape), { maxLength: shape.links }),
      choices: fc.array(anyChoice(shape), { maxLength: shape.choices }),
    })
    .map(named);
}

function named({ bounds, links, choices }: DatesNetwork): DatesNetwork {
  let count = 0;
  const claim = () => {
    count += 1;
    return `claim ${count}`;
  };
  const own = <T extends DayBound | DateLink>(said: T): T => ({ ...said, by: [claim()] });
  const option = (said: DateOption): DateOption => {
    const id = claim();
    const by = <T extends DayBound | DateLink>(each: T): T => ({ ...each, by: [id] });
    return { claim: id, bounds: said.bounds.map(by), links: said.links.map(by) };
  };
  return {
    bounds: bounds.map(own),
    links: links.map(own),
    choices: choices.map((choice, i) => ({ ...choice, group: `group ${i}`, options: choice.options.map(option) })),
  };
}

function anyBound({ variables, days, gaps }: NetworkShape, variable = fc.nat(variables - 1)): fc.Arbitrary<DayBound> {
  const day = fc.nat(days);
  const range = fc.oneof(
    fc.tuple(day, day).map(([a, b]) => ({ lo: Math.min(a, b), hi: Math.max(a, b) })),
    day.map(lo => ({ lo })),
    day.map(hi => ({ hi })),
  );
  const ranges = fc.array(range, { minLength: 1, maxLength: gaps ? 3 : 1 }).map(mergeRanges);
  return fc.record({ variable: variable.map(name), days: ranges, rule: fc.constant('x1'), by: fc.constant([]) });
}

function anyLink({ variables, lag, limits }: NetworkShape): fc.Arbitrary<DateLink> {
  const ends = fc.tuple(fc.nat(variables - 1), fc.nat(variables - 1)).filter(([a, b]) => a !== b);
  const ordered = limits ? ends : ends.map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
  const least = fc.nat(lag);
  const days: fc.Arbitrary<{ least?: number; most?: number }> = limits
    ? fc.oneof(
        least.map(each => ({ least: each })),
        fc.tuple(least, least).map(([a, b]) => ({ least: Math.min(a, b), most: Math.max(a, b) })),
        least.map(each => ({ most: each })),
      )
    : least.map(each => ({ least: each }));
  return fc.tuple(ordered, days).map(([[from, to], limit]) => ({
    ...{ from: name(from), to: name(to), ...limit, rule: 'x20', by: [] },
  }));
}

function anyChoice(shape: NetworkShape): fc.Arbitrary<DateChoice> {
  const many = { minLength: 2, maxLength: 3 };
  const ofDays = fc.nat(shape.variables - 1).chain(variable =>
    fc.array(
      anyBound(shape, fc.constant(variable)).map(bound => option([bound], [])),
      many,
    ),
  );
  const later = fc.nat(shape.variables - 2).chain(before => {
    const link = fc.record({
      from: fc.nat(before).map(name),
      to: fc.constant(name(before + 1)),
      least: fc.nat(shape.lag),
    });
    const links = fc.array(
      link.map(each => ({ ...each, rule: 'x3', by: [] })),
      { minLength: 1, maxLength: 2 },
    );
    return fc.array(
      links.map(each => option([], each)),
      many,
    );
  });
  const mixed = fc.array(
    fc
      .tuple(fc.array(anyBound(shape), { maxLength: 1 }), fc.array(anyLink(shape), { maxLength: 2 }))
      .map(([bounds, links]) => option(bounds, links)),
    many,
  );
  const forms = shape.mixed ? [ofDays, later, mixed] : [ofDays, later];
  return fc.record({ open: fc.constantFrom(false, false, false, true), options: fc.oneof(...forms) });
}

function option(bounds: readonly DayBound[], links: readonly DateLink[]): DateOption {
  return { claim: '', bounds, links };
}

function name(variable: number): string {
  return `v${variable}`;
}
