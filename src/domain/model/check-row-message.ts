import type { TLocalizedValidationError } from 'typebox/error';
import { type JsonSchema, textForms } from './graph-file-schema.ts';
import { nearName } from './near-name.ts';

export interface FaultMessage {
  /** What was expected and what came. */
  readonly message: string;
  /** Path of the field, as a person writes it: `marks[0].form`; absent: the row itself. */
  readonly field?: string;
  /** Faults that are not told. */
  readonly more: number;
}

const typeWords: Readonly<Record<string, string>> = {
  string: 'text',
  integer: 'a whole number',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
};

/** The first fault that a schema found in a value, as a person reads it. `errors` is not empty. */
export function faultMessage(
  errors: readonly TLocalizedValidationError[],
  value: unknown,
  schema: JsonSchema,
): FaultMessage {
  // An unknown field comes as two errors; the one that names it says more.
  const told = errors.filter(error => error.keyword !== 'boolean');
  const error = told[0] ?? errors[0]!;
  const path = error.instancePath.split('/').slice(1).map(unescaped);
  const more = told.length - 1;
  if (error.keyword === 'additionalProperties') return { ...unknownField(error, path, schema), more };
  if (error.keyword === 'required')
    return {
      message: 'expected a value, came none',
      field: written([...path, error.params.requiredProperties[0]!]),
      more,
    };
  const message = `expected ${expected(error)}, came ${shown(at(value, path))}${nearWord(error, at(value, path))}`;
  return path.length === 0 ? { message, more } : { message, field: written(path), more };
}

function unknownField(
  error: Extract<TLocalizedValidationError, { keyword: 'additionalProperties' }>,
  path: readonly string[],
  schema: JsonSchema,
): { message: string; field: string } {
  const name = error.params.additionalProperties[0]!;
  const parts = error.schemaPath.split('/').slice(1).map(unescaped);
  const allowed = Object.keys((at(schema, [...parts, 'properties']) as object | undefined) ?? {});
  const near = nearName(name, allowed);
  const hint = near === undefined ? `one of ${allowed.join(', ')}` : `did you mean "${near}"?`;
  return { message: `there is no such field (${hint})`, field: written([...path, name]) };
}

function expected(error: TLocalizedValidationError): string {
  switch (error.keyword) {
    case 'type':
      return [error.params.type]
        .flat()
        .map(type => typeWords[type] ?? type)
        .join(' or ');
    case 'enum':
      return `one of ${error.params.allowedValues.join(', ')}`;
    case 'pattern':
      return (
        Object.values(textForms).find(form => form.pattern === String(error.params.pattern))?.words ?? 'another form'
      );
    case 'minLength':
      return 'text of at least one character';
    case 'minimum':
      return `at least ${error.params.limit}`;
    case 'maximum':
      return `at most ${error.params.limit}`;
    case 'minProperties':
      return 'at least one part';
    default:
      return error.message;
  }
}

function nearWord(error: TLocalizedValidationError, came: unknown): string {
  if (error.keyword !== 'enum' || typeof came !== 'string') return '';
  const near = nearName(came, error.params.allowedValues.map(String));
  return near === undefined ? '' : ` (did you mean "${near}"?)`;
}

function at(value: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((part, name) => (part as Readonly<Record<string, unknown>> | undefined)?.[name], value);
}

function written(path: readonly string[]): string {
  return path.map((name, i) => (/^\d+$/.test(name) ? `[${name}]` : i === 0 ? name : `.${name}`)).join('');
}

/** JSON Pointer, RFC 6901 section 4. */
function unescaped(token: string): string {
  return token.replaceAll('~1', '/').replaceAll('~0', '~');
}

function shown(value: unknown): string {
  const text = JSON.stringify(value) ?? 'none';
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
