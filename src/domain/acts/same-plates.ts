import { matrixKind } from '../model/vocabularies.ts';
import type { Act } from './act.ts';
import { datedBy, said } from './common-fields.ts';

export const samePlates = {
  name: 'recordSamePlates',
  command: 'same-plates',
  doc: 'An edition has the same plates as another, in the same state or in a new one. Numbers are kept where no others are given, volumes and pages are not. For a new state each plate needs its printing surface, which is made where none is recorded.',
  fields: {
    edition: { type: 'record', to: ['Edition'], required: true, doc: 'The edition that has the same plates.' },
    as: { type: 'record', to: ['Edition'], required: true, doc: 'The edition whose plates are recorded.' },
    only: { type: 'text', many: true, doc: 'Only these of them: numbers there, or ids of plates.' },
    except: {
      type: 'text',
      many: true,
      doc: 'Not these: numbers there, or ids of plates. Nothing is said of them.',
    },
    absent: {
      type: 'text',
      many: true,
      doc: 'These are known not to be in the edition: numbers there, or ids of plates.',
    },
    plates: {
      type: 'items',
      name: 'SamePlate',
      doc: 'What is otherwise with single plates.',
      item: {
        plate: { type: 'text', required: true, doc: 'Which one: its number there, or its id.' },
        number: { type: 'text', doc: 'Its number here.' },
        volume: { type: 'text', doc: 'Its volume here.' },
        page: { type: 'text', doc: 'Page here, or page faced.' },
        lettering: { type: 'text', doc: 'Lettering of its new state as transcribed.' },
        changes: { type: 'text', doc: 'What was changed on it for the new state.' },
      },
    },
    newState: { type: 'flag', doc: 'They are in a new state; said too where anything is said of that state.' },
    changes: { type: 'text', doc: 'What was changed on all of them: a new address, numbers.' },
    lettering: { type: 'text', doc: 'Lettering that all of them have in the new state, as transcribed.' },
    order: {
      type: 'integer',
      least: 2,
      doc: 'Which state it is; one after the last that is recorded if absent, and the second where none is.',
    },
    made: { type: 'edtf', doc: 'When the new state was made.' },
    madeAsWritten: { type: 'text', doc: 'The same as written; without the date in EDTF it is read.' },
    madeBasis: { ...datedBy, doc: 'What that date rests on.' },
    matrixForm: { type: 'word', of: matrixKind, doc: 'What kind of printing surface is made where none is recorded.' },
    ...said,
  },
  needs: [],
  answers: {
    appearances: { kind: 'Appearance', many: true, doc: 'That the plates are, or are not, in the edition.' },
    matrices: { kind: 'Matrix', many: true, doc: 'Printing surfaces that were made.' },
    printings: { kind: 'PrintedFrom', many: true, doc: 'That the plates were printed from those.' },
    states: { kind: 'State', many: true, doc: 'The new state of each.' },
    datings: { kind: 'Dating', many: true, doc: 'When the states were made.' },
  },
  example: {
    edition: 'edition-shore-amsterdam-1768',
    as: 'edition-shore-london-1764',
    except: ['4'],
    changes: 'Address of Hartigh in place of Calloway’s',
  },
} as const satisfies Act;
