/** What the writer may have meant, for spellings that are common elsewhere; undefined if nothing is known. */
export function edtfHint(text: string): string | undefined {
  const short = shortYear.exec(text);
  if (short !== null) return `write ${`${short[1]}${short[2]}`.padEnd(4 + short[1]!.length, 'X')}${short[3]}`;
  return hints.find(([pattern]) => pattern.test(text))?.[1];
}

/** A century or decade as other notations write it. */
const shortYear = /^(-?)(\d{2,3})([?~%]?)$/;

/** All patterns are linear: the text is not yet known to be harmless, only short. */
const hints: readonly (readonly [RegExp, string])[] = [
  [/^$/, 'leave the date out if nothing is known'],
  [/\s/, 'write without spaces'],
  [/[–—]/, 'write - between year, month and day, and / between two dates'],
  [/\?~|~\?/, 'write % for both ? and ~'],
  [/[()]/, 'write the qualifier to the left of the part it belongs to, as 1764-~05'],
  [/unknown|open/i, 'leave an unknown end empty and write an open end as ..'],
  [/[uxyestz]/, 'write X, Y, E, S, T and Z as capitals, and X for a digit that is not given'],
  [/^-0000/, 'write year 0 (1 BC) as 0000'],
  [/^Y-?\d{1,4}$/, 'write a year of four digits without Y'],
  [/^\d{8}$/, 'write a day as 1764-05-12'],
  [/^[+-]?\d{5,}/, 'write a year of more than four digits with Y, as Y12000'],
  [/^[^[{]*\.\./, 'write 1760/1770 for a duration, [1760..1770] for one date between'],
  [/T24:/, 'the day begins with T00:00:00'],
  [/T.*[.,]\d/, 'write whole seconds'],
  [/T.*[+-]\d{4}$/, 'write the shift from UTC as +02:30'],
  [/T.*\/|\/.*T/, 'leave the time of day out of intervals'],
];
