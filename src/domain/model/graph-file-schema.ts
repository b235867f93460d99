import type { Field, ItemField, Kind } from './declaration.ts';
import {
  type ClaimKindName,
  claimKindNames,
  claimKinds,
  type RecordKindName,
  recordKindNames,
  recordKinds,
} from './kinds.ts';
import { percentRectangle } from './percent-rectangle.ts';
import { certainty, stance, standing } from './vocabularies.ts';

export type JsonSchema = Readonly<Record<string, unknown>>;

/**
 * JSON Schema (draft 2020-12) of one line of a graph file: one record or claim, flat. What links name, check characters
 * of ids and readable dates are beyond a schema; `checkRow` looks at those too, but for the first.
 */
export function graphFileSchema(): JsonSchema {
  const kinds = [...recordKindNames, ...claimKindNames];
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'A line of a graph file',
    description:
      'One record or claim as one line of JSON. Generated from src/domain/model/kinds/ by `npm run generate`: change the declarations, not this file.',
    oneOf: kinds.map(kind => ({ $ref: `#/$defs/${kind}` })),
    $defs: Object.fromEntries(kinds.map(kind => [kind, rowSchema(kind)])),
  };
}

/** JSON Schema of a row of one kind; records may carry their origins. Stands for itself, without references. */
export function rowSchema(kind: RecordKindName | ClaimKindName): JsonSchema {
  const declared: Kind = { ...recordKinds, ...claimKinds }[kind];
  const roles = declared.type === 'claim' ? declared.roles : {};
  const required = Object.entries({ ...roles, ...declared.fields }).flatMap(([name, part]) =>
    part.required ? [name] : [],
  );
  return {
    type: 'object',
    description: declared.doc,
    properties: {
      id: id(`Id of the ${declared.words.en[0]}.`),
      kind: { const: kind },
      ...Object.fromEntries(Object.entries(roles).map(([name, role]) => [name, id(role.doc)])),
      ...Object.fromEntries(Object.entries(declared.fields).map(([name, field]) => [name, fieldSchema(field)])),
      ...(declared.type === 'claim' ? claimBase : recordBase),
    },
    required: ['id', 'kind', ...required],
    additionalProperties: false,
  };
}

/** Forms of text that the schema asks for, with what a person reads. Check characters of ids are looked at apart. */
export const textForms = {
  id: { pattern: '^[a-z]+(-[a-z0-9]+)+$', words: 'an id' },
  uri: { pattern: '^[A-Za-z][A-Za-z0-9+.-]*:[^\\s]+$', words: 'an absolute address' },
  language: { pattern: '^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$', words: 'a language tag' },
  day: { pattern: '^(-?[0-9]{4}|Y-?[1-9][0-9]{4,5})-[0-9]{2}-[0-9]{2}$', words: 'a day as YYYY-MM-DD' },
} as const;

const text = (description: string): JsonSchema => ({ type: 'string', minLength: 1, description });
const id = (description: string): JsonSchema => ({ type: 'string', pattern: textForms.id.pattern, description });
const list = (items: JsonSchema, description: string): JsonSchema => ({ type: 'array', items, description });

const recordBase: JsonSchema = {
  labels: list(
    object({ text: text('The name.'), language: language('Language it is in, where that is known.') }, ['text']),
    'Names and titles.',
  ),
  sameAs: list(uri('An address.'), 'Addresses of the same thing elsewhere.'),
  notes: list(text('A note.'), 'Notes.'),
  columns: {
    type: 'object',
    additionalProperties: { type: 'string' },
    description: 'Free columns: kept, searched, exported.',
  },
  notebook: text('Notebook that it belongs to; absent: shared.'),
  origins: list(
    object({ source: text('Source.'), key: text('Key of the record in the source.') }, ['source', 'key']),
    'Where it was taken from.',
  ),
};

/** Why a claim is said. */
export const evidenceSchema: JsonSchema = list(
  {
    ...object(
      {
        reference: id('A source that can be cited.'),
        locator: text('Page, number or field in the reference.'),
        record: id('A record or exemplar that was seen.'),
        mark: text('Id of a mark within the record seen.'),
        claim: id('Another claim.'),
        words: text('Words of a document.'),
        note: text('A note.'),
        photograph: id('A photograph on which it can be seen.'),
        region: fieldSchema({ type: 'items', ...percentRectangle, doc: 'Where on the photograph it can be seen.' }),
      },
      [],
    ),
    minProperties: 1,
  },
  'Why it is said.',
);

const claimBase: JsonSchema = {
  standing: word(Object.keys(standing.words), standing.doc),
  withdrawnBecause: text('Why it was withdrawn.'),
  supersededBy: id('The claim that took its place.'),
  stance: word(Object.keys(stance.words), stance.doc),
  certainty: word(Object.keys(certainty.words), certainty.doc),
  alternativeTo: id('Group of claims of which exactly one is true: all of one kind, and about the same.'),
  evidence: evidenceSchema,
  by: text('Who says so.'),
  on: daySchema('Day on which it was said, YYYY-MM-DD.'),
  notebook: text('Notebook that it belongs to; absent: shared.'),
};

export function fieldSchema(field: Field | ItemField): JsonSchema {
  if (field.type === 'items') {
    const required = Object.entries<ItemField>(field.item).flatMap(([name, part]) => (part.required ? [name] : []));
    const parts = Object.entries<ItemField>(field.item).map(([name, part]) => [name, fieldSchema(part)]);
    return list(object(Object.fromEntries(parts), required), field.doc);
  }
  return 'many' in field && field.many === true ? list(single(field), field.doc) : single(field);
}

function single(field: Exclude<Field, { type: 'items' }> | ItemField): JsonSchema {
  switch (field.type) {
    case 'text':
    case 'edtf':
      return text(field.doc);
    case 'uri':
      return uri(field.doc);
    case 'language':
      return language(field.doc);
    case 'integer':
    case 'number':
      return {
        type: field.type,
        ...(field.least === undefined ? {} : { minimum: field.least }),
        ...('most' in field && field.most !== undefined ? { maximum: field.most } : {}),
        description: field.unit === undefined ? field.doc : `${field.doc} Unit: ${field.unit}.`,
      };
    case 'flag':
      return { type: 'boolean', description: field.doc };
    case 'word':
      return word(Object.keys(field.of.words), field.doc);
    case 'record':
      return id(field.doc);
    case 'json':
      return { description: field.doc };
  }
}

function object(properties: Readonly<Record<string, JsonSchema>>, required: readonly string[]): JsonSchema {
  return { type: 'object', properties, required, additionalProperties: false };
}

export function daySchema(description: string): JsonSchema {
  return { type: 'string', pattern: textForms.day.pattern, description };
}

function word(words: readonly string[], description: string): JsonSchema {
  return { type: 'string', enum: words, description };
}

function uri(description: string): JsonSchema {
  return { type: 'string', pattern: textForms.uri.pattern, description };
}

function language(description: string): JsonSchema {
  return { type: 'string', pattern: textForms.language.pattern, description };
}
