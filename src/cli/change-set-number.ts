/** Reads the number of a change set, which is at least `least`. */
export function changeSetNumber(least: number): (text: string) => number {
  return text => {
    const value = Number(text);
    if (text.trim() === '' || !Number.isSafeInteger(value) || value < least)
      throw new RangeError(`expected the number of a change set, ${least} or more, came "${text}"`);
    return value;
  };
}
