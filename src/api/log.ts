/** Takes one event, as data. Events hold no texts of records. */
export type Log = (event: Readonly<Record<string, unknown>>) => void;

/** Writes events as lines of JSON, with the time, to the standard error stream. */
export const logToStderr: Log = event => {
  process.stderr.write(`${JSON.stringify({ at: new Date().toISOString(), ...event })}\n`);
};

/** Tells the same event once in a while, with how many there were since it was told last. */
export function seldom(log: Log, milliseconds = 10_000): Log {
  const told = new Map<string, { readonly when: number; since: number }>();
  return event => {
    const name = JSON.stringify(event);
    const last = told.get(name);
    const now = performance.now();
    if (last !== undefined && now - last.when < milliseconds) {
      last.since++;
      return;
    }
    told.set(name, { when: now, since: 0 });
    log(last === undefined || last.since === 0 ? event : { ...event, times: last.since + 1 });
  };
}
