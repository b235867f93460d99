import type { Day, DayRange } from '../../domain/dates/day-bounds.ts';
import type { PlateFate } from '../../domain/descent/editions-plates.ts';
import type { certainty } from '../../domain/model/vocabularies.ts';

/** What is drawn: pictures or editions on an axis of time, and the steps from one to the next. */
export interface Drawing {
  /** Id of the record that was asked about. */
  readonly of: string;
  readonly title: string;
  /** One line below the title. */
  readonly subtitle: string;
  readonly nodes: readonly DrawnNode[];
  /** Every step joins two of the nodes. */
  readonly steps: readonly DrawnStep[];
  /** Sentences printed below, such as what was left out. */
  readonly notes: readonly string[];
  /** Conventions that it rests on, which are not drawn but told within the document. */
  readonly conventions?: readonly { readonly key: string; readonly version: number }[];
}

export type NodeKind = 'artwork' | 'plate' | 'sheet' | 'motif' | 'detail' | 'surface' | 'edition' | 'design';

export interface DrawnNode {
  readonly id: string;
  readonly kind: NodeKind;
  /** Its name, then what else is said of it, a line each. */
  readonly lines: readonly [string, ...string[]];
  /** Days on which it may have been made; an absent end is open, a beginning after the end is a contradiction. */
  readonly days: DayRange;
  /** Claims about its dates contradict each other; so they do where they begin after their end. */
  readonly contradiction?: true;
  /** Its lines say its days already, so that they need not be written after them. */
  readonly saysDays?: boolean;
  /** Day at which it is best shown, where that is not the middle of its days. */
  readonly estimate?: Day;
  /** Lost, or only inferred. */
  readonly lost?: boolean;
  /** The work or piece it belongs to, under which many are drawn as one. */
  readonly group?: { readonly id: string; readonly label: string };
  /** How many records it stands for; absent: one. */
  readonly count?: number;
  /** Of an edition: what became of each plate, in order. */
  readonly plates?: readonly PlateFate[];
}

export type StepKind =
  | 'copied'
  | 'printed'
  | 'cast'
  | 'part'
  | 'same surfaces'
  | 'retouched surfaces'
  | 'recut surfaces'
  | 'copied surfaces'
  | 'mixed surfaces'
  | 'surfaces not known';

export type StepCertainty = keyof typeof certainty.words;

/** What a step's sign says: the direction of a copy, or whether an edition was made with leave. */
export type StepSign = 'same' | 'reverse' | 'direction not known' | 'without leave';

export interface DrawnStep {
  /** Id of the earlier node: the source, the surface, the whole, the earlier edition. */
  readonly from: string;
  readonly to: string;
  readonly kind: StepKind;
  readonly certainty: StepCertainty;
  readonly sign?: StepSign;
  /** It takes part in a contradiction. One that runs against its days is drawn so in any case. */
  readonly contradiction?: boolean;
  /** How many claims it stands for; absent: one. */
  readonly count?: number;
}
