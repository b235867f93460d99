import type { AnyRow } from '../domain/model/row.ts';

/** An edition by its title and imprint as transcribed; undefined for what is none. */
export function editionText(row: AnyRow | undefined): string | undefined {
  if (row?.kind !== 'Edition') return undefined;
  const title = row.title.replace(/\s*\.$/, '');
  return row.imprint === undefined ? title : `${title}. ${row.imprint}`;
}
