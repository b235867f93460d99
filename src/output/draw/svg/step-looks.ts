import type { StepCertainty, StepKind, StepSign } from '../drawing.ts';

export type LineForm = 'single' | 'double' | 'beaded' | 'ticked' | 'fine';

interface StepWords {
  readonly form: LineForm;
  /** In the legend. */
  readonly legend: string;
  /** Between the later node and the earlier one. */
  readonly sentence: string;
}

/** The form of a line says what kind of step it is. */
export const stepLooks: Readonly<Record<StepKind, StepWords>> = {
  copied: { form: 'single', legend: 'copied', sentence: 'was copied from' },
  printed: { form: 'double', legend: 'printed from', sentence: 'was printed from' },
  cast: { form: 'beaded', legend: 'cast from', sentence: 'was cast from' },
  part: { form: 'ticked', legend: 'detail of', sentence: 'is a detail of' },
  'same surfaces': {
    form: 'double',
    legend: 'from the same surfaces',
    sentence: 'has the pictures from the surfaces of',
  },
  'retouched surfaces': {
    form: 'beaded',
    legend: 'from retouched surfaces',
    sentence: 'has the pictures from the retouched surfaces of',
  },
  'recut surfaces': { form: 'ticked', legend: 'recut', sentence: 'has its pictures recut after' },
  'copied surfaces': { form: 'single', legend: 'copied', sentence: 'has its pictures copied from' },
  'mixed surfaces': {
    form: 'fine',
    legend: 'in part the same, in part copied',
    sentence: 'has its pictures in part from the surfaces of, in part copied from',
  },
  'surfaces not known': { form: 'fine', legend: 'made from', sentence: 'was made from' },
};

/** The breaks of a line say how sure the step is. */
export const dashes: Readonly<Record<StepCertainty, string | undefined>> = {
  CERTAIN: undefined,
  PROBABLE: '11 3',
  POSSIBLE: '5 3.5',
  DOUBTFUL: '1.4 3.4',
};

/** The sign on a line says how a copy lies to its source. */
export const signWords: Readonly<Record<StepSign, string>> = {
  same: 'in the same direction',
  reverse: 'in reverse',
  'direction not known': 'direction not known',
  'without leave': 'without leave',
};
