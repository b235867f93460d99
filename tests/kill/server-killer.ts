import { setTimeout } from 'node:timers/promises';
import type { KillableServer } from '../support/neo4j/killable-server.ts';

/** Longest time between a server's being ready and its end, and between its end and its next start, in milliseconds. */
const [longestUp, longestDown] = [3000, 800];

/** How many are killed before they are ready, and when at the latest. */
const [whileStarting, longestStart] = [0.15, 6000];

/** Kills a server at moments that follow from a seed, and starts it again. */
export class ServerKiller {
  readonly #server: KillableServer;
  readonly #random: () => number;
  kills = 0;
  killsWhileStarting = 0;

  constructor(server: KillableServer, random: () => number) {
    this.#server = server;
    this.#random = random;
  }

  /** Kills until the work is done, so many times at most. @returns how many times */
  async during(most: number, work: Promise<unknown>): Promise<number> {
    const before = this.kills;
    let isDone = false;
    const done = work.finally(() => {
      isDone = true;
    });
    const killing = async () => {
      for (let left = most; left > 0; left = most - (this.kills - before)) {
        await Promise.race([done, this.#moment(longestUp)]);
        if (isDone) return;
        await this.once(left);
      }
    };
    await Promise.all([done, killing()]);
    return this.kills - before;
  }

  /** Kills it, and has it ready again; now and then it is killed as it starts, `most` times in all at most. */
  async once(most: number): Promise<void> {
    await this.#server.kill();
    this.kills++;
    await this.#moment(longestDown);
    for (let left = most - 1; left > 0 && this.#random() < whileStarting; left--) {
      // Whether it comes to be ready before is left to chance.
      this.#server.start().catch(() => undefined);
      await this.#moment(longestStart);
      await this.#server.kill();
      this.kills++;
      this.killsWhileStarting++;
    }
    await this.#server.start();
  }

  #moment(longest: number): Promise<void> {
    return setTimeout(this.#random() * longest);
  }
}
