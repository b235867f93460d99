import type { ClaimFields } from './draft.ts';
import type { NamedRecords } from './named-record.ts';
import { refusal } from './refusal.ts';

/** Attributions of plates to who made and who designed them, as an act gives them. */
export async function makersOf(
  plates: readonly string[],
  { engraverRole }: { readonly engraverRole?: string },
  named: NamedRecords,
): Promise<Partial<ClaimFields<'Attribution'>>[]> {
  const engraver = await named.of('Agent', 'engraver');
  const designer = await named.of('Agent', 'designer');
  if (engraver === undefined && engraverRole !== undefined)
    throw refusal('engraverRole', `expected who made the plate, came none, but the role "${engraverRole}"`);
  const makers = [
    ...(engraver === undefined ? [] : [{ agent: engraver, role: engraverRole ?? 'egr' }]),
    ...(designer === undefined ? [] : [{ agent: designer, role: 'dsr' }]),
  ];
  return plates.flatMap(record => makers.map(maker => ({ record, ...maker })));
}
