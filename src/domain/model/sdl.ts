import type { Field, ItemField, ItemsField, Kind, RecordKind, Role, Vocabulary } from './declaration.ts';
import {
  type ClaimKindName,
  claimKindNames,
  claimKinds,
  type RecordKindName,
  recordKindNames,
  recordKinds,
} from './kinds.ts';
import { linksOfKind } from './links.ts';
import { claimBase, connectionPaging, recordBase } from './sdl-base.ts';
import { inversesOf } from './sdl-inverse.ts';
import { kindEnumValue, pictureKinds, sdlLinkDoc, sdlLinkType, sdlTypeOf } from './sdl-names.ts';
import { certainty, stance, standing } from './vocabularies.ts';

/** GraphQL schema of all kinds, vocabularies and their connections, as committed in schema/graphql/kinds.graphql. */
export function kindsSdl(): string {
  const blocks = [
    kindEnum(
      'RecordKind',
      'Every kind of record.',
      recordKindNames.map(kind => recordKinds[kind]),
    ),
    kindEnum(
      'ClaimKind',
      'Every kind of claim.',
      claimKindNames.map(kind => claimKinds[kind]),
    ),
    ...vocabularies().map(vocabulary),
    ...itemTypes().map(itemType),
    ...interfaces(),
    ...recordKindNames.map(recordType),
    ...claimKindNames.map(claimType),
    groundUnion(),
    ...recordKindNames.flatMap(connection),
    rootConnections(),
  ];
  return `# Generated from src/domain/model/kinds/ by \`npm run generate\`: change the declarations, not this file.\n\n${blocks.join('\n\n')}\n`;
}

function kindEnum(name: string, doc: string, kinds: readonly Kind[]): string {
  const values = kinds.map(kind => `${described(kind.doc, '  ')}  ${kindEnumValue(kind.kind as RecordKindName)}`);
  return `${described(doc)}enum ${name} {\n${values.join('\n')}\n}`;
}

/** The enumeration of a vocabulary. */
export function vocabulary({ name, doc, words }: Vocabulary): string {
  const values = Object.entries(words).map(([word, meaning]) => `${described(sentence(meaning), '  ')}  ${word}`);
  return `${described(doc)}enum ${name} {\n${values.join('\n')}\n}`;
}

function itemType({ name, item }: ItemsField): string {
  const fields = Object.entries(item).map(([field, declared]) => plainField(field, declared));
  return `${described(itemDoc(name))}type ${name} {\n${fields.join('\n')}\n}`;
}

function interfaces(): string[] {
  const pictures = pictureKinds.map(kind => recordKinds[kind].words.en[0]).join(', ');
  return [
    `${described('A record: a thing.')}interface Record implements Node {\n${recordBase.join('\n')}\n}`,
    `${described(`Whatever can be copied, or copy: ${pictures}.`)}interface Picture implements Node & Record {\n${recordBase.join('\n')}\n}`,
    `${described('A claim: a statement that a scholar could dispute.')}interface Claim implements Node {\n${claimBase.join('\n')}\n}`,
  ];
}

function recordType(kind: RecordKindName): string {
  const declared: RecordKind = recordKinds[kind];
  const fields = [
    ...recordBase,
    ...Object.entries(declared.fields).map(([name, field]) => plainField(name, field)),
    ...inversesOf(kind).map(
      inverse => `${described(inverse.doc, '  ')}  ${inverse.name}${connectionPaging}: ${inverse.of}Connection!`,
    ),
  ];
  const faces = declared.picture === true ? 'Node & Record & Picture' : 'Node & Record';
  return `${described(kindDoc(declared))}type ${kind} implements ${faces} {\n${fields.join('\n')}\n}`;
}

function claimType(kind: ClaimKindName): string {
  const declared = claimKinds[kind];
  const fields = [
    ...claimBase,
    ...Object.entries<Role>(declared.roles).map(
      ([name, role]) => `${described(sdlLinkDoc(role), '  ')}  ${name}: ${sdlLinkType(role.to)}`,
    ),
    ...Object.entries<Field>(declared.fields).map(([name, field]) => plainField(name, field)),
  ];
  return `${described(kindDoc(declared))}type ${kind} implements Node & Claim {\n${fields.join('\n')}\n}`;
}

function plainField(name: string, field: Field | ItemField): string {
  const doc = field.type === 'record' ? sdlLinkDoc(field) : field.doc;
  const unit = 'unit' in field && field.unit !== undefined ? ` Unit: ${field.unit}.` : '';
  return `${described(doc + unit, '  ')}  ${name}: ${sdlTypeOf(field)}`;
}

/** Records of some kinds say something of themselves: to what other record they belong. */
function groundUnion(): string {
  const doc = 'What an answer may rest on: a claim, a record whose field names another record, or a convention.';
  const records = recordKindNames.filter(kind => linksOfKind(kind).length > 0);
  return `${described(doc)}union Ground =\n  | ${[...claimKindNames, ...records, 'Convention'].join('\n  | ')}`;
}

function connection(kind: RecordKindName): string[] {
  const { words } = recordKinds[kind];
  return [
    `${described(`A stretch of a list of ${words.en[1]}.`)}type ${kind}Connection {
${described(`The ${words.en[1]}, each with its cursor.`, '  ')}  edges: [${kind}Edge!]!
${described(`The ${words.en[1]} alone.`, '  ')}  nodes: [${kind}!]!
${described('Whether there is more, and from where.', '  ')}  pageInfo: PageInfo!
${described(`How many ${words.en[1]} there are in the whole list.`, '  ')}  totalCount: Int!
}`,
    `${described(`One ${words.en[0]} in a list.`)}type ${kind}Edge {
${described(`The ${words.en[0]}.`, '  ')}  node: ${kind}!
${described('Its place in the list, for `after`.', '  ')}  cursor: String!
}`,
  ];
}

/** `conventions` is a question of its own (those in force), so that its kind has no list here. */
function rootConnections(): string {
  const listed = recordKindNames.filter(kind => kind !== 'Convention');
  const fields = listed.map(kind => {
    const { plural, words } = recordKinds[kind];
    const doc = `All ${words.en[1]}, in the order asked for; those of equal labels by id.`;
    return `${described(doc, '  ')}  ${plural}(
    "How many, 0 to 200."
    first: Int = 25
    "Cursor of the one before."
    after: String
    "Order of the list."
    order: RecordOrder = LABEL
    "When; absent: as it is recorded now. Then all records of the kind are read for it."
    asOf: AsOf
  ): ${kind}Connection!`;
  });
  return `extend type Query {\n${fields.join('\n')}\n}`;
}

/** Vocabularies in use, each once, in order of first use; those that every claim has first. */
export function vocabularies(): Vocabulary[] {
  const found = new Map<string, Vocabulary>([standing, stance, certainty].map(v => [v.name, v]));
  for (const field of allFields()) if (field.type === 'word') found.set(field.of.name, field.of);
  return [...found.values()];
}

function itemTypes(): ItemsField[] {
  const found = new Map<string, ItemsField>();
  for (const field of allFields()) if (field.type === 'items') found.set(field.name, field);
  return [...found.values()];
}

function allFields(): (Field | ItemField)[] {
  const fields: Field[] = allKinds().flatMap(kind => Object.values<Field>(kind.fields));
  const inItems = fields.flatMap(field => (field.type === 'items' ? Object.values<ItemField>(field.item) : []));
  return [...fields, ...inItems];
}

function itemDoc(name: string): string {
  const users = allKinds().flatMap(kind =>
    Object.entries<Field>(kind.fields)
      .filter(([, field]) => field.type === 'items' && field.name === name)
      .map(([field]) => `${kind.kind}.${field}`),
  );
  return `One item of ${users.join(', ')}.`;
}

function allKinds(): readonly Kind[] {
  return [...Object.values(recordKinds), ...Object.values(claimKinds)];
}

function kindDoc(kind: Kind): string {
  return `${kind.doc}\n\nStandard terms: ${kind.standard}.`;
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

/** A description before a definition, on a line of its own. */
export function described(doc: string, indent = ''): string {
  const text = doc.replaceAll('"""', '\\"""');
  if (!text.includes('\n') && !text.includes('"') && !text.includes('\\')) return `${indent}"${text}"\n`;
  const lines = text.split('\n').map(line => (line === '' ? '' : indent + line));
  return `${indent}"""\n${lines.join('\n')}\n${indent}"""\n`;
}
