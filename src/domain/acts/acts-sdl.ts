import type { ItemsField, Vocabulary } from '../model/declaration.ts';
import { claimKinds, recordKinds } from '../model/kinds.ts';
import { described, vocabularies, vocabulary } from '../model/sdl.ts';
import { inputField, itemInput, signedField, writtenFields } from '../model/sdl-commands.ts';
import type { Act, ActAnswer, ActField } from './act.ts';
import { acts } from './acts.ts';
import { listed } from './check-act.ts';

/** Mutations of all acts with their inputs and answers, as committed in schema/graphql/acts.graphql. */
export function actsSdl(): string {
  const all: readonly Act[] = Object.values(acts);
  const blocks = [
    `extend type Mutation {\n${all.map(mutation).join('\n')}\n}`,
    ...all.flatMap(act => [input(act), answer(act)]),
    ...items(all).map(itemInput),
    ...ownVocabularies(all).map(vocabulary),
  ];
  return `# Generated from src/domain/acts/ by \`npm run generate\`: change the declarations, not this file.\n\n${blocks.join('\n\n')}\n`;
}

function inputName({ name }: Act): string {
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}Input`;
}

/** `PieceRecorded` of recordPiece. */
function answerName({ name }: Act): string {
  return `${name.replace(/^record/, '')}Recorded`;
}

function mutation(act: Act): string {
  return `${described(act.doc, '  ')}  ${act.name}(\n    "What is to be written."\n    input: ${inputName(act)}!\n  ): ${answerName(act)}!`;
}

function input(act: Act): string {
  const groups = act.needs.map(group => ` ${listed(group)} must be given.`).join('');
  const fields = Object.entries(act.fields).map(([name, field]) => fieldOf(name, field));
  return `${described(`What is given to ${act.name}.${groups}`)}input ${inputName(act)} {\n${[signedField, ...fields].join('\n')}\n}`;
}

function fieldOf(name: string, field: ActField): string {
  if (field.type === 'day') return `${described(field.doc, '  ')}  ${name}: Day`;
  if (field.type !== 'record' || field.many !== true) return inputField(name, field as ItemsField, true);
  return `${described(`${field.doc} Ids of: ${field.to.join(', ')}.`, '  ')}  ${name}: [ID!]`;
}

function answer(act: Act): string {
  const named = Object.entries(act.answers).map(([name, each]) => answerField(name, each));
  return `${described(`What ${act.name} wrote, or found written.`)}type ${answerName(act)} {\n${[...named, ...writtenFields].join('\n')}\n}`;
}

function answerField(name: string, { doc, kind, many }: ActAnswer): string {
  return `${described(doc, '  ')}  ${name}: ${many === true ? `[${kind}!]!` : kind}`;
}

/** Items of acts that are no items of kinds, each once. */
function items(all: readonly Act[]): readonly ItemsField[] {
  const known = new Set([
    'Evidence',
    ...[...Object.values(recordKinds), ...Object.values(claimKinds)].flatMap(itemNames),
  ]);
  const found = new Map<string, ItemsField>();
  for (const field of all.flatMap(({ fields }) => Object.values(fields))) {
    if (field.type === 'items' && !known.has(field.name)) found.set(field.name, field as ItemsField);
  }
  return [...found.values()];
}

function itemNames({ fields }: { readonly fields: Readonly<Record<string, ActField>> }): readonly string[] {
  return Object.values(fields).flatMap(field => (field.type === 'items' ? [field.name] : []));
}

/** Vocabularies of acts that no kind has. */
function ownVocabularies(all: readonly Act[]): readonly Vocabulary[] {
  const known = new Set(vocabularies().map(({ name }) => name));
  const words = all.flatMap(({ fields }) => Object.values(fields)).filter(field => field.type === 'word');
  return [...new Set(words.map(({ of }) => of))].filter(({ name }) => !known.has(name));
}
