import type { AnyRow } from '../../../src/domain/model/row.ts';
import type { Bundle } from '../../../src/intake/intention.ts';
import { marcToBundle } from '../../../src/intake/marcxml/marc-to-bundle.ts';
import { marc } from './marc-notation.ts';

const title = '245 00$aA title.';

/** The bundle of a record given in MARC notation; a title is supplied where none is given. */
export function bundleOf(...lines: readonly string[]): Bundle {
  const record = marc(...lines, ...(lines.some(line => line.startsWith('245')) ? [] : [title]));
  const intention = marcToBundle(record);
  if (intention.outcome === 'refused') throw new Error(`refused: ${intention.problem.message}`);
  return intention;
}

type Of<K extends AnyRow['kind']> = Extract<AnyRow, { kind: K }>;

/** Rows of a kind, in order. */
export function rowsOf<K extends AnyRow['kind']>(bundle: Bundle, kind: K): Of<K>[] {
  return bundle.rows.map(({ row }) => row).filter((row): row is Of<K> => row.kind === kind);
}

/** Imprint claims as `place / agent / role`. */
export function imprintsOf(bundle: Bundle): string[] {
  const names = new Map(bundle.rows.map(({ row }) => [row.id, 'labels' in row ? row.labels?.[0]?.text : undefined]));
  const name = (id: string | undefined): string => (id === undefined ? '-' : (names.get(id) ?? id));
  return rowsOf(bundle, 'Imprint').map(({ place, agent, role }) => `${name(place)} / ${name(agent)} / ${role}`);
}

/** Attributions as `agent / role`, with the words where there are any. */
export function attributionsOf(bundle: Bundle): string[] {
  const names = new Map(bundle.rows.map(({ row }) => [row.id, 'labels' in row ? row.labels?.[0]?.text : undefined]));
  return rowsOf(bundle, 'Attribution').map(
    ({ agent, role, asWritten }) => `${names.get(agent)} / ${role}${asWritten === undefined ? '' : ` (${asWritten})`}`,
  );
}

/** Datings as `date basis stance`, with `-` for no date. */
export function datingsOf(bundle: Bundle): string[] {
  return rowsOf(bundle, 'Dating').map(({ date, basis, stance }) => `${date ?? '-'} ${basis} ${stance ?? 'HELD'}`);
}
