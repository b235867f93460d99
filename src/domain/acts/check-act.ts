import { type ErrorCode, PlatestemmaError } from '../../errors.ts';
import { parseDay } from '../dates/calendar.ts';
import { edtfBounds } from '../dates/edtf.ts';
import { admits } from '../model/check-row-links.ts';
import { FormCheck } from '../model/form-check.ts';
import { checkId } from '../model/id.ts';
import type { Act, ActField } from './act.ts';
import { actSchema } from './act-schema.ts';
import { type ActName, actNames, acts } from './acts.ts';

/** Why an act is refused. */
export interface ActFault {
  readonly code: ErrorCode;
  /** Name of the field, or path within it: `motifs[2].picture`; absent: the act as a whole. */
  readonly field?: string;
  /** What was expected and what came, without the name of the field. */
  readonly message: string;
}

/**
 * What is wrong with what is given to an act, by its declaration: its form; or, where that is right, ids that are mistyped or
 * name other kinds, dates that cannot be read, fields that are missing or do not go together. Whether what it names is there
 * is not looked at.
 */
export function checkAct(name: ActName, given: unknown): readonly ActFault[] {
  const act: Act = acts[name];
  if (typeof given !== 'object' || given === null || Array.isArray(given))
    return [fault(undefined, `expected an object with fields of ${name}, came ${JSON.stringify(given)}`)];
  const form = forms.get(name)!.fault(given);
  if (form === undefined) return [...valueFaults(act, given as Given), ...togetherFaults(act, given as Given)];
  const { field, message, more } = form;
  return [fault(field, more === 0 ? message : `${message} (and ${more} more)`)];
}

type Given = Readonly<Record<string, unknown>>;

const forms = new Map(actNames.map(name => [name, new FormCheck(() => actSchema(acts[name]))]));

function valueFaults({ fields }: Act, given: Given): readonly ActFault[] {
  return Object.entries(given).flatMap(([name, value]) => [
    ...[...placed(fields[name]!, name, value)].flatMap(({ field, path, value: part }) => valueFault(field, path, part)),
  ]);
}

interface Placed {
  readonly field: Pick<ActField, 'type'> & { readonly to?: readonly string[] };
  readonly path: string;
  readonly value: unknown;
}

/** Each value with what its declaration says of it, down to the parts of items. */
export function* placed(field: ActField, path: string, value: unknown): Generator<Placed> {
  if (Array.isArray(value)) {
    for (const [i, each] of value.entries()) yield* placed(field, `${path}[${i}]`, each);
  } else if (field.type === 'items') {
    for (const [part, inner] of Object.entries(value as Given))
      yield* placed(field.item[part] as ActField, `${path}.${part}`, inner);
  } else yield { field, path, value };
}

function valueFault({ type, to }: Placed['field'], path: string, value: unknown): readonly ActFault[] {
  try {
    if (type === 'edtf') edtfBounds(value as string);
    if (type === 'day') parseDay(value as string);
    if (type !== 'record' || admits(to!, checkId(value as string))) return [];
    return [fault(path, `expected the id of ${to!.join(' or ')}, came "${value}"`, 'KIND_MISMATCH')];
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    return [fault(path, error.message, error.code)];
  }
}

function togetherFaults({ fields, needs }: Act, given: Given): readonly ActFault[] {
  const isGiven = (name: string) => given[name] !== undefined;
  const missing = needs.filter(group => !group.some(isGiven));
  return [
    ...missing.map(group =>
      fault(group[0], `expected ${listed(group)}, came ${group.length > 2 ? 'none of them' : 'neither'}`),
    ),
    ...Object.entries(fields).flatMap(([name, field]) => {
      if (!isGiven(name)) return [];
      const instead = 'orNew' in field ? field.orNew : undefined;
      const there = ('ofNew' in field ? field.ofNew : undefined)?.find(isGiven);
      return [
        ...(instead !== undefined && isGiven(instead)
          ? [fault(instead, `expected ${name} or ${instead}, came both`)]
          : []),
        ...(there === undefined ? [] : [fault(name, `expected none beside ${there}, came "${short(given[name])}"`)]),
      ];
    }),
  ];
}

/** Names with commas, and with "or" before the last. */
export function listed(names: readonly string[]): string {
  return [names.slice(0, -1).join(', '), ...names.slice(-1)].filter(part => part !== '').join(' or ');
}

function short(value: unknown): string {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

function fault(field: string | undefined, message: string, code: ErrorCode = 'INPUT_INVALID'): ActFault {
  return { code, message, ...(field === undefined ? {} : { field }) };
}
