import type { AnyClaim, ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import type { EditionFilter, EditionWindow, WindowKey } from '../../src/store/graph-store.ts';

/** Whether an edition passes a filter; `claims` are those that count. */
export function passes(
  filter: EditionFilter,
  window: EditionWindow,
  edition: RecordOf<'Edition'>,
  claims: readonly AnyClaim[],
): boolean {
  const { form, language, illustrated, work, place, subject } = filter;
  if (form !== undefined && window.form !== form) return false;
  if (language !== undefined && !(window.languages ?? []).includes(language)) return false;
  if (illustrated !== undefined && (window.illustrated ?? false) !== illustrated) return false;
  if (work !== undefined && edition.work !== work) return false;
  if (place !== undefined) {
    const imprints = claims.filter(claim => claim.kind === 'Imprint' && claim.edition === edition.id);
    if (!imprints.some(imprint => (imprint as ClaimOf<'Imprint'>).place === place)) return false;
  }
  return subject === undefined || isDepictedWith(edition, subject, claims);
}

function isDepictedWith(edition: RecordOf<'Edition'>, subject: string, claims: readonly AnyClaim[]): boolean {
  const pictures = new Set([edition.id, edition.work]);
  for (const claim of claims) {
    if (claim.kind === 'Appearance' && claim.edition === edition.id && claim.presence === 'PRESENT') {
      pictures.add(claim.plate);
    }
  }
  return claims.some(
    claim => claim.kind === 'Depiction' && pictures.has(claim.picture) && claim.iconclass?.startsWith(subject),
  );
}

export function windowInOrder(window: EditionWindow): EditionWindow {
  const { edition, profile, dateClass, detail, first, last, form, languages, illustrated } = window;
  return {
    edition,
    profile,
    dateClass,
    ...(detail === undefined ? {} : { detail }),
    ...(first === undefined ? {} : { first }),
    ...(last === undefined ? {} : { last }),
    ...(form === undefined ? {} : { form }),
    ...(languages === undefined ? {} : { languages }),
    ...(illustrated === undefined ? {} : { illustrated }),
  };
}

/** Equal for equal windows alone. */
export function windowName({ profile, dateClass, detail, first, last }: WindowKey): string {
  return JSON.stringify([profile, dateClass, detail ?? null, first ?? null, last ?? null]);
}
