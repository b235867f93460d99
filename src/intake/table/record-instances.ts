import { readImprintPlaces } from '../../domain/conventions/imprint-place-text.ts';
import { isRecordKind, type RecordKindName } from '../../domain/model/kinds.ts';
import type { RecordOf } from '../../domain/model/row.ts';
import { foldTokens } from '../../domain/text/fold.ts';
import { invariant } from '../../errors.ts';
import { nameKey } from '../marcxml/agents.ts';
import { readPlace } from '../marcxml/place-reading.ts';
import { remember } from '../marcxml/remember.ts';
import { withoutEndMarks, withoutFinalStop } from '../marcxml/text.ts';
import { type FieldRemark, faultsOf } from './fill-field.ts';
import { type FilledFields, fillFields } from './fill-fields.ts';
import { namingField } from './mapped-fields.ts';
import { type Each, listLength, type RowScope } from './row-scope.ts';
import type { RecordEntry, Value } from './table-mapping.ts';
import { evaluate, type Got, holdsIn, joined } from './value.ts';

/** A record that a row comes to. */
export interface RecordInstance {
  readonly kind: RecordKindName;
  readonly key: string;
  readonly fields: Readonly<Record<string, unknown>>;
  /** Fields that name another record of the row, with the entry they name. */
  readonly parents: Readonly<Record<string, string>>;
  /** The records that those fields name, where they are made. */
  readonly of?: Readonly<Record<string, RecordInstance>>;
  /** What `each` stood for. */
  readonly each?: Each;
  /** Rule by which the place of that name was chosen. */
  readonly rule?: string;
  /** Columns by which it is recognised. */
  readonly known: readonly string[];
  readonly used: readonly string[];
  readonly whole: readonly string[];
  readonly remarks: readonly FieldRemark[];
}

/** The records that an entry comes to in a row, in order: none where its condition does not hold or it has no key. */
export function recordInstances(entry: RecordEntry, scope: RowScope): readonly RecordInstance[] {
  if (entry.if !== undefined && !holdsIn(entry.if, scope)) return [];
  return eachScopes(entry.each, scope).flatMap(({ inner, got }) =>
    oneScope(entry, inner).map(made => ({
      ...made,
      known: [...new Set([...got.used, ...made.known])],
      used: [...new Set([...got.used, ...made.used])],
      whole: [...new Set([...got.whole, ...made.whole])],
      remarks: [...faultsOf(got), ...made.remarks],
      ...(inner.each === undefined ? {} : { each: inner.each }),
    })),
  );
}

const untouched: Pick<Got, 'used' | 'whole' | 'faults'> = { used: [], whole: [], faults: [] };

/** The scope once for each of a value's texts, or for each element of a list of JSON; once as it is without a value. */
export function eachScopes(
  each: Value | undefined,
  scope: RowScope,
): readonly { readonly inner: RowScope; readonly got: Pick<Got, 'used' | 'whole' | 'faults'> }[] {
  if (each === undefined) return [{ inner: scope, got: untouched }];
  const length = typeof each === 'string' ? listLength(scope, each) : undefined;
  if (length !== undefined) {
    return Array.from({ length }, (_, i) => ({ inner: { ...scope, each: { path: `${each}.${i}` } }, got: untouched }));
  }
  const got = evaluate(each, scope);
  return got.pieces.map(piece => ({ inner: { ...scope, each: { piece } }, got }));
}

function oneScope(entry: RecordEntry, scope: RowScope): RecordInstance[] {
  const { kind } = entry;
  invariant(isRecordKind(kind), 'a mapping that was read names kinds of records');
  const filled = fillFields(kind, entry.fields ?? {}, scope);
  if (entry.named !== undefined && kind === 'Place') return placesNamed(evaluate(entry.named, scope), filled);
  const got = evaluate(entry.key ?? entry.named!, scope);
  const key = joined(got);
  if (key === '') return [];
  const named = entry.named === undefined ? { key, fields: {} } : recognised(kind, key, filled.fields);
  return [instanceOf(kind, named.key, { ...named.fields, ...filled.fields }, filled, got)];
}

function instanceOf(
  kind: RecordKindName,
  key: string,
  fields: Readonly<Record<string, unknown>>,
  filled: FilledFields,
  got: Got,
): RecordInstance {
  return {
    kind,
    key,
    fields,
    parents: filled.parents,
    known: got.used,
    used: [...new Set([...got.used, ...filled.used])],
    whole: [...new Set([...got.whole, ...filled.whole])],
    remarks: [...faultsOf(got), ...filled.remarks],
  };
}

/** Key and label of a record that is recognised by its name within its source. */
function recognised(
  kind: RecordKindName,
  name: string,
  given: Readonly<Record<string, unknown>>,
): { readonly key: string; readonly fields: Readonly<Record<string, unknown>> } {
  if (kind === 'Agent') {
    const plain = withoutFinalStop(withoutEndMarks(name));
    return { key: nameKey(given['form'] as RecordOf<'Agent'>['form'], plain), fields: { labels: [{ text: plain }] } };
  }
  const naming = namingField(kind);
  const fields = naming !== undefined && naming in given ? {} : { labels: [{ text: name }] };
  return { key: `${kind.toLowerCase()}:${folded(name)}`, fields };
}

const folded = remember(50_000, text => foldTokens(text).join(' ') || text);

/** The places that a text names, as the words of an imprint name them. A country given decides between namesakes. */
function placesNamed(got: Got, filled: FilledFields): RecordInstance[] {
  const country = filled.fields['country'];
  const countries = typeof country === 'string' ? [country] : [];
  return got.pieces.flatMap(({ text }) =>
    readImprintPlaces(text).map(place => {
      const { key, record, rule, unresolved } = readPlace(place, countries, true);
      const { kind: _kind, ...fields } = record;
      const made = instanceOf('Place', key, { ...filled.fields, ...fields }, filled, got);
      const message = `expected a town that is known, came "${place.name}": ${unresolved}`;
      const remark: FieldRemark = { code: 'INPUT_INVALID', message, column: got.used.join(', ') };
      return {
        ...made,
        ...(rule === undefined ? {} : { rule }),
        remarks: unresolved === undefined ? made.remarks : [...made.remarks, remark],
      };
    }),
  );
}
