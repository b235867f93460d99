import { plateKind } from '../model/vocabularies.ts';
import type { Act } from './act.ts';
import { namesakes, said } from './common-fields.ts';

export const plates = {
  name: 'recordPlates',
  command: 'plates',
  doc: 'Plates of an edition: new ones, numbered, each with its caption.',
  fields: {
    edition: { type: 'record', to: ['Edition'], required: true, doc: 'The edition that they are in.' },
    numbers: {
      type: 'text',
      doc: 'Numbers of the plates: 1-60; 1-12, 14; I-XX; frontispiece, 1-8. Where only captions are given they are counted from 1.',
    },
    captions: { type: 'text', many: true, doc: 'Their captions, one for each number, in that order.' },
    plates: {
      type: 'items',
      name: 'EditionPlate',
      doc: 'What is said of single plates; a number that is not among the numbers is one more plate.',
      item: {
        number: { type: 'text', required: true, doc: 'Number of the plate in the edition.' },
        caption: { type: 'text', doc: 'Caption.' },
        lettering: { type: 'text', doc: 'Lettering as transcribed.' },
        form: { type: 'word', of: plateKind, doc: 'The finer word for it.' },
        technique: { type: 'text', doc: 'Printing technique in words.' },
        size: { type: 'text', doc: 'Height by width, with unit.' },
        volume: { type: 'text', doc: 'Volume.' },
        page: { type: 'text', doc: 'Page, or page faced.' },
        colouring: { type: 'text', doc: 'Colouring.' },
      },
    },
    form: { type: 'word', of: plateKind, doc: 'The finer word for those that say no other.' },
    technique: { type: 'text', doc: 'Printing technique of those that say no other.' },
    size: { type: 'text', doc: 'Size of those that say no other: height by width, with unit.' },
    volume: { type: 'text', doc: 'Volume of those that say no other.' },
    colouring: { type: 'text', doc: 'Colouring of those that say no other.' },
    engraver: { type: 'record', to: ['Agent'], orNew: 'engraverName', doc: 'Who made all of them.' },
    engraverName: { type: 'text', doc: 'Name of an engraver who is new.' },
    engraverRole: { type: 'text', doc: 'MARC relator code for that; egr (engraver) if absent, etr is an etcher.' },
    designer: { type: 'record', to: ['Agent'], orNew: 'designerName', doc: 'Who designed all of them.' },
    designerName: { type: 'text', doc: 'Name of a designer who is new.' },
    ...namesakes,
    ...said,
  },
  needs: [['numbers', 'captions', 'plates']],
  answers: {
    plates: { kind: 'Plate', many: true, doc: 'The plates, in the order of their numbers.' },
    appearances: { kind: 'Appearance', many: true, doc: 'That they are in the edition.' },
    attributions: { kind: 'Attribution', many: true, doc: 'Who made and designed them.' },
    named: { kind: 'Record', many: true, doc: 'What was made for a name.' },
  },
  example: {
    edition: 'edition-fischer-leipzig',
    numbers: '1-2, 4-8',
    form: 'PLATE',
    technique: 'engraving',
  },
} as const satisfies Act;
