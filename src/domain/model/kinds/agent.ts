import type { RecordKind } from '../declaration.ts';
import { agentKind } from '../vocabularies.ts';

export const agent = {
  kind: 'Agent',
  type: 'record',
  doc: 'A person or firm. Its labels are its names.',
  standard: 'CIDOC CRM E39; LRMoo F11',
  words: { en: ['person or firm', 'persons and firms'] },
  plural: 'agents',
  shared: true,
  fields: {
    form: { type: 'word', of: agentKind, doc: 'Person, or firm, society or other body; absent if not known.' },
    sortName: { type: 'text', doc: 'Name as it is filed, family name first.' },
    dates: { type: 'text', doc: 'Dates of life or activity as a catalogue gives them; a Dating says them as a claim.' },
  },
} as const satisfies RecordKind;
