import { buildCommand } from '@stricli/core';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags, integer } from './flags.ts';

interface ServeFlags extends Pick<CommonFlags, 'store'> {
  readonly port: number;
  readonly host: string;
  readonly demo?: boolean;
}

export const serve = buildCommand<ServeFlags, [], CliContext>({
  docs: {
    brief: 'Serve the GraphQL API',
    fullDescription: [
      'Serve the GraphQL API at /graphql (open it in a browser to write queries), with /health and /ready. Only this machine',
      'can reach it unless you give another --host. Stop it with Ctrl+C.',
      '',
      '  platestemma serve',
      '  platestemma serve --demo',
    ].join('\n'),
  },
  parameters: {
    flags: {
      store: commonFlags.store,
      port: { kind: 'parsed', parse: integer('port', 0, 65_535), default: '4000', brief: 'Port; 0 takes a free one' },
      host: { kind: 'parsed', parse: String, default: '127.0.0.1', brief: 'Address to listen on' },
      demo: {
        kind: 'boolean',
        optional: true,
        withNegated: false,
        brief: 'Serve a small invented world, on a fresh copy',
      },
    },
  },
  async func(flags) {
    // Loaded for the demo alone: it takes graph files in.
    const demo = flags.demo === true ? await import('./demo.ts') : undefined;
    const file = demo === undefined ? flags.store : demo.demoStore();
    const endClaim = await this.claimServing(file);
    const desk = demo === undefined ? await this.openDesk(flags.store, { create: true }) : await demo.openDemo(this);
    try {
      // Whoever reads that it serves may tell it to stop at once.
      const stopped = this.stopped();
      const served = await this.serve(desk, { host: flags.host, port: flags.port });
      this.process.stdout.write(
        `Serving ${flags.demo === true ? 'the demo world' : this.storePath(flags.store)} at ${served.url}\n`,
      );
      if (flags.demo === true) this.process.stdout.write(thingsToTry(served.url));
      await stopped;
      await served.stop();
    } finally {
      await desk.store.close();
      endClaim();
    }
  },
});

function thingsToTry(url: string): string {
  const query = '{reach(piece:"piece-shore-dish"){counts{inEveryCase inSomeCases inNoCase}}}';
  return [
    '',
    'Three things to try:',
    '',
    '1. Ask which books could have reached the works at Ellerholm before the dish of 1766 was painted:',
    '     npm run -s platestemma -- ask reach --piece piece-shore-dish --store .store/demo.store',
    '2. Ask the same of the API:',
    `     curl -s ${url} -H 'content-type: application/json' -d '${JSON.stringify({ query })}'`,
    `3. Open ${url} in a browser and write queries of your own.`,
    '',
    'Stop with Ctrl+C.',
    '',
  ].join('\n');
}
