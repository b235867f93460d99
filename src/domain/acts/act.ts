import type { Field, ItemsField, RecordField } from '../model/declaration.ts';
import type { Evidence, ValueOf } from '../model/row.ts';
import type { CellItems } from '../tables/table-fields.ts';

/**
 * The form in which an act is declared: one thing that a person does at the desk, which writes several records and claims at
 * once. Plain data, once: the input and answer of the API, the options and the columns of the command line, and their help
 * are all derived from it.
 */
export interface Act {
  /** Mutation of the API. */
  readonly name: string;
  /** Word for it on the command line. */
  readonly command: string;
  readonly doc: string;
  readonly fields: ActFields;
  /** Of each group at least one field is given. */
  readonly needs: readonly (readonly string[])[];
  /** What it writes or finds, by name. */
  readonly answers: Readonly<Record<string, ActAnswer>>;
  /** What may be given to it in the demo world. */
  readonly example: Readonly<Record<string, unknown>>;
}

export type ActFields = Readonly<Record<string, ActField>>;

export type ActField = (Exclude<Field, ItemsField | RecordField> | ActLink | ActItems | DayField) & OfNew;

/** Ids of records or claims that are there. */
interface ActLink extends RecordField {
  readonly many?: true;
  /** Field that names or titles a new one instead; only one of the two is given. */
  readonly orNew?: string;
}

type ActItems = ItemsField | CellItems;

/** A day of the Gregorian calendar, YYYY-MM-DD. */
interface DayField {
  readonly type: 'day';
  readonly doc: string;
  readonly required?: true;
}

interface OfNew {
  /** Fields that name one that is there: of such a one this is not said here, but by an edit. */
  readonly ofNew?: readonly string[];
}

export interface ActAnswer {
  readonly doc: string;
  /** A kind; `Record` or `Picture`: of several kinds. */
  readonly kind: string;
  readonly many?: true;
}

type ActValue<F> = F extends { type: 'items'; name: 'Evidence' }
  ? readonly Evidence[]
  : F extends { type: 'day' }
    ? string
    : F extends { type: 'record'; many: true }
      ? readonly string[]
      : F extends Field
        ? ValueOf<F>
        : never;

/** What is given to an act, by name of the field. */
export type Given<F extends ActFields> = {
  readonly [N in keyof F as F[N] extends { required: true } ? N : never]: ActValue<F[N]>;
} & { readonly [N in keyof F as F[N] extends { required: true } ? never : N]?: ActValue<F[N]> };
