import { tryEdtf } from './edtf.ts';
import { bracketRules } from './phrase-bracket-rules.ts';
import { longestPhrase, normalisePhrase, withoutBrackets } from './phrase-normalise.ts';
import {
  defaultPhraseConventions,
  type PhraseConventions,
  type PhraseFlag,
  type PhraseProfile,
  type PhraseReading,
  type PhraseRefusal,
} from './phrase-reading.ts';
import type { Outcome, PhraseReader, PhraseRule } from './phrase-rule.ts';
import { plainRules } from './phrase-rules.ts';
import { readSingle } from './phrase-single.ts';
import { markValue, writeValue } from './phrase-value.ts';
import { undatedPhrases } from './phrase-words.ts';

/**
 * Reads a date as libraries and museums write it (`1879 [1878]`, `[ca. 1840?]`, `1730-35`, "18th century") into EDTF.
 * The first rule that matches decides; what no rule matches is refused, never guessed at, and so is a date that does
 * not exist or runs backwards. Phrases are never tried as EDTF, since `1730-35` is years here and the third quarter of
 * 1730 there. Phrases of more than 200 characters are refused unread; time is bounded for any text.
 */
export function readDatePhrase(
  text: string,
  profile: PhraseProfile,
  conventions: PhraseConventions = defaultPhraseConventions,
): PhraseReading | PhraseRefusal {
  if (text.length > longestPhrase) return refusal(`longer than ${longestPhrase} characters`, []);
  const phrase = normalisePhrase(text);
  const supplied: readonly PhraseFlag[] = /[[\]]/.test(text) ? ['supplied'] : [];
  if (phrase === '') return refusal('the phrase is empty', supplied);
  if (undatedPhrases.has(withoutBrackets(phrase).plain.toLowerCase())) {
    return {
      rule: 'undated',
      reason: 'the phrase says that no date is given',
      flags: sorted([...supplied, 'undated']),
    };
  }
  const outcome = readPart(phrase, profile, conventions, 0);
  return outcome === undefined ? refusal('no rule reads this phrase', supplied) : reading(outcome, supplied);
}

const deepest = 4;

function readPart(
  text: string,
  profile: PhraseProfile,
  conventions: PhraseConventions,
  depth: number,
): Outcome | undefined {
  if (depth > deepest) return undefined;
  const reader: PhraseReader = {
    profile,
    conventions,
    read: part => readPart(normalisePhrase(part), profile, conventions, depth + 1),
    single: part => readSingle(part, conventions),
  };
  const inBrackets = text.includes('[') ? firstMatch(bracketRules, text, reader) : undefined;
  if (inBrackets !== undefined) return inBrackets;
  const { plain, doubtful } = withoutBrackets(text);
  const outcome = firstMatch(plainRules, plain, reader);
  if (outcome === undefined || !doubtful) return outcome;
  return { ...outcome, value: markValue(outcome.value, 'uncertain') };
}

function firstMatch(rules: readonly PhraseRule[], text: string, reader: PhraseReader): Outcome | undefined {
  for (const rule of rules) {
    const match = rule.pattern.exec(text);
    const made = match === null ? undefined : rule.make(match, reader);
    if (made !== undefined) return { ...made, rule: rule.name };
  }
  const single = reader.single(text);
  return single === undefined ? undefined : { ...single, ...(single.julian ? { calendar: 'julian' as const } : {}) };
}

function reading(outcome: Outcome, supplied: readonly PhraseFlag[]): PhraseReading | PhraseRefusal {
  const edtf = writeValue(outcome.value);
  const second = outcome.second && { edtf: writeValue(outcome.second.value), basis: outcome.second.basis };
  const flags = sorted([...supplied, ...(outcome.flags ?? [])]);
  const impossible = [edtf, second?.edtf].find(written => written !== undefined && tryEdtf(written) === undefined);
  if (impossible !== undefined) return refusal(`read as ${impossible}, which no calendar has or runs backwards`, flags);
  return {
    edtf,
    rule: outcome.rule,
    flags,
    calendar: outcome.calendar ?? 'gregorian',
    ...(outcome.basis === undefined ? {} : { basis: outcome.basis }),
    ...(outcome.printed === undefined ? {} : { printed: outcome.printed }),
    ...(second === undefined ? {} : { second }),
  };
}

function refusal(reason: string, flags: readonly PhraseFlag[]): PhraseRefusal {
  return { rule: 'unparsed', reason, flags };
}

function sorted(flags: readonly PhraseFlag[]): readonly PhraseFlag[] {
  return [...new Set(flags)].sort();
}
