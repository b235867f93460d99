import type { ClaimKind, RecordKind } from './declaration.ts';
import { access } from './kinds/access.ts';
import { agent } from './kinds/agent.ts';
import { alternatives } from './kinds/alternatives.ts';
import { appearance } from './kinds/appearance.ts';
import { artwork } from './kinds/artwork.ts';
import { attribution } from './kinds/attribution.ts';
import { casting } from './kinds/casting.ts';
import { comparison } from './kinds/comparison.ts';
import { convention } from './kinds/convention.ts';
import { copying } from './kinds/copying.ts';
import { custody } from './kinds/custody.ts';
import { dating } from './kinds/dating.ts';
import { depiction } from './kinds/depiction.ts';
import { design } from './kinds/design.ts';
import { detail } from './kinds/detail.ts';
import { edition } from './kinds/edition.ts';
import { editionDescent } from './kinds/edition-descent.ts';
import { enquiry } from './kinds/enquiry.ts';
import { examination } from './kinds/examination.ts';
import { exemplar } from './kinds/exemplar.ts';
import { feature } from './kinds/feature.ts';
import { follows } from './kinds/follows.ts';
import { identity } from './kinds/identity.ts';
import { imprint } from './kinds/imprint.ts';
import { madeAt } from './kinds/made-at.ts';
import { matrix } from './kinds/matrix.ts';
import { mention } from './kinds/mention.ts';
import { motif } from './kinds/motif.ts';
import { opinion } from './kinds/opinion.ts';
import { partOf } from './kinds/part-of.ts';
import { photograph } from './kinds/photograph.ts';
import { piece } from './kinds/piece.ts';
import { place } from './kinds/place.ts';
import { plate } from './kinds/plate.ts';
import { printedFrom } from './kinds/printed-from.ts';
import { reference } from './kinds/reference.ts';
import { region } from './kinds/region.ts';
import { sequence } from './kinds/sequence.ts';
import { state } from './kinds/state.ts';
import { statement } from './kinds/statement.ts';
import { stay } from './kinds/stay.ts';
import { work } from './kinds/work.ts';
import { workshop } from './kinds/workshop.ts';

/** Every kind of record, by name. The order is that of generated files; a new kind goes last. */
export const recordKinds = {
  Agent: agent,
  Place: place,
  Workshop: workshop,
  Work: work,
  Edition: edition,
  Exemplar: exemplar,
  Plate: plate,
  Matrix: matrix,
  State: state,
  Artwork: artwork,
  Piece: piece,
  Motif: motif,
  Detail: detail,
  Reference: reference,
  Convention: convention,
  Alternatives: alternatives,
  Feature: feature,
  Design: design,
  Photograph: photograph,
  Enquiry: enquiry,
  Statement: statement,
} as const satisfies Readonly<Record<string, RecordKind>>;

/** Every kind of claim, by name. The order is that of generated files; a new kind goes last. */
export const claimKinds = {
  Imprint: imprint,
  Dating: dating,
  Appearance: appearance,
  Copying: copying,
  EditionDescent: editionDescent,
  PartOf: partOf,
  PrintedFrom: printedFrom,
  Casting: casting,
  Attribution: attribution,
  MadeAt: madeAt,
  Stay: stay,
  Depiction: depiction,
  Access: access,
  Sequence: sequence,
  Identity: identity,
  Comparison: comparison,
  Follows: follows,
  Custody: custody,
  Region: region,
  Mention: mention,
  Examination: examination,
  Opinion: opinion,
} as const satisfies Readonly<Record<string, ClaimKind>>;

export type RecordKindName = keyof typeof recordKinds;
export type ClaimKindName = keyof typeof claimKinds;
export type KindName = RecordKindName | ClaimKindName;

export const recordKindNames = Object.keys(recordKinds) as readonly RecordKindName[];
export const claimKindNames = Object.keys(claimKinds) as readonly ClaimKindName[];

export function isRecordKind(kind: string): kind is RecordKindName {
  return Object.hasOwn(recordKinds, kind);
}

export function isClaimKind(kind: string): kind is ClaimKindName {
  return Object.hasOwn(claimKinds, kind);
}
