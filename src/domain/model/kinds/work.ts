import type { RecordKind } from '../declaration.ts';
import { workForm } from '../vocabularies.ts';

export const work = {
  kind: 'Work',
  type: 'record',
  doc: 'A publication as conceived. Its labels are its titles.',
  standard: 'LRMoo F1, F18',
  words: { en: ['work', 'works'] },
  plural: 'works',
  shared: true,
  fields: {
    form: { type: 'word', of: workForm, doc: 'Form of publication; absent if not known.' },
    languages: { type: 'language', many: true, doc: 'Languages of the text.' },
  },
} as const satisfies RecordKind;
