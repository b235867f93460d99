import type { Field, ItemField, ItemsField, Kind, Role } from './declaration.ts';
import { claimKindNames, claimKinds, isRecordKind, type KindName, recordKindNames, recordKinds } from './kinds.ts';
import { described } from './sdl.ts';
import { sdlNamedType } from './sdl-names.ts';

/** Mutations of every kind with their inputs and answers, as committed in schema/graphql/commands-of-kinds.graphql. */
export function commandsSdl(): string {
  const kinds: readonly KindName[] = [...recordKindNames, ...claimKindNames];
  const blocks = [
    `extend type Mutation {\n${kinds.flatMap(mutations).join('\n')}\n}`,
    ...kinds.flatMap(kind => [addInput(kind), editInput(kind), answer(kind)]),
    ...itemInputs(),
  ];
  return `# Generated from src/domain/model/kinds/ by \`npm run generate\`: change the declarations, not this file.\n\n${blocks.join('\n\n')}\n`;
}

/** Field of an answer that holds a row of the kind: `PartOf` is `partOf`. */
export function rowField(kind: KindName): string {
  return kind.charAt(0).toLowerCase() + kind.slice(1);
}

function mutations(kind: KindName): string[] {
  const [one] = declarationOf(kind).words.en;
  const mutation = (name: string, doc: string, input: string) =>
    `${described(doc, '  ')}  ${name}${kind}(\n    "What is to be written."\n    input: ${input}!\n  ): ${kind}Written!`;
  const common = [
    mutation('add', `Adds: ${one}.`, `Add${kind}Input`),
    mutation('edit', `Changes some fields: ${one}. Better words of the same person are an edit.`, `Edit${kind}Input`),
  ];
  const restore = mutation('restore', `What was withdrawn is there again: ${one}.`, 'RestoreInput');
  if (isRecordKind(kind)) {
    return [...common, mutation('withdraw', `Takes out what nothing names: ${one}.`, 'WithdrawInput'), restore];
  }
  const another = `Another claim takes its place: ${one}. Another value, or another person, is a new claim; what is not given is as it was.`;
  return [
    ...common,
    mutation('withdraw', `It is said no longer: ${one}.`, 'WithdrawInput'),
    restore,
    mutation('supersede', another, `Edit${kind}Input`),
  ];
}

/** Of the input of every mutation. */
export const signedField = '  "Who writes, and why."\n  signed: SignedInput';

/** Of the answer of every mutation, beside what it wrote. */
export const writtenFields: readonly string[] = [
  '  "Number of the change set; of the last one where nothing was changed."\n  changeSet: Int!',
  '  "Contradictions in which what was written takes part. They are told, and never refused. Null: it is written, but they could not be looked for."\n  problems: [Problem!]',
];

function addInput(kind: KindName): string {
  const fields = [signedField, '  "An id given by hand; absent: one is made."\n  id: ID', ...inputFields(kind, true)];
  return `${described(`New: ${declarationOf(kind).words.en[0]}.`)}input Add${kind}Input {\n${fields.join('\n')}\n}`;
}

function editInput(kind: KindName): string {
  const [one] = declarationOf(kind).words.en;
  const fields = [
    signedField,
    '  "Id."\n  id: ID!',
    '  "Number of the last change set when it was looked at: what changed since is not written over."\n  seen: Int',
    '  "What somebody else changed since stays, if it is none of the fields that are given."\n  merge: Boolean = false',
    ...inputFields(kind, false),
  ];
  return `${described(`Fields to change: ${one}. One that is null has no value from now on; one that is absent stays.`)}input Edit${kind}Input {\n${fields.join('\n')}\n}`;
}

function answer(kind: KindName): string {
  const [one] = declarationOf(kind).words.en;
  const row = `${described(`As it is now: ${one}; null if it is not there.`, '  ')}  ${rowField(kind)}: ${kind}`;
  const old = isRecordKind(kind)
    ? []
    : [`${described('The claim whose place was taken; null where none was.', '  ')}  superseded: ${kind}`];
  return `${described(`What was written: ${one}.`)}type ${kind}Written {\n${[row, ...old, ...writtenFields].join('\n')}\n}`;
}

function inputFields(kind: KindName, isNew: boolean): string[] {
  const declared = declarationOf(kind);
  const roles: Readonly<Record<string, Role>> = declared.type === 'claim' ? declared.roles : {};
  return [
    ...Object.entries(roles).map(([name, role]) => linkField(name, role, isNew)),
    ...Object.entries<Field>(declared.fields).map(([name, field]) => inputField(name, field, isNew)),
    ...(declared.type === 'claim' ? claimBase : recordBase),
  ];
}

function linkField(name: string, { doc, to, required }: Pick<Role, 'doc' | 'to' | 'required'>, isNew: boolean): string {
  return `${described(`${doc} Id of: ${to.join(', ')}.`, '  ')}  ${name}: ID${isNew && required === true ? '!' : ''}`;
}

/** A field of an input, as it is declared. @param isNew what must be given must be given here */
export function inputField(name: string, field: Field | ItemField, isNew: boolean): string {
  if (field.type === 'record') return linkField(name, field, isNew);
  const unit = 'unit' in field && field.unit !== undefined ? ` Unit: ${field.unit}.` : '';
  const one = field.type === 'items' ? `${field.name}Input` : sdlNamedType(field);
  const isList = field.type === 'items' || ('many' in field && field.many === true);
  const isNeeded = isNew && field.required === true && field.filled !== true;
  const type = `${isList ? `[${one}!]` : one}${isNeeded ? '!' : ''}`;
  return `${described(field.doc + unit, '  ')}  ${name}: ${type}`;
}

/** Inputs of the items that fields hold, each once. */
function itemInputs(): string[] {
  const all = [...Object.values<Kind>(recordKinds), ...Object.values<Kind>(claimKinds)];
  const items = new Map<string, ItemsField>();
  for (const { fields } of all) {
    for (const field of Object.values(fields)) if (field.type === 'items') items.set(field.name, field);
  }
  return [...items.values()].map(itemInput);
}

/** Input of one item of a field. */
export function itemInput({ name, item }: ItemsField): string {
  const fields = Object.entries<ItemField>(item).map(([part, field]) => inputField(part, field, true));
  return `${described(`One ${name} as it is given.`)}input ${name}Input {\n${fields.join('\n')}\n}`;
}

function declarationOf(kind: KindName): Kind {
  return { ...recordKinds, ...claimKinds }[kind];
}

const notebook = '  "Notebook that it belongs to; absent: shared."\n  notebook: String';

const recordBase = [
  '  "Names and titles."\n  labels: [LabelInput!]',
  '  "Addresses of the same thing elsewhere."\n  sameAs: [URL!]',
  '  "Notes."\n  notes: [String!]',
  '  "Free columns."\n  columns: [ColumnInput!]',
  notebook,
];

const claimBase = [
  '  "Whether we reason from it; absent: held."\n  stance: Stance',
  '  "How sure it is; absent: certain."\n  certainty: Certainty',
  '  "Group of claims of which exactly one is true: all of one kind, and about the same. Id of: Alternatives."\n  alternativeTo: ID',
  '  "Why it is said."\n  evidence: [EvidenceInput!]',
  '  "Who says so."\n  by: String',
  '  "Day on which it was said."\n  on: Day',
  notebook,
];
