import { combinedRules } from './phrase-combined-rules.ts';
import { correctedBy } from './phrase-correction.ts';
import { rangeRules } from './phrase-range-rules.ts';
import type { PhraseBasis, PhraseFlag } from './phrase-reading.ts';
import { readRepublican } from './phrase-republican.ts';
import { flagged, type PhraseReader, type PhraseRule } from './phrase-rule.ts';
import { takeMark } from './phrase-single.ts';
import { markValue } from './phrase-value.ts';
import { wordingRules } from './phrase-wording-rules.ts';

/** Rows for phrases whose brackets are off. The first that matches decides; a single date comes after all of them. */
export const plainRules: readonly PhraseRule[] = [
  {
    name: 'phrase-1-corrected',
    pattern: /^(.+?),? (?:i\. ?e\.?|that is),? (.+)$/i,
    make: ([, printed, right], reader) => {
      const read = reader.read(right!);
      return read && correctedBy(printed!, read);
    },
  },
  {
    name: 'phrase-2-copyright-beside',
    pattern: /^(.+?),? (c|©|\(c\) ?|cop\.? ?|copyright ?)(\d{4})$/i,
    make: ([, made, prefix, year], reader) => {
      const read = isCopyright(prefix!, reader) ? reader.read(made!) : undefined;
      if (read === undefined) return undefined;
      const value = { shape: 'one', moment: { digits: year! } } as const;
      return { ...flagged(read, ...prefixFlag(prefix!))!, second: { value, basis: 'copyright' } };
    },
  },
  {
    name: 'phrase-4-republican',
    pattern: /^.*\ban\b.+$/i,
    make: ([text]) => readRepublican(text!),
  },
  {
    name: 'phrase-6-copyright',
    pattern: /^(copyright|cop\.?|\(c\)|©|c) ?(.+)$/i,
    make: ([text, prefix, rest], reader) => {
      const against = /^c\d/i.test(text!);
      if (/^c$/i.test(prefix!) && !against) return undefined;
      if (!isCopyright(prefix!, reader)) {
        const circa = reader.read(rest!);
        return circa && { ...flagged(circa, 'c-prefix', 'circa')!, value: markValue(circa.value, 'approximate') };
      }
      const read = /^\d{4}\b/.test(rest!) ? reader.read(rest!) : undefined;
      return read && { ...flagged(read, ...prefixFlag(prefix!))!, basis: 'copyright' satisfies PhraseBasis };
    },
  },
  markRule('phrase-7-circa', 'approximate'),
  markRule('phrase-8-probably', 'uncertain'),
  ...combinedRules,
  ...rangeRules,
  ...wordingRules,
];

/** `c` against the year goes by profile; the sign and the words are always copyright. */
function isCopyright(prefix: string, reader: PhraseReader): boolean {
  return !/^c$/i.test(prefix) || reader.conventions.cPrefix[reader.profile] === 'copyright';
}

function prefixFlag(prefix: string): readonly PhraseFlag[] {
  return /^c$/i.test(prefix) ? ['c-prefix'] : [];
}

function markRule(name: string, mark: 'approximate' | 'uncertain'): PhraseRule {
  return {
    name,
    pattern: /^.+$/,
    make: ([text], reader) => {
      const taken = takeMark(text!);
      const read = taken?.mark === mark ? reader.read(taken.rest) : undefined;
      if (read === undefined) return undefined;
      const value = markValue(read.value, mark);
      return { ...(mark === 'approximate' ? flagged(read, 'circa')! : read), value };
    },
  };
}
