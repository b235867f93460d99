import { claimSentence } from '../domain/model/claim-sentence.ts';
import type { Vocabulary } from '../domain/model/declaration.ts';
import type { AnyClaim, Evidence } from '../domain/model/row.ts';
import {
  castingManner,
  certainty,
  copyManner,
  copyRemove,
  descentLeave,
  descentSurfaces,
  descentText,
  handedness,
  printingManner,
} from '../domain/model/vocabularies.ts';

/** What a record with an id is called; its id if it has no name. */
export type Called = (id: string) => string;

/** A claim as a sentence, with how it was done and how sure it is. */
export function claimText(claim: AnyClaim, called: Called): string {
  const words = [...wordsOf(claim, called), ...sureness(claim)];
  const sentence = claimSentence(claim, called);
  return words.length === 0 ? sentence : `${sentence}: ${words.join(', ')}`;
}

/** Why a claim is said, a line a part of its evidence; none where nothing is recorded. */
export function evidenceText({ evidence = [] }: AnyClaim, called: Called): string[] {
  return evidence.map(part => `evidence: ${partText(part, called)}`);
}

/** Ids of the records and claims that the evidence of claims names. */
export function namedInEvidence(claims: readonly AnyClaim[]): readonly string[] {
  const parts = claims.flatMap(claim => claim.evidence ?? []);
  return parts.flatMap(({ reference, record }) => [reference, record].filter(id => id !== undefined));
}

function wordsOf(claim: AnyClaim, called: Called): string[] {
  switch (claim.kind) {
    case 'Copying':
      return [
        ...word(copyManner, claim.manner),
        ...word(handedness, claim.handedness, { UNKNOWN: 'direction not known' }),
        ...word(copyRemove, claim.remove, { DIRECT: 'straight from it', UNKNOWN: 'whether straight is not known' }),
        ...(claim.through === undefined ? [] : [`through ${called(claim.through)}`]),
        ...(claim.fromProof === true ? ['from a proof or drawing'] : []),
        ...(claim.alterations === undefined ? [] : [`altered: ${claim.alterations}`]),
      ];
    case 'PrintedFrom':
      return [
        ...word(printingManner, claim.manner),
        ...(claim.state === undefined ? [] : [`in the state ${called(claim.state)}`]),
      ];
    case 'Casting':
      return word(castingManner, claim.manner);
    case 'EditionDescent':
      return [
        ...word(descentText, claim.text).map(text => `text ${text}`),
        ...word(descentLeave, claim.leave, { UNKNOWN: 'leave not known' }),
        ...word(descentSurfaces, claim.surfaces).map(surfaces => `pictures from ${surfaces}`),
      ];
    default:
      return [];
  }
}

function sureness({ certainty: sure }: AnyClaim): string[] {
  return sure === undefined || sure === 'CERTAIN' ? [] : word(certainty, sure);
}

function word(
  vocabulary: Vocabulary,
  value: string | undefined,
  instead: Readonly<Record<string, string>> = {},
): string[] {
  return value === undefined ? [] : [instead[value] ?? vocabulary.words[value] ?? value];
}

function partText({ reference, locator, record, mark, claim, words, note }: Evidence, called: Called): string {
  const parts = [
    ...(reference === undefined ? [] : [called(reference)]),
    ...(locator === undefined ? [] : [locator]),
    ...(record === undefined ? [] : [`seen on ${called(record)}`]),
    ...(mark === undefined ? [] : [mark]),
    ...(claim === undefined ? [] : [`follows from ${claim}`]),
    ...(words === undefined ? [] : [`“${words}”`]),
    ...(note === undefined ? [] : [note]),
  ];
  return parts.join(', ');
}
