import type { CslItem, CslName } from './csl-item.ts';

/** Ends a name that is given to the engine as it is filed, and printed as it is. */
const filedMark = '\uE042';

const nameVariables = ['author', 'editor', 'compiler', 'translator', 'container-author'] as const;

/**
 * The item with each firm named as it is filed, so that a style puts it in its place: CSL has no sort name for a name
 * that stays whole. Filed by the sort name of its record, else without "The" (common practice).
 */
export function withFiledNames<T extends Partial<CslItem>>(item: T, { custom }: CslItem): T {
  const changed: Partial<Record<(typeof nameVariables)[number], readonly CslName[]>> = {};
  for (const variable of nameVariables) {
    const names = item[variable];
    if (names?.some(name => filed(name, custom) !== undefined) === true)
      changed[variable] = names.map(name => filed(name, custom) ?? name);
  }
  return { ...item, ...changed };
}

function filed({ literal }: CslName, custom: CslItem['custom']): CslName | undefined {
  if (literal === undefined) return undefined;
  const name = custom.filedAs?.[literal] ?? literal.replace(/^The (?=\p{L})/iu, '');
  return name === literal ? undefined : { literal: `${name}${filedMark}` };
}

/** The text with the names of firms as they are; in capitals where the style has them so. */
export function withNamesAsTheyAre(text: string, { custom, ...item }: CslItem): string {
  if (!text.includes(filedMark)) return text;
  let restored = text;
  for (const variable of nameVariables) {
    for (const name of item[variable] ?? []) {
      const { literal: given } = filed(name, custom) ?? {};
      if (given === undefined || name.literal === undefined) continue;
      restored = restored.replaceAll(given, name.literal).replaceAll(given.toUpperCase(), name.literal.toUpperCase());
    }
  }
  return restored.replaceAll(filedMark, '');
}
