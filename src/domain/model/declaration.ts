/**
 * The form in which a kind of record or claim is declared: plain data, once. SDL, validators, the JSON Schema of graph
 * files, the stores' columns and the command line's help are all derived from it.
 */

/** Enumerated words are stored and compared by their SDL names. */
export interface Vocabulary {
  readonly name: string;
  readonly doc: string;
  /** SDL name of each word, with what a person reads. */
  readonly words: Readonly<Record<string, string>>;
}

/** What was there before is never changed: what comes later says which schema of stores has it first. */
interface Added {
  /** Number of the schema of stores that first has it; absent: 1. */
  readonly since?: number;
}

interface FieldBase extends Added {
  readonly doc: string;
  readonly required?: true;
  /** Where people write it need not be given: the program does. */
  readonly filled?: true;
}

export interface TextField extends FieldBase {
  readonly type: 'text' | 'uri' | 'language' | 'edtf';
  /** A list of texts instead of one. */
  readonly many?: true;
}

export interface IntegerField extends FieldBase {
  readonly type: 'integer';
  readonly unit?: string;
  readonly least?: number;
}

/** A decimal number: coordinates, percents, millimetres. */
export interface NumberField extends FieldBase {
  readonly type: 'number';
  readonly unit: string;
  readonly least?: number;
  readonly most?: number;
}

export interface FlagField extends FieldBase {
  readonly type: 'flag';
}

export interface WordField extends FieldBase {
  readonly type: 'word';
  readonly of: Vocabulary;
  readonly many?: true;
}

/** The one parent without which the record would not be that thing, or another record that the fact names. */
export interface RecordField extends FieldBase {
  readonly type: 'record';
  readonly to: readonly string[];
}

/** Small structured items that live inside a row (marks, identifiers, lettering). */
export interface ItemsField extends FieldBase {
  readonly type: 'items';
  readonly name: string;
  readonly item: Readonly<Record<string, ItemField>>;
}

export type ItemField = TextField | IntegerField | NumberField | FlagField | WordField | RecordField;

/** A value of another standard's own form, kept as it is (CSL-JSON, a convention's value). */
export interface JsonField extends FieldBase {
  readonly type: 'json';
}

export type Field =
  | TextField
  | IntegerField
  | NumberField
  | FlagField
  | WordField
  | RecordField
  | ItemsField
  | JsonField;

export type Fields = Readonly<Record<string, Field>>;

/** What a claim connects, by named role. */
export interface Role extends Added {
  readonly doc: string;
  /** Kinds of records (or claims) that may stand here; `'any record'` and `'any claim'` open it to all. */
  readonly to: readonly string[];
  readonly required?: true;
}

export interface RecordKind extends Added {
  readonly kind: string;
  readonly type: 'record';
  readonly doc: string;
  /** Terms of open standards that mean the same. */
  readonly standard: string;
  /** What a person reads, per language: singular and plural. */
  readonly words: { readonly en: readonly [one: string, many: string] };
  /** GraphQL field of the connection that lists the kind. */
  readonly plural: string;
  /** Field that names the record where it has no label of its own. */
  readonly namedBy?: string;
  /** Can be copied, or copy: artwork, plate, motif, detail, design. */
  readonly picture?: true;
  /** Bibliographic records belong to the group and never to a private notebook. */
  readonly shared?: true;
  readonly fields: Fields;
}

export interface ClaimKind extends Added {
  readonly kind: string;
  readonly type: 'claim';
  readonly doc: string;
  readonly standard: string;
  readonly words: { readonly en: readonly [one: string, many: string] };
  readonly roles: Readonly<Record<string, Role>>;
  readonly fields: Fields;
  /** The claim as a sentence: role and field names in braces. */
  readonly says: string;
}

export type Kind = RecordKind | ClaimKind;
