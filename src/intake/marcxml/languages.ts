import type { MarcRecord } from './marc-record.ts';
import { controlField, type MarcField, subfieldValues } from './marc-record.ts';

/** Codes that MARC used beside ISO 639-2 or uses no more. https://www.loc.gov/marc/languages/ (from memory) */
const discontinued: Readonly<Record<string, string>> = {
  ...{ esp: 'eo', far: 'fo', fri: 'fy', gae: 'gd', gag: 'gl', gal: 'om', int: 'ia', iri: 'ga', kus: 'kos', lan: 'oc' },
  ...{ lap: 'smi', mla: 'mg', mol: 'ro', sao: 'sm', sho: 'sn', snh: 'si', sso: 'st', swz: 'ss', tag: 'tl', taj: 'tg' },
  ...{ tar: 'tt', tsw: 'tn' },
};

/** No language, several, not known, or not coded. */
const none = new Set(['und', 'zxx', 'mul', 'mis', 'n/a']);
const code = /^[a-z]{3}$/;
const tags = new Map<string, string>();

/**
 * BCP 47 tag of a MARC language code: the two-letter code where there is one (`ger` gives `de`, as CLDR maps the
 * bibliographic codes of ISO 639-2), else the three letters; undefined for no, several or unknown languages.
 */
export function languageTag(marcCode: string): string | undefined {
  const low = marcCode.toLowerCase();
  if (!code.test(low) || none.has(low)) return undefined;
  let tag = tags.get(low);
  if (tag === undefined) {
    tag = discontinued[low] ?? Intl.getCanonicalLocales(low)[0] ?? low;
    tags.set(low, tag);
  }
  return tag;
}

/** Languages of the text: field 041 $a (several codes may be written as one, `engfre`), else 008/35-37. */
export function languagesOf(record: MarcRecord, coded: readonly MarcField[]): string[] {
  const codes = coded.flatMap(field => subfieldValues(field, 'a')).flatMap(value => value.match(/.{3}/g) ?? []);
  if (codes.length === 0) codes.push((controlField(record, '008') ?? '').slice(35, 38));
  return [...new Set(codes.flatMap(found => languageTag(found) ?? []))];
}
