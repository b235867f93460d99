import { readImprintPlaces } from '../../domain/conventions/imprint-place-text.ts';
import { isRecordKind, type RecordKindName } from '../../domain/model/kinds.ts';
import type { RecordOf } from '../../domain/model/row.ts';
import { foldTokens } from '../../domain/text/fold.ts';
import { remember } from '../../domain/text/remember.ts';
import { invariant } from '../../errors.ts';
import { nameKey } from '../marcxml/agents.ts';
import { readPlace } from '../marcxml/place-reading.ts';
import { withoutEndMarks, withoutFinalStop } from '../marcxml/text.ts';
import { type FieldRemark, faultsOf } from './fill-field.ts';
import { type FilledFields, fillFields } from './fill-fields.ts';
import { namingField } from './mapped-fields.ts';
import { type Each, listLength, type RowScope } from './row-scope.ts';
import type { RecordEntry, Value } from './table-mapping.ts';
import { evaluate, type Got, holdsIn, joined, nothing } from './value.ts';

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
}

/**
 * The records that an entry comes to in a row, in order: none where its condition does not hold or it has no key.
 * @param remarks what could not be read is added here
 */
export function recordInstances(
  entry: RecordEntry,
  scope: RowScope,
  remarks: FieldRemark[],
): readonly RecordInstance[] {
  if (entry.if !== undefined && !holdsIn(entry.if, scope)) return [];
  const { scopes, got } = eachScopes(entry.each, scope);
  remarks.push(...faultsOf(got));
  return scopes.flatMap(inner =>
    oneScope(entry, inner, remarks).map(made => ({
      ...made,
      known: [...got.used, ...made.known],
      used: [...got.used, ...made.used],
      whole: [...got.whole, ...made.whole],
      ...(inner.each === undefined ? {} : { each: inner.each }),
    })),
  );
}

/** The scopes that `each` makes of one, and what it was taken from. */
interface EachScopes {
  readonly scopes: readonly RowScope[];
  readonly got: Got;
}

/** The scope once for each of a value's texts, or for each element of a list of JSON; once as it is without a value. */
export function eachScopes(each: Value | undefined, scope: RowScope): EachScopes {
  if (each === undefined) return { scopes: [scope], got: nothing };
  const length = typeof each === 'string' ? listLength(scope, each) : undefined;
  if (length !== undefined) {
    return { scopes: Array.from({ length }, (_, i) => ({ ...scope, each: { path: `${each}.${i}` } })), got: nothing };
  }
  const got = evaluate(each, scope);
  return { scopes: got.pieces.map(piece => ({ ...scope, each: { piece } })), got };
}

function oneScope(entry: RecordEntry, scope: RowScope, remarks: FieldRemark[]): readonly RecordInstance[] {
  const { kind, key, named } = entry;
  invariant(isRecordKind(kind), 'a mapping that was read names kinds of records');
  const got = evaluate(key ?? named!, scope);
  remarks.push(...faultsOf(got));
  if (got.pieces.length === 0) return [];
  const filled = fillFields(kind, entry.fields ?? {}, scope);
  remarks.push(...filled.remarks);
  if (key !== undefined) return [instanceOf(kind, joined(got), filled.fields, filled, got)];
  if (kind === 'Place') return placesNamed(got, filled, remarks);
  const recorded = recognised(kind, joined(got), filled.fields);
  return [instanceOf(kind, recorded.key, { ...recorded.fields, ...filled.fields }, filled, got)];
}

function instanceOf(
  kind: RecordKindName,
  key: string,
  fields: Readonly<Record<string, unknown>>,
  filled: FilledFields,
  got: Got,
): RecordInstance {
  const used = [...got.used, ...filled.used];
  return { kind, key, fields, parents: filled.parents, known: got.used, used, whole: [...got.whole, ...filled.whole] };
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
function placesNamed(got: Got, filled: FilledFields, remarks: FieldRemark[]): readonly RecordInstance[] {
  const country = filled.fields['country'];
  const countries = typeof country === 'string' ? [country] : [];
  return got.pieces.flatMap(({ text }) =>
    readImprintPlaces(text).map(place => {
      const { key, record, rule, unresolved } = readPlace(place, countries, true);
      if (unresolved !== undefined) {
        const message = `expected a town that is known, came "${place.name}": ${unresolved}`;
        remarks.push({ code: 'INPUT_INVALID', message, column: got.used.join(', ') });
      }
      const { kind: _kind, ...fields } = record;
      const made = instanceOf('Place', key, { ...filled.fields, ...fields }, filled, got);
      return rule === undefined ? made : { ...made, rule };
    }),
  );
}
