import { type RecordKindName, recordKindNames, recordKinds } from './kinds.ts';
import { linksOfKind } from './links.ts';

/** The other end of a record's field: on a Work, `editions` lists the editions whose field `work` names it. */
export interface Inverse {
  /** Name of the connection on the record that is named. */
  readonly name: string;
  /** Kind that has the field, and the field. */
  readonly of: RecordKindName;
  readonly field: string;
  readonly doc: string;
}

/** Connections that a kind of record gets from the fields of other kinds, in the order of the kinds. */
export function inversesOf(kind: RecordKindName): readonly Inverse[] {
  return recordKindNames.flatMap(of =>
    linksOfKind(of)
      .filter(link => link.to.includes(kind))
      .map(link => {
        const { plural, words } = recordKinds[of];
        return {
          name: plural,
          of,
          field: link.name,
          doc: `The ${words.en[1]} whose field ${link.name} names it, by id.`,
        };
      }),
  );
}
