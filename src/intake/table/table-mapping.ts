/**
 * How a table becomes records and claims: what a mapping file says. `schema/table-mapping.md` explains it to its
 * writers. Plain data.
 */
export interface TableMapping {
  readonly $schema?: string;
  /** What the mapping is for, for its readers. */
  readonly about?: string;
  readonly table: TableForm;
  /** Every column that the table is known to have; for JSON lines, every name of the outermost objects. */
  readonly columns: readonly string[];
  /** Who gives the keys: a name, in which `{name}` stands for a column. */
  readonly source?: string;
  /** What the evidence of the claims names. */
  readonly reference: TableReference;
  /** Values made from columns, for use wherever a column is used. */
  readonly values?: Readonly<Record<string, Value>>;
  /** Name of the entry in `records` that a row is about. */
  readonly row: string;
  readonly records: Readonly<Record<string, RecordEntry>>;
  readonly claims?: readonly ClaimEntry[];
}

export interface TableForm {
  readonly form: 'delimited' | 'json lines';
  /** One character between values; a comma if absent. */
  readonly delimiter?: string;
  /** The character around values that hold delimiters or line ends, or `none`; `"` if absent. */
  readonly quote?: string;
  /** Whether the first row names the columns; if not, they are those of `columns`, in order. True if absent. */
  readonly header?: boolean;
  /** Name of the encoding; if absent, what a byte order mark says, else UTF-8. */
  readonly encoding?: string;
  /** `several`: rows that follow one another with the same key make one record. `one` if absent. */
  readonly rowsPerRecord?: 'one' | 'several';
}

export interface TableReference {
  /** A text in which `{name}` stands for a column. */
  readonly title: string;
  /** Key of the Reference in the source; `catalogue` if absent. */
  readonly key?: string;
  /** The source as one item of CSL-JSON, without its title. */
  readonly csl?: Readonly<Record<string, unknown>>;
}

/** Where a value comes from: the name of a column or value, or a rule. */
export type Value = string | ValueRule;

/** Exactly one of the first five; the others are applied in the order in which they stand here. */
export interface ValueRule {
  readonly column?: string;
  /** `{name}` stands for a column or value; nothing if one of them is empty. */
  readonly text?: string;
  readonly always?: string;
  /** The first of these that gives anything. */
  readonly first?: readonly Value[];
  readonly all?: readonly Value[];
  readonly if?: Condition;
  /** Texts that say that there is nothing. */
  readonly nothing?: readonly string[];
  /** A regular expression: what its first group finds, or the whole of it without a group; nothing if it finds nothing. */
  readonly part?: string;
  /** With `part`: what is made of the groups `$1` to `$9`. */
  readonly written?: string;
  /** Texts and what stands for them; others stay. */
  readonly replace?: Readonly<Record<string, string>>;
  /** Marks at which a text is parted into several. */
  readonly split?: string | readonly string[];
  /** Texts and what stands for them; others are `otherwise`, or are reported. */
  readonly words?: Readonly<Record<string, string>>;
  /** `null`: nothing. */
  readonly otherwise?: string | null;
  readonly read?: Reading;
}

/** Grammars that a field may ask for. */
export const readings = ['library date', 'museum date', 'relator'] as const;
export type Reading = (typeof readings)[number];

/** One test, or a list of which all must hold. */
export type Condition = ConditionTest | readonly ConditionTest[];

export interface ConditionTest {
  readonly column?: string;
  readonly is?: string | readonly string[];
  readonly isNot?: string | readonly string[];
  readonly filled?: boolean;
  /** A regular expression that finds something in it. */
  readonly like?: string;
  /** Instead of the others: at least one of these holds. */
  readonly any?: readonly ConditionTest[];
}

/** A field of a row: a value, a list of items with parts, or the name of an entry where the field names a record. */
export type FieldEntry = Value | readonly Readonly<Record<string, Value>>[];

interface Entry {
  readonly kind: string;
  readonly if?: Condition;
  /** Made once for each text of this value, which `{each}` stands for; or for each element of a list of JSON. */
  readonly each?: Value;
  readonly fields?: Readonly<Record<string, FieldEntry>>;
}

/** A record; exactly one of `key` and `named`. */
export interface RecordEntry extends Entry {
  /** Key in the source. */
  readonly key?: Value;
  /** Recognised by this name within the source, case, accents and punctuation aside. */
  readonly named?: Value;
}

export interface ClaimEntry extends Entry {
  /** For each role the name of an entry, or the origin of a record of this or another source that may yet come. */
  readonly roles: Readonly<Record<string, string | LinkedRecord>>;
  /** Imprint alone: places and names are taken from these words as from those of a library record. */
  readonly imprint?: { readonly place?: Value; readonly agent?: Value };
  /** Columns that say it, for the locator; if absent, those that its values are taken from. */
  readonly said?: readonly string[];
  /** A note of the evidence. */
  readonly note?: Value;
}

export interface LinkedRecord {
  /** As the mapping's `source`; the source of the row if absent. */
  readonly source?: string;
  readonly key: Value;
}
