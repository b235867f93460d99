/** A convention that an answer rests on, in the version used. */
export interface ConventionUse {
  readonly key: string;
  /** Id of its record: `convention-` and the key in small letters, words joined by hyphens. */
  readonly id: string;
  readonly version: number;
}

/** Id of the record of a convention that ships with the program: `route.orderAllowance` is `convention-route-order-allowance`. */
export function conventionId(key: string): string {
  const words = key.replace(/[A-Z]/g, letter => `-${letter.toLowerCase()}`).replace(/[^a-z0-9]+/g, '-');
  return `convention-${words.replace(/^-|-$/g, '')}`;
}
