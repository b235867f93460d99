import { writeFile } from 'node:fs/promises';
import { extname } from 'node:path';
import { buildCommand, buildRouteMap } from '@stricli/core';
import { svgToPng } from '../output/draw/svg-to-png.ts';
import type { DrawAsked } from '../questions/draw-asked.ts';
import type { Towards } from '../store/graph-store.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags, integer } from './flags.ts';
import { refusedOutput } from './refused-output.ts';
import { type WhatIfFlags, whatIfFlags } from './what-if-flags.ts';
import { withGraph } from './with-desk.ts';
import { WrongUse } from './wrong-use.ts';

interface DrawFlags extends Pick<CommonFlags, 'store'>, WhatIfFlags {
  readonly output?: string;
}

interface LineageFlags extends DrawFlags {
  readonly towards: 'sources' | 'copies' | 'both';
  readonly depth?: number;
}

const flags = {
  store: commonFlags.store,
  ...whatIfFlags,
  output: {
    kind: 'parsed',
    parse: String,
    optional: true,
    brief: 'File to write: .svg or .png (else SVG to standard output)',
    placeholder: 'file',
  },
} as const;

const lineage = buildCommand<LineageFlags, [string], CliContext>({
  docs: {
    brief: 'Draw where a picture comes from and what was made from it',
    fullDescription: [
      'Draw the lineage of a picture on an axis of time: every mark at its date, its days as a bar, each copying with its',
      'direction and certainty, contradictions running backwards.',
      '',
      '  platestemma draw lineage motif-dish-net-menders -o menders.svg',
      '  platestemma draw lineage plate-shore-4-net-menders --towards copies -o copies.png',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [{ parse: String, brief: 'Id of a picture or printing surface', placeholder: 'id' }],
    },
    aliases: { o: 'output' },
    flags: {
      ...flags,
      towards: {
        kind: 'enum',
        values: ['sources', 'copies', 'both'],
        default: 'both',
        brief: 'Which way to follow it',
      },
      depth: {
        kind: 'parsed',
        parse: integer('depth', 0, 30),
        optional: true,
        brief: 'Most steps from it (else 8, or as the convention limit.depth says)',
        placeholder: 'steps',
      },
    },
  },
  func({ towards, depth, ...given }, of) {
    const asked: DrawAsked = {
      what: 'LINEAGE',
      of,
      towards: towards.toUpperCase() as Towards,
      ...(depth === undefined ? {} : { depth }),
    };
    return drawn(this, given, asked);
  },
});

const descent = buildCommand<DrawFlags, [string], CliContext>({
  docs: {
    brief: 'Draw the editions of a work, and what became of their plates',
    fullDescription: [
      'Draw the descent of editions on an axis of time: each edition at its date, from which it was made, with or without',
      'leave, and of each of its plates whether it went along, was copied, or comes from the same printing surface.',
      '',
      '  platestemma draw descent work-shore-pleasures -o shore.svg',
      '  platestemma draw descent edition-shore-london-1764 -o london.png',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [{ parse: String, brief: 'Id of a work or edition', placeholder: 'id' }],
    },
    aliases: { o: 'output' },
    flags,
  },
  func(given, of) {
    return drawn(this, given, { what: 'DESCENT', of });
  },
});

export const draw = buildRouteMap({
  routes: { lineage, descent },
  docs: {
    brief: 'Draw an answer as a picture',
    fullDescription: [
      'Draw an answer as a picture: SVG, or PNG where the file is named so.',
      '',
      '  platestemma draw lineage motif-dish-net-menders -o menders.svg',
      '  platestemma draw descent work-shore-pleasures -o shore.png',
    ].join('\n'),
  },
});

async function drawn(context: CliContext, given: DrawFlags, asked: DrawAsked): Promise<void> {
  const form = given.output === undefined ? '.svg' : extname(given.output).toLowerCase();
  if (form !== '.svg' && form !== '.png')
    throw new WrongUse(`expected a file that ends with .svg or .png for --output, came "${given.output}"`);
  await withGraph(context, given, async ({ questions }) => {
    const svg = await questions.draw(asked);
    if (given.output === undefined) context.process.stdout.write(svg);
    else await write(given.output, form === '.svg' ? svg : await svgToPng(svg));
  });
}

async function write(file: string, data: string | Uint8Array): Promise<void> {
  try {
    await writeFile(file, data);
  } catch (error) {
    throw refusedOutput(error, file);
  }
}
