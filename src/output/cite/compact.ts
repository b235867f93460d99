/** An object without the keys whose value is absent, empty text or an empty list. */
export function compact<T extends object>(value: { [K in keyof T]: T[K] | undefined }): T {
  const kept = Object.entries(value).filter(
    ([, v]) => v !== undefined && v !== '' && !(Array.isArray(v) && v.length === 0),
  );
  return Object.fromEntries(kept) as T;
}
