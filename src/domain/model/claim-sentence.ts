import type { ClaimKind, Vocabulary } from './declaration.ts';
import { claimKinds } from './kinds.ts';
import type { AnyClaim } from './row.ts';

/**
 * A claim as a sentence, by the pattern of its kind. A part that the claim leaves open falls away with the word that
 * leads to it ("at", "by", "as"); where nothing else follows the verb, an ellipsis stands for it.
 * @param label what a record with an id is called; undefined if it has no name
 */
export function claimSentence(claim: AnyClaim, label: (id: string) => string | undefined): string {
  const declared: ClaimKind = claimKinds[claim.kind];
  const values = claim as unknown as Readonly<Record<string, unknown>>;
  let openEnd = false;
  const sentence = declared.says.replace(part, (_whole, lead: string, name: string) => {
    const value = values[name];
    const words = value === undefined ? undefined : wordsFor(declared, name, value, label);
    openEnd = words === undefined && lead.trim() === '';
    if (words === undefined) return '';
    return lead + words;
  });
  return openEnd ? `${sentence} …` : sentence;
}

/** Ids of the records that the sentence of a claim names. */
export function namedInSentence(claim: AnyClaim): string[] {
  const declared: ClaimKind = claimKinds[claim.kind];
  const values = claim as unknown as Readonly<Record<string, unknown>>;
  return Object.keys(declared.roles).flatMap(role => (typeof values[role] === 'string' ? [values[role]] : []));
}

const part = /((?:\s+(?:at|by|as|from|in|on|of))?\s*)\{(\w+)\}/g;

function wordsFor(
  declared: ClaimKind,
  name: string,
  value: unknown,
  label: (id: string) => string | undefined,
): string | undefined {
  if (Object.hasOwn(declared.roles, name)) return label(String(value)) ?? String(value);
  const field = declared.fields[name];
  if (field?.type === 'word') return meaning(field.of, String(value));
  return String(value);
}

function meaning(vocabulary: Vocabulary, word: string): string {
  return vocabulary.words[word] ?? word;
}
