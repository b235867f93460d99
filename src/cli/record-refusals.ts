import { optionName } from '../domain/acts/act-text.ts';
import type { ActFault } from '../domain/acts/check-act.ts';
import { oneLine } from '../domain/text/one-line.ts';
import { type ErrorCode, PlatestemmaError } from '../errors.ts';
import type { ReadAct } from '../intake/acts/acts-file.ts';

/** What is given to an act on the command line, and where it stands. */
export interface GivenActs {
  /** Absent: in options. */
  readonly file?: string;
  /** It is one act, and its refusal ends the command. */
  readonly isSingle: boolean;
  readonly acts: readonly ReadAct[];
}

/** Why something that is given is refused. */
export interface ToldRefusal {
  readonly file?: string;
  /** Number of the row or object. */
  readonly record?: number;
  /** Option, column, or field of an object, with the path in it. */
  readonly field?: string;
  readonly code: ErrorCode;
  readonly message: string;
}

/** Refusals that are shown; JSON has all. */
const shown = 50;

export function toldRefusal({ file, isSingle }: GivenActs, act: ReadAct, fault: ActFault): ToldRefusal {
  const { code, message, field } = fault;
  return {
    ...(file === undefined ? {} : { file }),
    ...(file === undefined || isSingle ? {} : { record: act.record }),
    ...(field === undefined ? {} : { field: shownField(field, file, act) }),
    ...{ code, message },
  };
}

/** A field under the name that it was given by. */
function shownField(path: string, file: string | undefined, { columns }: ReadAct): string {
  const [, name = path, within = ''] = /^(\w+)(.*)$/s.exec(path) ?? [];
  if (file === undefined) return `--${optionName(name)}${within}`;
  return `${columns?.get(name) ?? name}${within}`;
}

/** The refusal of the one act that was given. */
export function refusalError({ file, field, code, message }: ToldRefusal): PlatestemmaError {
  const where = [...(file === undefined ? [] : [file]), ...(field === undefined ? [] : [field])].join(', ');
  return new PlatestemmaError(code, where === '' ? message : `${where}: ${message}`, {
    place: { ...(file === undefined ? {} : { file }), ...(field === undefined ? {} : { field }) },
  });
}

export function refusalsText(refusals: readonly ToldRefusal[], acts: number): string {
  const rows = new Set(refusals.map(({ record }) => record)).size;
  const lines = refusals.slice(0, shown).map(({ file, record, field, code, message }) => {
    const column = field === undefined ? '' : `, ${field}`;
    return `  ${code} ${file}, row ${record}${oneLine(column)}: ${oneLine(message)}`;
  });
  if (refusals.length > shown)
    lines.push(`  … and ${(refusals.length - shown).toLocaleString('en')} more: --json has all`);
  return `Nothing is recorded: ${rows.toLocaleString('en')} of ${acts.toLocaleString('en')} rows are refused.\n${lines.join('\n')}\n`;
}
