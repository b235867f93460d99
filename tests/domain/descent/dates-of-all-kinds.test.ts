import { expect, test } from 'vitest';
import { handednessLinksOf } from '../../../src/domain/descent/handedness-links-of.ts';
import { claimKindNames, type KindName, recordKindNames } from '../../../src/domain/model/kinds.ts';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import { dice } from '../../support/random-graph.ts';
import { randomRow } from '../../support/random-rows.ts';
import { seedOfRun } from '../../support/runs.ts';
import { apart, networkOf } from './claims.ts';

/** All that a row of a kind may say of dates, whatever it names and has, in the names of its roles and fields. */
const saysOfDates: Partial<Readonly<Record<KindName, readonly string[]>>> = {
  Motif: ['piece made <= its made'],
  Detail: ['of made <= its made'],
  Dating: ['of began <= of ended', 'of born <= of died', 'of event'],
  Appearance: ['plate made <= edition published', 'state made <= edition published'],
  Copying: ['source made <= copy made', 'through made <= copy made', 'through published <= copy made'],
  EditionDescent: ['earlier published <= later published'],
  PartOf: ['part published <= whole ended', 'part published <= whole published', 'whole began <= part published'],
  PrintedFrom: ['matrix made <= picture made'],
  Casting: ['parent made <= cast made'],
  Imprint: ['edition published <= edition arrived'],
  Attribution: ['agent born <= record made', 'record made <= agent died'],
  Stay: ['its began', 'its began <= its ended', 'its ended', 'its ended <= who died', 'who born <= its began'],
  Access: ['its seen', 'what arrived <= its seen', 'what published <= its seen', 'what published <= what arrived'],
  Sequence: ['earlier event <= later event'],
  Follows: ['design introduced <= record made'],
  Custody: ['its acquired', 'thing made <= its acquired', 'thing published <= its acquired'],
};

const saysOfHandedness: readonly KindName[] = [
  ...(['State', 'Detail', 'Copying', 'PrintedFrom', 'Casting', 'Identity', 'Comparison'] as const),
];

const kinds: readonly KindName[] = [...recordKindNames, ...claimKindNames];
const seed = seedOfRun();

/** Many rows of a kind, each with another choice of what it names and has. What it names tells its role by its id. */
function rowsOf(kind: KindName): readonly AnyRow[] {
  const idOf = (of: KindName, name: string) => `${of.toLowerCase()}-as-${name}`;
  const roll = dice(seed);
  return Array.from({ length: 600 }, () => {
    const row = randomRow(kind, `${kind.toLowerCase()}-of-its`, { idOf }, roll);
    const role = kind === 'Attribution' ? { role: roll.pick(['art', 'egr', 'dsr', 'pbl']) } : {};
    return { ...row, ...role, standing: 'STANDING', stance: 'HELD', certainty: 'CERTAIN' } as unknown as AnyRow;
  });
}

/** What a copying went through, an access was to and a custody is of: rules ask what edition that is. */
const named: readonly AnyRow[] = [
  { id: 'state-as-through', kind: 'State', matrix: 'matrix-as-through', order: 1 },
  ...['through', 'what', 'thing'].flatMap((role): readonly AnyRow[] => [
    { id: `edition-as-${role}`, kind: 'Edition', work: 'work-as-any', title: 'Views' },
    { id: `exemplar-as-${role}`, kind: 'Exemplar', edition: `edition-as-${role}` },
  ]),
];

function datesSaid(row: AnyRow): readonly string[] {
  const { bounds, links } = networkOf([row, ...named]);
  return [
    ...bounds.map(({ variable }) => inRoles(variable, row)),
    ...links.map(({ from, to }) => `${inRoles(from, row)} <= ${inRoles(to, row)}`),
  ];
}

/** `plate-as-source made` is `source made`. Every event stands for any where the claim names it. */
function inRoles(variable: string, { kind }: AnyRow): string {
  const [id = '', event = ''] = variable.split(' ');
  const role = id.endsWith('-of-its') ? 'its' : id.replace(/^[a-z]+-as-/, '');
  const named = kind === 'Sequence' || (kind === 'Dating' && !['began', 'ended', 'born', 'died'].includes(event));
  return `${role} ${named ? 'event' : event}`;
}

test.each(kinds)('%s says of dates what the table has, and nothing else', kind => {
  const said = rowsOf(kind).flatMap(datesSaid);
  // A life and a run are bounded at both ends.
  const known = said.filter(line => kind !== 'Dating' || !/^of (began|ended|born|died)$/.test(line));
  expect([...new Set(known)].toSorted(), `seed ${seed}`).toEqual((saysOfDates[kind] ?? []).toSorted());
});

test.each(kinds)('%s says something of handedness only if the table has it', kind => {
  const said = rowsOf(kind).flatMap(row => handednessLinksOf(apart([row])));
  expect(said.length > 0, `seed ${seed}`).toBe(saysOfHandedness.includes(kind));
});
