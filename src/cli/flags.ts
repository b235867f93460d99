/** Flags that nearly every command has. */
export const commonFlags = {
  store: {
    kind: 'parsed',
    parse: String,
    optional: true,
    brief: "File of the store (else PLATESTEMMA_STORE, else the user's data folder)",
    placeholder: 'file',
  },
  json: { kind: 'boolean', optional: true, withNegated: false, brief: 'Answer as JSON, with the names of the API' },
} as const;

export interface CommonFlags {
  readonly store?: string;
  readonly json?: boolean;
}

/** A whole number within bounds, for a flag. */
export function integer(name: string, least: number, most: number): (text: string) => number {
  return text => {
    const value = Number(text);
    if (!Number.isInteger(value) || value < least || value > most) {
      throw new RangeError(`expected a whole number from ${least} to ${most} for --${name}, came "${text}"`);
    }
    return value;
  };
}
