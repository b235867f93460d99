import type { ClaimFields, Said } from './draft.ts';

type HowCopied = Pick<
  ClaimFields<'Copying'>,
  'handedness' | 'manner' | 'remove' | 'certainty' | 'alterations' | 'through'
>;

/** How a picture was copied, of what is given to an act or stands in one of its items. */
export function howCopied(given: Partial<HowCopied>): Partial<HowCopied> {
  const { handedness, manner, remove, certainty, alterations, through } = given;
  return { handedness, manner, remove, certainty, alterations, through };
}

/** Who says what an act says, and why. */
export function saidOf({ by, on, evidence }: Said): Said {
  return {
    ...(by === undefined ? {} : { by }),
    ...(on === undefined ? {} : { on }),
    ...(evidence === undefined ? {} : { evidence }),
  };
}

/** What an act wrote or found, by the names of its answers: ids. */
export type Planned = Readonly<Record<string, string | readonly string[] | undefined>>;
