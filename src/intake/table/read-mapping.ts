import { Compile, type Validator } from 'typebox/schema';
import { faultMessage } from '../../domain/model/check-row-message.ts';
import type { JsonSchema } from '../../domain/model/graph-file-schema.ts';
import { parseJson } from '../../domain/text/parse-json.ts';
import { PlatestemmaError } from '../../errors.ts';
import { checkMapping } from './check-mapping.ts';
import type { MappingFault } from './check-value.ts';
import { mappingSchema } from './mapping-schema.ts';
import type { TableMapping } from './table-mapping.ts';

/**
 * Reads a mapping file and checks it: its form by the schema, then everything that it names.
 * @param file its name, for messages
 * @throws INPUT_INVALID with the path of the first fault and the number of the others
 */
export function readMapping(text: string, file?: string): TableMapping {
  const given = parse(text, file);
  compiled ??= Compile(mappingSchema());
  if (!compiled.Check(given)) {
    const { message, field, more } = faultMessage(compiled.Errors(given)[1], given, openSchema());
    throw refusal({ path: field ?? '', message }, more, file);
  }
  const { records, ...rest } = given as TableMapping;
  // What every object has by its nature is no entry.
  const mapping: TableMapping = { ...rest, records: Object.assign(Object.create(null), records) };
  const [first, ...others] = checkMapping(mapping);
  if (first !== undefined) throw refusal(first, others.length, file);
  return mapping;
}

let compiled: Validator | undefined;

function parse(text: string, file: string | undefined): unknown {
  try {
    return parseJson(text);
  } catch (cause) {
    const message = `expected a mapping as JSON, came "${text.slice(0, 60)}": ${(cause as Error).message}`;
    throw new PlatestemmaError('INPUT_INVALID', message, { cause, place: file === undefined ? {} : { file } });
  }
}

function refusal({ path, message }: MappingFault, more: number, file: string | undefined): PlatestemmaError {
  const where = [...(file === undefined ? [] : [file]), ...(path === '' ? [] : [path])].join(', ');
  const others = more === 0 ? '' : ` (and ${more} more)`;
  return new PlatestemmaError('INPUT_INVALID', `mapping ${where}: ${message}${others}`, {
    place: { ...(file === undefined ? {} : { file }), ...(path === '' ? {} : { field: path }) },
  });
}

/** The schema with what its references name in their place, as messages look names up in it. */
function openSchema(): JsonSchema {
  const schema = mappingSchema();
  const known = new Map<string, object>();
  const open = (part: unknown): unknown => {
    if (Array.isArray(part)) return part.map(open);
    if (typeof part !== 'object' || part === null) return part;
    const name = (part as { readonly $ref?: string }).$ref?.replace('#/$defs/', '');
    if (name === undefined) return Object.fromEntries(Object.entries(part).map(([key, inner]) => [key, open(inner)]));
    const found = known.get(name);
    if (found !== undefined) return found;
    const made: Record<string, unknown> = {};
    known.set(name, made);
    return Object.assign(made, open((schema['$defs'] as Readonly<Record<string, unknown>>)[name]));
  };
  return open(schema) as JsonSchema;
}
