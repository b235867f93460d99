import { conventionId } from '../../src/domain/conventions/convention-use.ts';
import type { Field, ItemField, Kind } from '../../src/domain/model/declaration.ts';
import {
  claimKindNames,
  claimKinds,
  type KindName,
  recordKindNames,
  recordKinds,
} from '../../src/domain/model/kinds.ts';
import type { AnyRow } from '../../src/domain/model/row.ts';
import { type Dice, randomDate } from './random-graph.ts';

/** Where rows made from declarations find what they name. */
export interface RandomLinks {
  /** Id of a row of a kind, which stands in a role, field or part of that name. */
  idOf(kind: KindName, name: string): string;
}

const kinds: readonly KindName[] = [...recordKindNames, ...claimKindNames];
const texts = ['the dog at the gate', 'A "b"\n', '花鳥図', '𠮷野', 'é', "d'après nature, 12"];

/** Conventions have the id and the form of their key: these may have such values, and say nothing of editions. */
const conventions = [
  { key: 'copy.minLag', value: 3, unit: 'd' },
  { key: 'copy.afterIssue', value: false },
  { key: 'person.minMakingAge', value: 14, unit: 'y' },
];

/** Rows of every kind, so many of each (3 at most), that name each other and have whatever their declarations let them have. */
export function randomRows(each: number, roll: Dice): readonly AnyRow[] {
  const idOf = (kind: KindName, i: number) =>
    kind === 'Convention' ? conventionId(conventions[i]!.key) : `${kind.toLowerCase()}-any-${i}`;
  const links: RandomLinks = { idOf: kind => idOf(kind, roll.below(each)) };
  const numbers = Array.from({ length: each }, (_, i) => i);
  return kinds.flatMap(kind =>
    numbers.map(i => {
      const row = randomRow(kind, idOf(kind, i), links, roll);
      if (row.kind !== 'Convention') return row;
      const { unit: _unit, ...convention } = row;
      return { ...convention, ...conventions[i]!, version: row.version + 1 };
    }),
  );
}

/** A row of a kind: what it must have, and about half of what it may. */
export function randomRow(kind: KindName, id: string, links: RandomLinks, roll: Dice): AnyRow {
  const declared: Kind = { ...recordKinds, ...claimKinds }[kind];
  const roles = declared.type === 'claim' ? Object.entries(declared.roles) : [];
  const has = ({ required }: { readonly required?: true }) => required === true || roll.chance(0.5);
  return {
    id,
    kind,
    ...Object.fromEntries(roles.filter(([, role]) => has(role)).map(([name, { to }]) => [name, link(to, name)])),
    ...values(declared.fields),
    ...(declared.type === 'record' ? commonOfRecords(roll) : commonOfClaims(link, roll)),
  } as AnyRow;

  function link(to: readonly string[], name: string): string {
    const of = roll.pick(to);
    if (of === 'any record') return links.idOf(roll.pick(recordKindNames), name);
    return links.idOf(of === 'any claim' ? roll.pick(claimKindNames) : (of as KindName), name);
  }

  function values(fields: Readonly<Record<string, Field>>): Readonly<Record<string, unknown>> {
    const some = Object.entries(fields).filter(([, field]) => has(field));
    return Object.fromEntries(some.map(([name, field]) => [name, filling(name, field)]));
  }

  function filling(name: string, field: Field | ItemField): unknown {
    const count = 1 + roll.below(2);
    if (field.type === 'items') return Array.from({ length: count }, () => values(field.item));
    return 'many' in field && field.many === true
      ? Array.from({ length: count }, () => single(name, field))
      : single(name, field);
  }

  function single(name: string, field: Exclude<Field, { type: 'items' }>): unknown {
    switch (field.type) {
      case 'text':
        return roll.pick(texts);
      case 'uri':
        return `https://example.org/${roll.below(9)}`;
      case 'language':
        return roll.pick(['de', 'zh-Hant']);
      case 'edtf':
        return randomDate(roll);
      case 'integer':
        return (field.least ?? 0) + roll.below(5);
      case 'number':
        return (field.least ?? 0) + roll.below(80) / 8;
      case 'flag':
        return roll.chance(0.5);
      case 'word':
        return roll.pick(Object.keys(field.of.words));
      case 'record':
        return link(field.to, name);
      case 'json':
        return { of: [roll.below(9), null, roll.pick(texts)] };
    }
  }
}

function commonOfRecords(roll: Dice): object {
  return {
    ...(roll.chance(0.5) ? { labels: [{ text: roll.pick(texts), language: 'en' }, { text: roll.pick(texts) }] } : {}),
    ...(roll.chance(0.3) ? { columns: { b: roll.pick(texts), a: '1' } } : {}),
    ...(roll.chance(0.3) ? { notes: [roll.pick(texts)] } : {}),
    ...(roll.chance(0.2) ? { notebook: 'of my own' } : {}),
  };
}

function commonOfClaims(link: (to: readonly string[], name: string) => string, roll: Dice): object {
  const seen = { photograph: link(['Photograph'], 'photograph'), region: [{ x: 1, y: 2.5, width: 10, height: 20 }] };
  const read = { reference: link(['Reference'], 'reference'), locator: 'p. 7', words: roll.pick(texts) };
  return {
    ...(roll.chance(0.2) ? { standing: 'WITHDRAWN', withdrawnBecause: roll.pick(texts) } : {}),
    ...(roll.chance(0.4) ? { stance: roll.pick(['HELD', 'WEIGHED', 'REJECTED']) } : {}),
    ...(roll.chance(0.4) ? { certainty: roll.pick(['CERTAIN', 'PROBABLE', 'POSSIBLE', 'DOUBTFUL']) } : {}),
    ...(roll.chance(0.5) ? { evidence: [seen, read, { claim: link(['any claim'], 'claim') }] } : {}),
    ...(roll.chance(0.4) ? { by: 'Ada', on: '2026-03-01' } : {}),
  };
}
