/** What is made of an object, made once for as long as the object is in use. */
export function remembered<K extends object, A extends readonly unknown[], V extends object>(
  make: (key: K, ...rest: A) => V,
): (key: K, ...rest: A) => V {
  const known = new WeakMap<K, V>();
  return (key, ...rest) => {
    const before = known.get(key);
    if (before !== undefined) return before;
    const value = make(key, ...rest);
    known.set(key, value);
    return value;
  };
}

/** The same of two objects. */
export function rememberedPairs<K extends object, L extends object, A extends readonly unknown[], V extends object>(
  make: (one: K, other: L, ...rest: A) => V,
): (one: K, other: L, ...rest: A) => V {
  const ofOne = remembered((one: K) => remembered((other: L, ...rest: A) => make(one, other, ...rest)));
  return (one, other, ...rest) => ofOne(one)(other, ...rest);
}
