import { once } from 'node:events';
import { connect } from 'node:net';
import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { serve } from '../../src/api/serve.ts';
import { checksum } from '../../src/questions/export-graph.ts';
import { demoApi } from '../api/demo-api.ts';
import { runs, seedOfRun } from '../support/runs.ts';
import { expectLawful, inTime } from './answer-law.ts';
import { type Chance, chances } from './chance.ts';
import { damaged } from './damaged.ts';
import { hostileDates, hostileIds, hostileTexts } from './hostile-values.ts';

const { api, store, logged } = await demoApi();
const served = await serve(api, { host: '127.0.0.1', port: 0, log: () => undefined });
const port = Number(new URL(served.url).port);
const seed = seedOfRun();
console.info(`Hostile connections: seed ${seed}`);
afterAll(() => served.stop());

const query = encodeURIComponent('{ works(first: 1) { nodes { id } } }');
const body = '{"query":"{ __typename }"}';
const heads = [
  'host: localhost',
  'content-type: application/json',
  'accept: application/json',
  'origin: http://localhost',
];

/** A request that is right, but for an address that is not. */
function anyRequest(chance: Chance): Buffer {
  const text = encodeURIComponent(
    chance.pick([...hostileTexts, ...hostileDates, ...hostileIds].filter(each => each.isWellFormed())),
  );
  const address = chance.pick([
    ...[`/graphql?query=${query}`, `/graphql?query=${query}&variables=${text}`, `/graphql?query=${text}`, `/${text}`],
    ...[`/draw/lineage/${text}.svg`, `/draw/descent/${text}.png`, `/draw/descent/work-shore-pleasures.svg`],
    ...[
      `/draw/lineage/motif-dish-net-menders.svg?depth=${text}&towards=${text}`,
      '/health',
      '/ready',
      '//',
      '/%',
      '/graphql/',
    ],
  ]);
  const method = chance.pick(['GET', 'GET', 'POST', 'POST', 'HEAD', 'PUT', 'DELETE', 'OPTIONS', 'TRACE', 'PATCH']);
  const length = method === 'GET' || method === 'HEAD' ? [] : [`content-length: ${body.length}`];
  const given = heads.filter((_, i) => i === 0 || chance.percent(70));
  return Buffer.from(
    `${method} ${address} HTTP/1.1\r\n${[...given, ...length, 'connection: close'].join('\r\n')}\r\n\r\n${length.length > 0 ? body : ''}`,
  );
}

/** All that the server says to some bytes after which nothing comes. */
async function said(bytes: Uint8Array): Promise<string> {
  const socket = connect(port, '127.0.0.1');
  let text = '';
  socket.on('data', chunk => (text += chunk.toString('latin1')));
  socket.on('error', () => undefined);
  await once(socket, 'connect');
  socket.end(bytes);
  await new Promise(resolve => socket.once('close', resolve));
  return text;
}

function expectLawfulBytes(text: string): void {
  // A connection may be ended without a word where no answer could be read.
  if (text === '') return;
  const [head, ...rest] = text.split('\r\n\r\n');
  const [, status] = /^HTTP\/1\.1 (\d{3})/.exec(head!) ?? [];
  const type = /^content-type: (.*)$/im.exec(head!)?.[1] ?? '';
  const whole = Buffer.from(rest.join('\r\n\r\n'), 'latin1').toString();
  // Several requests may lie in the bytes: the first answer is looked at.
  const first = (/^transfer-encoding: chunked$/im.test(head!) ? unchunked(whole) : whole).split('HTTP/1.1 ')[0]!.trim();
  // What answers HEAD has no body.
  if (first === '') expect(Number(status)).toBeLessThan(500);
  else expectLawful(Number(status), type, first);
}

function unchunked(text: string): string {
  return text.replace(/(?:^|\r\n)[0-9a-f]+\r\n/g, '').replace(/\r\n$/, '');
}

test('whatever bytes come, they are answered in time or not at all, and the server goes on', async () => {
  const before = await checksum(store);
  await fc.assert(
    fc.asyncProperty(chances, async chance => {
      const whole = anyRequest(chance);
      const bytes = chance.percent(60) ? damaged(whole, chance) : whole;
      try {
        expectLawfulBytes(await inTime(() => said(bytes)));
        expect(logged.splice(0)).toEqual([]);
      } catch (cause) {
        throw new Error(`It does not hold for ${JSON.stringify(Buffer.from(bytes).toString().slice(0, 2_000))}`, {
          cause,
        });
      }
    }),
    { seed, numRuns: runs(400, 10_000) },
  );
  expect((await fetch(new URL('/ready', served.url))).status).toBe(200);
  expect(await checksum(store)).toBe(before);
}, 3_600_000);
