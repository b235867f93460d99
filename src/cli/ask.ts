import { buildRouteMap } from '@stricli/core';
import { askDescent } from './ask-descent.ts';
import { askDifferences } from './ask-differences.ts';
import { askHistory } from './ask-history.ts';
import { askLineage } from './ask-lineage.ts';
import { askReach } from './ask-reach.ts';

export const ask = buildRouteMap({
  routes: {
    reach: askReach,
    lineage: askLineage,
    descent: askDescent,
    history: askHistory,
    differences: askDifferences,
  },
  docs: {
    brief: 'Ask a question of the graph',
    fullDescription: [
      'Ask a question of the graph. Every answer says what it rests on.',
      '',
      '  platestemma ask reach --place-name Delft --by 1790-06',
      '  platestemma ask lineage motif-dish-net-menders',
      '  platestemma ask descent work-shore-pleasures',
      '  platestemma ask history piece-shore-dish',
      '  platestemma ask differences 12',
    ].join('\n'),
  },
});
