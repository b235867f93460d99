/** Takes one event, as data. Events hold no texts of records. */
export type Log = (event: Readonly<Record<string, unknown>>) => void;

/** Writes events as lines of JSON, with the time, to the standard error stream. */
export const logToStderr: Log = event => {
  process.stderr.write(`${JSON.stringify({ at: new Date().toISOString(), ...event })}\n`);
};
