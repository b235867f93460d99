import type { RecordKind } from '../declaration.ts';
import { matrixKind, survival } from '../vocabularies.ts';

export const matrix = {
  kind: 'Matrix',
  type: 'record',
  doc: 'A printing surface: copper or steel plate, wood block, stone, stereotype or electrotype cast.',
  standard: 'CIDOC CRM E22',
  words: { en: ['printing surface', 'printing surfaces'] },
  plural: 'matrices',
  shared: true,
  fields: {
    form: { type: 'word', of: matrixKind, doc: 'What kind of surface.' },
    survival: { type: 'word', of: survival, doc: 'Whether it survives.' },
    size: { type: 'text', doc: 'Height by width, with unit.' },
  },
} as const satisfies RecordKind;
