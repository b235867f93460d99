import type { JsonSchema } from '../../domain/model/graph-file-schema.ts';
import { claimKindNames, recordKindNames } from '../../domain/model/kinds.ts';
import { readings } from './table-mapping.ts';

/** JSON Schema (draft 2020-12) of a mapping file. What names name, and what a kind has, is beyond it: see `checkMapping`. */
export function mappingSchema(): JsonSchema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'A mapping of a table',
    description:
      'How the rows of a table become records and claims; table-mapping.md beside this file explains it. Generated from src/intake/table/mapping-schema.ts by `npm run generate`.',
    ...mapping,
    $defs: { value, condition, entryFields: fields, linked },
  };
}

const text = (description: string): JsonSchema => ({ type: 'string', minLength: 1, description });
const texts = (description: string): JsonSchema => ({ type: 'array', items: { type: 'string' }, description });
const oneOrMore = (description: string): JsonSchema => ({
  type: ['string', 'array'],
  items: { type: 'string' },
  description,
});
const words = (description: string): JsonSchema => ({
  type: 'object',
  additionalProperties: { type: 'string' },
  description,
});
const ref = (name: string, description?: string): JsonSchema => ({
  $ref: `#/$defs/${name}`,
  ...(description === undefined ? {} : { description }),
});
const listOf = (name: string, description: string): JsonSchema => ({ type: 'array', items: ref(name), description });

function object(
  description: string,
  properties: Readonly<Record<string, JsonSchema>>,
  required: readonly string[] = [],
): JsonSchema {
  return { type: 'object', description, properties, required, additionalProperties: false };
}

const value: JsonSchema = {
  ...object('Where a value comes from: the name of a column or value, or a rule with one of the first five.', {
    column: text('Name of a column or value.'),
    text: text('A text in which {name} stands for a column or value; nothing if one of them is empty.'),
    always: { type: 'string', description: 'The same in every row.' },
    first: listOf('value', 'The first of these that gives anything.'),
    all: listOf('value', 'All of these, one after another.'),
    if: ref('condition', 'Nothing unless it holds.'),
    nothing: texts('Texts that say that there is nothing.'),
    part: text('Regular expression: what its first group finds, or the whole of it; nothing if it finds nothing.'),
    written: text('With part: what is made of its groups $1 to $9.'),
    replace: words('Texts and what stands for them; others stay.'),
    split: oneOrMore('Marks at which a text is parted.'),
    words: words('Texts and what stands for them; others are reported.'),
    otherwise: { type: ['string', 'null'], description: 'With words: what stands for others; null: nothing.' },
    read: { type: 'string', enum: readings, description: 'The grammar that reads it.' },
  }),
  type: ['string', 'object'],
  minLength: 1,
};

const condition: JsonSchema = {
  ...object('One test, or a list of which all must hold.', {
    column: text('Name of a column or value.'),
    is: oneOrMore('It is this, or one of these.'),
    isNot: oneOrMore('It is not this, or none of these.'),
    filled: { type: 'boolean', description: 'It has a value, or has none.' },
    like: text('A regular expression finds something in it.'),
    any: listOf('condition', 'At least one of these holds.'),
  }),
  type: ['object', 'array'],
  items: ref('condition'),
};

const fields: JsonSchema = {
  type: 'object',
  description:
    'Fields of the kind and where their values come from; a field that names a record has the name of an entry.',
  additionalProperties: {
    ...value,
    type: ['string', 'object', 'array'],
    items: { type: 'object', additionalProperties: ref('value') },
  },
};

const linked: JsonSchema = {
  ...object(
    'The name of an entry, or source and key of a record that may yet come.',
    { source: text('Who gives the key; the source of the row if absent.'), key: ref('value', 'Its key there.') },
    ['key'],
  ),
  type: ['string', 'object'],
};

const entry: Readonly<Record<string, JsonSchema>> = {
  if: ref('condition', 'Made only where it holds.'),
  each: ref(
    'value',
    'Made once for each text of this value, which {each} stands for, or each element of a list of JSON.',
  ),
  fields: ref('entryFields'),
};

const record = object(
  'A record that a row comes to: with a key of its own, or recognised by its name.',
  {
    kind: { type: 'string', enum: recordKindNames, description: 'Kind of record.' },
    key: ref('value', 'Its key in the source.'),
    named: ref('value', 'The name by which it is recognised within the source.'),
    ...entry,
  },
  ['kind'],
);

const claim = object(
  'A claim that a row comes to.',
  {
    kind: { type: 'string', enum: claimKindNames, description: 'Kind of claim.' },
    roles: {
      type: 'object',
      additionalProperties: ref('linked'),
      description: 'What it connects.',
    },
    imprint: object('Imprint alone: words from which places and names are taken.', {
      place: ref('value', 'Words of the place.'),
      agent: ref('value', 'Words of the publisher.'),
    }),
    said: texts('Columns that say it.'),
    note: ref('value', 'A note of the evidence.'),
    ...entry,
  },
  ['kind', 'roles'],
);

const mapping = object(
  'What a mapping says.',
  {
    $schema: text('Address of this schema.'),
    about: text('What the mapping is for.'),
    table: object(
      'How the table is written.',
      {
        form: {
          type: 'string',
          enum: ['delimited', 'json lines'],
          description: 'Delimited text, or one JSON object a line.',
        },
        delimiter: text('The character between values; a comma if absent.'),
        quote: text('The character around values, or none; " if absent.'),
        header: { type: 'boolean', description: 'Whether the first row names the columns; true if absent.' },
        encoding: text('Name of the encoding; if absent, what a byte order mark says, else utf-8.'),
        rowsPerRecord: {
          type: 'string',
          enum: ['one', 'several'],
          description: 'Whether rows that follow one another with the same key make one record; one if absent.',
        },
      },
      ['form'],
    ),
    columns: texts('Every column that the table is known to have.'),
    source: text('Who gives the keys; {name} stands for a column.'),
    reference: object(
      'What the evidence of the claims names.',
      {
        title: text('Its title; {name} stands for a column.'),
        key: text('Its key in the source; catalogue if absent.'),
        csl: { type: 'object', description: 'The source as one item of CSL-JSON, without its title.' },
      },
      ['title'],
    ),
    values: { type: 'object', additionalProperties: ref('value'), description: 'Values made from columns.' },
    row: text('The entry in records that a row is about.'),
    records: { type: 'object', additionalProperties: record, description: 'Records that a row comes to.' },
    claims: { type: 'array', items: claim, description: 'Claims that a row comes to.' },
  },
  ['table', 'columns', 'reference', 'row', 'records'],
);
