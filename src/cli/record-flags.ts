import type { Act, ActField } from '../domain/acts/act.ts';
import { optionName, plainWord, textValue, valueText } from '../domain/acts/act-text.ts';
import { PlatestemmaError } from '../errors.ts';
import { WrongUse } from './wrong-use.ts';

/** Values of the options of an act, by option: those of lists are lists of what each option gave. */
export type ActFlags = Readonly<Record<string, unknown>>;

/** Options of an act, derived from its fields. */
export function actFlags({ fields }: Act): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(fields).map(([name, field]) => {
      const option = optionName(name);
      if (field.type === 'flag')
        return [option, { kind: 'boolean', optional: true, withNegated: false, brief: briefOf(field) }];
      const parse = (text: string) => read(option, field, text);
      const several = isList(field) ? { variadic: true } : {};
      return [
        option,
        { kind: 'parsed', parse, optional: true, ...several, brief: briefOf(field), placeholder: placeholder(field) },
      ];
    }),
  );
}

/** What options give to an act, by field. */
export function givenBy({ fields }: Act, flags: ActFlags): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    Object.entries(fields).flatMap(([name, field]) => {
      const value = flags[optionName(name)];
      if (value === undefined) return [];
      return [[name, isList(field) ? (value as readonly (readonly unknown[])[]).flat() : value]];
    }),
  );
}

/** A command line that gives to an act what is given, after the words that name the act. */
export function commandLine({ fields }: Act, given: Readonly<Record<string, unknown>>): string {
  return Object.entries(given)
    .map(([name, value]) => {
      const option = `--${optionName(name)}`;
      return fields[name]!.type === 'flag' ? option : `${option} ${quoted(valueText(fields[name]!, value))}`;
    })
    .join(' ');
}

function isList(field: ActField): boolean {
  return field.type === 'items' || ('many' in field && field.many === true);
}

function read(option: string, field: ActField, text: string): unknown {
  try {
    const value = textValue(field, text);
    if (value === undefined) throw new WrongUse(`expected a value for --${option}, came none`);
    return value;
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    throw new WrongUse(`--${option}: ${error.message}`, { cause: error });
  }
}

function briefOf(field: ActField): string {
  const words = field.type === 'word' ? [`One of: ${Object.keys(field.of.words).map(plainWord).join(', ')}.`] : [];
  const parts =
    field.type === 'items' ? [`Parts, as "name: value; name: value": ${Object.keys(field.item).join(', ')}.`] : [];
  const several = isList(field) ? ['May be repeated.'] : [];
  return [field.doc, ...words, ...parts, ...several].join(' ').replace(/\.$/, '');
}

function placeholder(field: ActField): string {
  switch (field.type) {
    case 'record':
      return 'id';
    case 'edtf':
      return 'date';
    case 'integer':
    case 'number':
      return 'number';
    case 'items':
      return 'parts';
    case 'word':
      return 'word';
    case 'day':
      return 'day';
    case 'language':
      return 'tag';
    default:
      return 'text';
  }
}

/** As a shell takes it for one word. */
function quoted(text: string): string {
  return /^[\w.,:/+-]+$/.test(text) ? text : `"${text.replace(/[\\"$`]/g, '\\$&')}"`;
}
