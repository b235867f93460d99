import type { ClaimKind, Field, Fields, ItemField, RecordKind, Role } from './declaration.ts';
import type { ClaimKindName, claimKinds, RecordKindName, recordKinds } from './kinds.ts';
import type { percentRectangle } from './percent-rectangle.ts';

/** A name or title, with the language it is in where that is known. */
export interface Label {
  readonly text: string;
  /** BCP 47 language tag. */
  readonly language?: string;
}

/** Why a claim is said: any combination of the parts, at least one. */
export interface Evidence {
  /** Id of a Reference. */
  readonly reference?: string;
  /** Page, number or field in the Reference. */
  readonly locator?: string;
  /** Id of a record or exemplar that was seen. */
  readonly record?: string;
  /** Id of a mark within the record named by `record`. */
  readonly mark?: string;
  /** Id of another claim. */
  readonly claim?: string;
  /** Words of a document. */
  readonly words?: string;
  readonly note?: string;
  /** Id of a Photograph on which it can be seen. */
  readonly photograph?: string;
  /** Where on the photograph, in percent of its width and height. */
  readonly region?: readonly FieldsOf<typeof percentRectangle.item>[];
}

/** Where a record was taken from: a source and the record's key there (for MARC: fields 003 and 001). */
export interface Origin {
  readonly source: string;
  readonly key: string;
}

/** What every record has beside the fields of its kind. */
export interface RecordBase {
  readonly id: string;
  readonly labels?: readonly Label[];
  /** Addresses of the same thing elsewhere. */
  readonly sameAs?: readonly string[];
  readonly notes?: readonly string[];
  /** Free columns: kept, searched, exported. */
  readonly columns?: Readonly<Record<string, string>>;
  readonly notebook?: string;
}

/** What every claim has beside the roles and fields of its kind. Absent standing, stance and certainty mean STANDING, HELD, CERTAIN. */
export interface ClaimBase {
  readonly id: string;
  readonly standing?: 'STANDING' | 'WITHDRAWN';
  readonly withdrawnBecause?: string;
  readonly supersededBy?: string;
  readonly stance?: 'HELD' | 'WEIGHED' | 'REJECTED';
  readonly certainty?: 'CERTAIN' | 'PROBABLE' | 'POSSIBLE' | 'DOUBTFUL';
  /** Id of an Alternatives group. */
  readonly alternativeTo?: string;
  readonly evidence?: readonly Evidence[];
  /** Who says so. */
  readonly by?: string;
  /** Day on which it was said, `YYYY-MM-DD`. */
  readonly on?: string;
  readonly notebook?: string;
}

/** Names that no field or role may take. */
export const baseNames = [
  'id',
  'kind',
  'labels',
  'label',
  'sameAs',
  'notes',
  'columns',
  'notebook',
  'origins',
  'standing',
  'withdrawnBecause',
  'supersededBy',
  'stance',
  'certainty',
  'alternativeTo',
  'evidence',
  'by',
  'on',
  'since',
  'until',
  'claims',
  'history',
] as const;

type Scalar<F extends Field | ItemField> = F extends { type: 'text' | 'uri' | 'language' | 'edtf' | 'record' }
  ? string
  : F extends { type: 'integer' | 'number' }
    ? number
    : F extends { type: 'flag' }
      ? boolean
      : F extends { type: 'word'; of: { words: infer W } }
        ? keyof W & string
        : F extends { type: 'items'; item: infer I extends Readonly<Record<string, ItemField>> }
          ? readonly FieldsOf<I>[]
          : unknown;

export type ValueOf<F extends Field | ItemField> = F extends { many: true } ? readonly Scalar<F>[] : Scalar<F>;

type FieldsOf<S extends Fields> = {
  readonly [N in keyof S as S[N] extends { required: true } ? N : never]: ValueOf<S[N]>;
} & { readonly [N in keyof S as S[N] extends { required: true } ? never : N]?: ValueOf<S[N]> };

type RolesOf<S extends Readonly<Record<string, Role>>> = {
  readonly [N in keyof S as S[N] extends { required: true } ? N : never]: string;
} & { readonly [N in keyof S as S[N] extends { required: true } ? never : N]?: string };

type Flat<T> = { readonly [K in keyof T]: T[K] };

type RecordShape<D extends RecordKind> = Flat<RecordBase & { readonly kind: D['kind'] } & FieldsOf<D['fields']>>;
type ClaimShape<D extends ClaimKind> = Flat<
  ClaimBase & { readonly kind: D['kind'] } & RolesOf<D['roles']> & FieldsOf<D['fields']>
>;

/** A record of a kind as it is written in graph files and held by the store: flat, fields beside the common ones. */
export type RecordOf<K extends RecordKindName> = RecordShape<(typeof recordKinds)[K]>;
/** A claim of a kind: roles hold ids. */
export type ClaimOf<K extends ClaimKindName> = ClaimShape<(typeof claimKinds)[K]>;

export type AnyRecord = { [K in RecordKindName]: RecordOf<K> }[RecordKindName];
export type AnyClaim = { [K in ClaimKindName]: ClaimOf<K> }[ClaimKindName];
export type AnyRow = AnyRecord | AnyClaim;

/** A row with the change sets between which it is valid: `since` inclusive, `until` exclusive, absent = still valid. */
export type Stamped<T> = T & { readonly since: number; readonly until?: number };
