/** What filters ask of an edition and its work. */
interface Traits {
  readonly form?: string;
  readonly languages?: readonly string[];
  readonly illustrated?: true;
}

interface AskedOfTraits {
  readonly form?: string;
  readonly language?: string;
  readonly illustrated?: boolean;
}

/** Whether an edition is as a filter asks; one that does not say that it is illustrated is taken not to be. */
export function traitsPass({ form, language, illustrated }: AskedOfTraits, traits: Traits): boolean {
  if (form !== undefined && traits.form !== form) return false;
  if (language !== undefined && traits.languages?.includes(language) !== true) return false;
  return illustrated === undefined || (traits.illustrated ?? false) === illustrated;
}
