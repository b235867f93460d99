import type { ClaimKind } from '../declaration.ts';
import { coverage, examinationResult } from '../vocabularies.ts';

export const examination = {
  kind: 'Examination',
  type: 'claim',
  since: 3,
  doc: 'A picture was sought somewhere, and found or not. Not to have found it proves nothing of plates that a copy wants.',
  standard: 'CIDOC CRM E7, P16',
  words: { en: ['examination', 'examinations'] },
  says: '{sought} was {result} in {target}',
  roles: {
    sought: { to: ['Artwork', 'Plate', 'Motif', 'Detail', 'Design'], required: true, doc: 'What was sought.' },
    target: {
      to: ['Edition', 'Plate', 'Matrix', 'Work', 'Reference'],
      doc: 'Where; absent where a catalogue or image base was searched that is not recorded.',
    },
    exemplar: { to: ['Exemplar'], doc: 'The exemplar that was looked through.' },
  },
  fields: {
    result: { type: 'word', of: examinationResult, required: true, doc: 'Whether it was found.' },
    coverage: { type: 'word', of: coverage, doc: 'How closely it was looked for.' },
    source: { type: 'text', doc: 'Catalogue or image base that was searched.' },
    searchWords: { type: 'text', doc: 'The words used for the search.' },
    lookedBy: { type: 'text', doc: 'Who looked.' },
    lookedOn: { type: 'edtf', doc: 'When.' },
  },
} as const satisfies ClaimKind;
