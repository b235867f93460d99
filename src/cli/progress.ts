/** How far a long work has come: a line that rewrites itself on a terminal, a line every ten seconds in a pipe. */
export class Progress {
  readonly #stream: { write(text: string): void; readonly isTTY?: boolean };
  readonly #total: number | undefined;
  readonly #started = performance.now();
  #said: number;

  /** @param total units in all, where they are known: then the time left is told too */
  constructor(stream: { write(text: string): void; readonly isTTY?: boolean }, total: number | undefined) {
    this.#stream = stream;
    this.#total = total;
    // What is done at once needs no line in a pipe.
    this.#said = stream.isTTY === true ? -Infinity : this.#started;
  }

  /** @param done units dealt with so far, of `total` */
  say(what: string, count: number, done: number): void {
    const now = performance.now();
    const tty = this.#stream.isTTY === true;
    if (now - this.#said < (tty ? 100 : 10_000)) return;
    this.#said = now;
    const seconds = (now - this.#started) / 1000;
    const line = `${what} ${count.toLocaleString('en')}, ${Math.round(count / Math.max(seconds, 0.001)).toLocaleString('en')} a second${this.#left(seconds, done)}`;
    this.#stream.write(tty ? `\r${line}\u001b[K` : `${line}\n`);
  }

  /** Clears the line on a terminal. */
  end(): void {
    if (this.#stream.isTTY === true) this.#stream.write('\r\u001b[K');
  }

  #left(seconds: number, done: number): string {
    if (this.#total === undefined || done <= 0) return '';
    const left = Math.max(0, Math.round((seconds * (this.#total - done)) / done));
    return `, ${left < 90 ? `${left} s` : `${Math.round(left / 60)} min`} left`;
  }
}
