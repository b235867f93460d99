import { once } from 'node:events';
import { type AddressInfo, createServer, type Socket } from 'node:net';
import { wayTo } from './ways.ts';

/** A way to a server that can be shut: to who comes by it the server is gone then, as if it had been killed. */
export class Door {
  readonly #target: number;
  readonly #sockets = new Set<Socket>();
  readonly #near = createServer(near => this.#pass(near));
  #port = 0;

  private constructor(target: number) {
    this.#target = target;
  }

  /** An open one. @param target port of the server */
  static async to(target: number): Promise<Door> {
    const door = new Door(target);
    await door.open();
    return door;
  }

  get port(): number {
    return this.#port;
  }

  /** Cuts all connections; new ones are refused when it resolves. */
  async shut(): Promise<void> {
    const closed = once(this.#near, 'close');
    this.#near.close();
    for (const socket of this.#sockets) socket.destroy();
    this.#sockets.clear();
    await closed;
  }

  async open(): Promise<void> {
    this.#near.listen(this.#port, '127.0.0.1');
    await once(this.#near, 'listening');
    this.#port = (this.#near.address() as AddressInfo).port;
  }

  #pass(near: Socket): void {
    const { far } = wayTo(this.#target, near, this.#sockets);
    near.pipe(far);
    far.pipe(near);
  }
}
