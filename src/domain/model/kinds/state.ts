import type { RecordKind } from '../declaration.ts';

export const state = {
  kind: 'State',
  type: 'record',
  doc: 'A state of a printing surface.',
  standard: 'CIDOC CRM E22 with E3',
  words: { en: ['state', 'states'] },
  plural: 'states',
  shared: true,
  fields: {
    matrix: { type: 'record', to: ['Matrix'], required: true, doc: 'The printing surface it is a state of.' },
    order: { type: 'integer', least: 1, required: true, doc: 'First, second, … among the states of the surface.' },
    lettering: { type: 'text', doc: 'Lettering as transcribed.' },
    changes: { type: 'text', doc: 'What was changed since the state before.' },
  },
} as const satisfies RecordKind;
