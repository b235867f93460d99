import { waysTo } from './ways.ts';

/** The message that commits a transaction, in its one chunk: https://neo4j.com/docs/bolt/current/bolt/message/ */
const commit = Buffer.from([0x00, 0x02, 0xb0, 0x12, 0x00, 0x00]);

/** What happens to the end of a change: it is refused with a code of the server, or made, and the answer is lost. */
export type Fate = string | typeof answerLost;

export const answerLost = Symbol('the answer is lost');

/** A way to a server on which changes meet a fate. */
export interface RefusingProxy {
  readonly port: number;
  /** How many have met one. */
  readonly refusals: () => number;
  stop(): Promise<void>;
}

/**
 * Passes everything on but the end of changes. It answers one itself where there is a code: the server never hears of it and
 * undoes the change when its connection is reset, as it does with one that it refuses by itself.
 * @param fateOf what happens to each end of a change in turn; undefined: it is passed on
 */
export async function refusingProxy(
  target: number,
  fateOf: (commit: number) => Fate | undefined,
): Promise<RefusingProxy> {
  let [commits, refusals] = [0, 0];
  const ways = await waysTo(target, ({ near, far, end }) => {
    far.pipe(near);
    near.on('data', bytes => {
      // Who ends a change has had all answers to what came before, and waits for this one: it is the last of the bytes.
      const fate = bytes.subarray(-commit.length).equals(commit) ? fateOf(commits++) : undefined;
      if (fate !== undefined) refusals++;
      if (fate === answerLost) far.unpipe(near).once('data', end).resume();
      if (fate === undefined || fate === answerLost) {
        far.write(bytes);
        return;
      }
      if (bytes.length > commit.length) far.write(bytes.subarray(0, -commit.length));
      near.write(failure(fate));
    });
  });
  return { ...ways, refusals: () => refusals };
}

/** A failure with a code, under its names in older and newer versions of the protocol. */
function failure(code: string): Buffer {
  const fields = { code, neo4j_code: code, message: 'refused', gql_status: '50N42', description: 'refused' };
  const words = Object.entries(fields).flatMap(entry => entry.map(packed));
  const message = Buffer.concat([Buffer.from([0xb1, 0x7f, 0xa0 + Object.keys(fields).length]), ...words]);
  const length = Buffer.alloc(2);
  length.writeUInt16BE(message.length);
  return Buffer.concat([length, message, Buffer.alloc(2)]);
}

/** A text of at most 255 bytes in PackStream. */
function packed(text: string): Buffer {
  return Buffer.concat([Buffer.from([0xd0, Buffer.byteLength(text)]), Buffer.from(text)]);
}
