import type { StepCertainty } from '../drawing.ts';
import { palette } from './palette.ts';
import { dashes, type LineForm } from './step-looks.ts';

export interface LineLook {
  readonly form: LineForm;
  readonly certainty: StepCertainty;
  readonly contrary: boolean;
}

/** A path in the form of its kind, broken as it is sure, and heavy where it takes part in a contradiction. */
export function line(path: string, { form, certainty, contrary }: LineLook): string {
  const colour = contrary ? palette.contradiction : palette.ink;
  const dash = dashes[certainty];
  const stroke = (width: number, dashArray: string | undefined, ink: string = colour, cap = '') =>
    `<path d="${path}" stroke="${ink}" stroke-width="${width}"${dashArray === undefined ? '' : ` stroke-dasharray="${dashArray}"`}${cap}/>`;
  const weight = contrary ? 1.5 : form === 'fine' ? 0.5 : 0.85;
  if (form === 'double') return stroke(weight + 2.3, dash) + stroke(1.5, undefined, palette.paper);
  const plain = stroke(weight, dash);
  if (form === 'beaded') return plain + stroke(3.4, '0 9', colour, ' stroke-linecap="round"');
  if (form === 'ticked') return plain + stroke(5, '0.8 6.2');
  return plain;
}
