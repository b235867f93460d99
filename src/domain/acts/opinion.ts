import { opinionVerdict } from '../model/vocabularies.ts';
import type { Act } from './act.ts';
import { howCopied, namesakes, pictures, said, through } from './common-fields.ts';

export const opinion = {
  name: 'recordOpinion',
  command: 'opinion',
  doc: 'Somebody thinks so of a claim, or says that a picture follows another: then that copying is recorded as weighed, with the opinion. Nothing is reasoned from it until it is held.',
  fields: {
    agent: { type: 'record', to: ['Agent'], orNew: 'agentName', doc: 'Who thinks so.' },
    agentName: { type: 'text', doc: 'Name of a person who is new.' },
    claim: { type: 'record', to: ['any claim'], doc: 'The claim that the opinion is of.' },
    copy: { type: 'record', to: pictures, doc: 'Instead of a claim: the picture that follows another.' },
    picture: { type: 'record', to: pictures, doc: 'The picture that it follows.' },
    ...howCopied,
    ...through,
    verdict: { type: 'word', of: opinionVerdict, doc: 'Agrees, doubts or rejects; agrees if absent.' },
    asWritten: { type: 'text', doc: 'The words of the opinion.' },
    ...namesakes,
    ...said,
  },
  needs: [
    ['agent', 'agentName'],
    ['claim', 'copy'],
  ],
  answers: {
    opinion: { kind: 'Opinion', doc: 'The opinion.' },
    copying: { kind: 'Copying', doc: 'The copying that it is of, where it is one that was recorded with it.' },
    named: { kind: 'Record', many: true, doc: 'What was made for a name.' },
  },
  example: {
    agentName: 'Astrid Lindqvist',
    copy: 'motif-table-pilot',
    picture: 'plate-evening-ferry',
    asWritten: 'the ferryman again, I should think',
  },
} as const satisfies Act;
