import type { ItemsField } from '../model/declaration.ts';
import { daySchema, evidenceSchema, fieldSchema, type JsonSchema } from '../model/graph-file-schema.ts';
import type { Act, ActField } from './act.ts';

/** JSON Schema (draft 2020-12) of what is given to an act: an object with its fields by name. */
export function actSchema({ doc, fields }: Act): JsonSchema {
  return {
    type: 'object',
    description: doc,
    properties: Object.fromEntries(Object.entries(fields).map(([name, field]) => [name, schemaOf(field)])),
    required: Object.entries(fields).flatMap(([name, { required }]) => (required === true ? [name] : [])),
    additionalProperties: false,
  };
}

function schemaOf(field: ActField): JsonSchema {
  if (field.type === 'day') return daySchema(field.doc);
  if (field.type === 'items') {
    return field.name === 'Evidence' ? { ...evidenceSchema, description: field.doc } : fieldSchema(field as ItemsField);
  }
  return fieldSchema(field);
}
