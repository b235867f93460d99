import { Compile, type Validator } from 'typebox/schema';
import { checkRow } from '../../domain/model/check-row.ts';
import { faultMessage } from '../../domain/model/check-row-message.ts';
import type { JsonSchema } from '../../domain/model/graph-file-schema.ts';
import type { AwaitedLink, ChangeSet, HistorySums, NamedCheckpoint, OriginFound } from '../../domain/model/history.ts';
import { checkId } from '../../domain/model/id.ts';
import { isClaimKind, isRecordKind, type KindName } from '../../domain/model/kinds.ts';
import { linkKind } from '../../domain/model/links.ts';
import type { AnyRow, Origin, Stamped } from '../../domain/model/row.ts';
import { PlatestemmaError, type SourcePlace } from '../../errors.ts';
import { historyLineSchemas, stampsSchema } from './history-schema.ts';

/** A line of a graph file with history, checked by itself. */
export type HistoryLine =
  | { readonly sort: 'graphFile'; readonly version: number }
  | { readonly sort: 'changeSet'; readonly changeSet: ChangeSet; readonly rows: number }
  | { readonly sort: 'version'; readonly row: Stamped<AnyRow> }
  | { readonly sort: 'removed'; readonly id: string }
  | { readonly sort: 'origin'; readonly origin: Origin & OriginFound }
  | { readonly sort: 'awaited'; readonly link: AwaitedLink }
  | { readonly sort: 'checkpoint'; readonly checkpoint: NamedCheckpoint }
  | { readonly sort: 'end'; readonly sums: HistorySums };

type Sort = keyof typeof historyLineSchemas;

const validators = new Map<JsonSchema, Validator>();

/** @throws INPUT_INVALID, ID_MISTYPED, KIND_MISMATCH, DATE_UNREADABLE for a line that has not the form of one */
export function historyLine(value: unknown, place: SourcePlace): HistoryLine {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new PlatestemmaError('INPUT_INVALID', `expected a line of a history, came ${shown(value)}`, { place });
  const given = value as Readonly<Record<string, unknown>>;
  const sort = (Object.keys(historyLineSchemas) as Sort[]).find(name => Object.hasOwn(given, name));
  // Kinds of records and claims have none of these names among their fields.
  if (sort === undefined || Object.hasOwn(given, 'kind')) return { sort: 'version', row: version(given, place) };
  check(given, historyLineSchemas[sort], place);
  return read[sort](given as never, place);
}

const read: Readonly<Record<Sort, (given: never, place: SourcePlace) => HistoryLine>> = {
  graphFile: ({ version: number }: { version: number }) => ({ sort: 'graphFile', version: number }),
  changeSet: ({ changeSet: number, rows, ...rest }: Omit<ChangeSet, 'number'> & Given<'changeSet' | 'rows'>) => ({
    sort: 'changeSet',
    changeSet: { number, ...rest },
    rows,
  }),
  removed: ({ removed: id }: { removed: string }, place) => {
    kindOf(id, place);
    return { sort: 'removed', id };
  },
  origin: ({ origin: { source, key }, id, digest }: { origin: Origin } & OriginFound, place) => {
    if (!isRecordKind(kindOf(id, place))) throw wrong(`expected the id of a record, came "${id}"`, place);
    return { sort: 'origin', origin: { source, key, id, digest } };
  },
  awaited: ({ awaited: { source, key }, role, claim }: { awaited: Origin; role: string; claim: object }, place) => ({
    sort: 'awaited',
    link: { origin: { source, key }, claim: awaitedClaim(claim, role, place), role },
  }),
  checkpoint: ({ checkpoint: intake, records, report }: { checkpoint: string; records: number; report: unknown }) => ({
    sort: 'checkpoint',
    checkpoint: { intake, records, report },
  }),
  end: ({ end: sums }: { end: HistorySums }) => ({ sort: 'end', sums }),
};

type Given<Names extends string> = Readonly<Record<Names, number>>;

function version(given: Readonly<Record<string, unknown>>, place: SourcePlace): Stamped<AnyRow> {
  const { since, until, ...rest } = given;
  const { row, origins } = checkRow(rest, place);
  check(given, stampsSchema, { ...place, key: row.id });
  if (origins.length > 0) throw wrong(`${row.id}, field origins: expected none, they have lines of their own`, place);
  return { ...row, since, ...(until === undefined ? {} : { until }) } as Stamped<AnyRow>;
}

/** A claim is looked at as if its record had come. */
function awaitedClaim(claim: object, role: string, place: SourcePlace): AnyRow {
  const { kind } = claim as { readonly kind?: unknown };
  const link = typeof kind === 'string' && isClaimKind(kind) ? linkKind(kind, role) : undefined;
  if (link === undefined)
    throw wrong(`expected a claim and one of its roles, came ${shown(kind)} and "${role}"`, place);
  const to = link.to[0]!.replace('any record', 'work').replace('any claim', 'dating').toLowerCase();
  checkRow({ ...claim, [role]: `${to}-to-come` }, place);
  return claim as AnyRow;
}

function kindOf(id: string, place: SourcePlace): KindName {
  try {
    return checkId(id);
  } catch (error) {
    if (!(error instanceof PlatestemmaError)) throw error;
    throw new PlatestemmaError(error.code, error.message, { place });
  }
}

function check(given: Readonly<Record<string, unknown>>, schema: JsonSchema, place: SourcePlace): void {
  let validator = validators.get(schema);
  if (validator === undefined) {
    validator = Compile(schema);
    validators.set(schema, validator);
  }
  if (validator.Check(given)) return;
  const { message, field } = faultMessage(validator.Errors(given)[1], given, schema);
  const id = place.key === undefined ? '' : `${place.key}, `;
  throw wrong(`${id}field ${field ?? Object.keys(given)[0]}: ${message}`, place);
}

function wrong(message: string, place: SourcePlace): PlatestemmaError {
  return new PlatestemmaError('INPUT_INVALID', message, { place });
}

function shown(value: unknown): string {
  return (JSON.stringify(value) ?? 'none').slice(0, 60);
}
