import { buildCommand } from '@stricli/core';
import type { Towards } from '../store/graph-store.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags, integer } from './flags.ts';
import { lineageJson } from './lineage-json.ts';
import { lineageText } from './lineage-text.ts';
import { type WhatIfFlags, whatIfFlags } from './what-if-flags.ts';
import { printJson, printText, withGraph } from './with-desk.ts';

interface LineageFlags extends CommonFlags, WhatIfFlags {
  readonly towards: 'sources' | 'copies' | 'both';
  readonly depth?: number;
}

export const askLineage = buildCommand<LineageFlags, [string], CliContext>({
  docs: {
    brief: 'Where a picture comes from, and what was made from it',
    fullDescription: [
      'Where a picture comes from, and what was made from it: artworks, prints and motifs with the publications they are in,',
      'the days that all linked claims leave, their direction, the evidence of each step, what contradicts, and what is',
      'missing.',
      '',
      '  platestemma ask lineage motif-dish-net-menders --towards sources',
      '  platestemma ask lineage plate-shore-4-net-menders --depth 2',
      '  platestemma ask lineage motif-dish-net-menders --without copying-dish-menders',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [{ parse: String, brief: 'Id of a picture or printing surface', placeholder: 'id' }],
    },
    flags: {
      ...commonFlags,
      ...whatIfFlags,
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
  func({ towards, depth, ...flags }, of) {
    return withGraph(this, flags, async ({ questions, store }) => {
      const answer = await questions.lineage({
        of,
        towards: towards.toUpperCase() as Towards,
        ...(depth === undefined ? {} : { depth }),
      });
      if (flags.json === true) printJson(this, lineageJson(answer));
      else printText(this, await lineageText(answer, store));
    });
  },
});
