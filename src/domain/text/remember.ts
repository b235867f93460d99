import { copied } from './copied.ts';

/** Longer texts are made anew each time. */
const longest = 500;

/**
 * A function that remembers what it made of a text: names, places and dates come again and again in a catalogue. It
 * forgets everything when `most` texts are known, so that memory stays flat.
 */
export function remember<T>(most: number, make: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return text => {
    if (text.length > longest) return make(text);
    let made = known.get(text);
    if (made === undefined) {
      const own = copied(text);
      made = make(own);
      if (known.size >= most) known.clear();
      known.set(own, made);
    }
    return made;
  };
}
