import { connect, type Socket } from 'node:net';

/** What became of connections that are not as they should be. */
export interface Neighbours {
  /** Bytes that each sort has sent and received, how often its connection was ended, and what it was told last. */
  readonly report: () => Readonly<Record<string, Neighbour>>;
  stop(): void;
}

interface Neighbour {
  connections: number;
  ended: number;
  sent: number;
  received: number;
  answer: string;
}

const json = 'POST /graphql HTTP/1.1\r\nhost: localhost\r\ncontent-type: application/json\r\n';
const chunk = Buffer.from(`10000\r\n${'x'.repeat(65_536)}\r\n`);

/** Sorts of neighbours: what one does with its connection. */
const sorts: Readonly<
  Record<string, (socket: Socket, it: Neighbour, every: (ms: number, act: () => void) => void) => void>
> = {
  'reads a byte a second': (socket, it, every) => {
    // The page for writing queries is the largest answer there is.
    socket.write('GET /graphql HTTP/1.1\r\nhost: localhost\r\naccept: text/html\r\n\r\n');
    socket.pause();
    every(1_000, () => {
      it.received += (socket.read(1) as Buffer | null)?.length ?? 0;
    });
  },
  'sends a byte a second': (socket, it, every) => {
    socket.write(`${json}content-length: 500000\r\n\r\n`);
    every(1_000, () => void (socket.writable && socket.write(' ') && it.sent++));
  },
  'sends headers a byte a second': (socket, it, every) => {
    socket.write('GET /health HTTP/1.1\r\nhost: localhost\r\nx-a: ');
    every(1_000, () => void (socket.writable && socket.write('a') && it.sent++));
  },
  'sends without end': (socket, it) => {
    socket.write(`${json}transfer-encoding: chunked\r\n\r\n`);
    const more = (): void => {
      while (socket.writable) {
        it.sent += chunk.length;
        if (!socket.write(chunk)) break;
      }
    };
    socket.on('drain', more);
    more();
  },
  'says nothing': () => undefined,
};

/** So many neighbours of each sort, each with a new connection when the one before has been ended. */
export function badNeighbours(url: string, each: number): Neighbours {
  const { port, hostname } = new URL(url);
  const found: Record<string, Neighbour> = {};
  const sockets = new Set<Socket>();
  let goesOn = true;
  const begin = (name: string): void => {
    const it = found[name]!;
    const socket = connect(Number(port), hostname);
    const timers: NodeJS.Timeout[] = [];
    sockets.add(socket);
    it.connections++;
    socket.on('error', () => undefined);
    socket.on('connect', () => sorts[name]!(socket, it, (ms, act) => timers.push(setInterval(act, ms))));
    if (name !== 'reads a byte a second') {
      socket.on('data', (bytes: Buffer) => {
        it.received += bytes.length;
        it.answer = bytes.toString('latin1').slice(0, 40).split('\r\n')[0]!;
      });
    }
    socket.on('close', () => {
      timers.forEach(clearInterval);
      sockets.delete(socket);
      it.ended++;
      if (goesOn) setTimeout(begin, 100, name);
    });
  };
  for (const name of Object.keys(sorts)) {
    found[name] = { connections: 0, ended: 0, sent: 0, received: 0, answer: '' };
    for (let i = 0; i < each; i++) begin(name);
  }
  return {
    report: () => structuredClone(found),
    stop: () => {
      goesOn = false;
      for (const socket of sockets) socket.destroy();
    },
  };
}
