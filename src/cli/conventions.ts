import { buildRouteMap } from '@stricli/core';
import { conventionsSet } from './conventions-set.ts';
import { conventionsShow } from './conventions-show.ts';

export const conventions = buildRouteMap({
  routes: { show: conventionsShow, set: conventionsSet },
  docs: {
    brief: 'Look at and change the numbers, routes and limits that answers rest on',
    fullDescription: [
      'Conventions come with the program, each with its source. A graph may have others in their place: who changed them, when',
      'and why is kept, and answers name the version that they rest on.',
      '',
      '  platestemma conventions show',
      '  platestemma conventions show imprintAhead',
      '  platestemma conventions set imprintAhead 90 --why "bills of a Leipzig bookseller"',
    ].join('\n'),
  },
});
