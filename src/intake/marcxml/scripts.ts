import { type MarcField, subfield } from './marc-record.ts';

/** Script codes of subfield $6 (https://www.loc.gov/marc/bibliographic/ecbdcntf.html) as ISO 15924. */
const scripts: Readonly<Record<string, string>> = {
  '(2': 'Hebr',
  '(3': 'Arab',
  '(4': 'Arab',
  '(B': 'Latn',
  '(N': 'Cyrl',
  '(Q': 'Cyrl',
  '(S': 'Grek',
};

/**
 * Language tag of a field 880: the language of the record in the script that $6 names (`880-02/(N`). The code for
 * Chinese, Japanese and Korean (`$1`) names no single script, so the language stands alone.
 */
export function scriptLanguage(field: MarcField, language: string | undefined): string | undefined {
  const code = (subfield(field, '6') ?? '').split('/')[1] ?? '';
  if (code === '$1') return language;
  const script = scripts[code] ?? (/^[A-Z][a-z]{3}$/.test(code) ? code : undefined);
  if (script === undefined) return language;
  return `${language ?? 'und'}-${script}`;
}
