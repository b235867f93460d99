/** What the questions need of the world beside a store; tests give their own. */
export interface World {
  /** Now, ISO 8601 in UTC. */
  readonly now: () => string;
  /** Random bytes for new ids. */
  readonly random: (bytes: number) => Uint8Array;
}
