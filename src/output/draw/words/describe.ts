import { certainty } from '../../../domain/model/vocabularies.ts';
import { compareText } from '../../../domain/text/compare.ts';
import { howMany } from '../../../domain/text/how-many.ts';
import type { Drawing, DrawnNode, DrawnStep } from '../drawing.ts';
import { isContrary } from '../layout/lines-between.ts';
import { placeInTime } from '../layout/place-in-time.ts';
import { signWords, stepLooks } from '../svg/step-looks.ts';
import { daysInWords } from './days-in-words.ts';

const mostSentences = 80;

/** The drawing in sentences, for those who hear it: what there is, then each step from the earliest on. */
export function describe(drawing: Drawing): string {
  const nodes = new Map(drawing.nodes.map(node => [node.id, node]));
  const places = placeInTime(drawing.nodes, drawing.steps);
  const order = ({ to }: DrawnStep) => places.get(to) ?? Number.NEGATIVE_INFINITY;
  const steps = drawing.steps.toSorted(
    (a, b) => order(a) - order(b) || compareText(a.to, b.to) || compareText(a.from, b.from),
  );
  const sentences = steps.map(step => sentence(step, nodes.get(step.from)!, nodes.get(step.to)!));
  const joined = new Set(drawing.steps.flatMap(step => [step.from, step.to]));
  const alone = drawing.nodes.filter(node => !joined.has(node.id)).map(node => `${named(node)} stands alone.`);
  const all = [...sentences, ...alone];
  const more = all.length - mostSentences;
  return [
    drawing.subtitle === '' ? '' : `${drawing.subtitle}.`,
    ...all.slice(0, mostSentences),
    ...(more > 0 ? [`${more} further sentences are left out.`] : []),
    ...drawing.notes,
  ]
    .filter(text => text !== '')
    .join(' ');
}

function sentence(step: DrawnStep, from: DrawnNode, to: DrawnNode): string {
  const sure = step.certainty === 'CERTAIN' ? '' : `, ${certainty.words[step.certainty]}`;
  const sign = step.sign === undefined ? '' : `, ${signWords[step.sign]}`;
  const times = (step.count ?? 1) > 1 ? `, ${howMany(step.count!, 'step')}` : '';
  const contrary = step.contradiction === true || isContrary(from.days, to.days);
  return `${named(to)} ${stepLooks[step.kind].sentence} ${named(from)}${sign}${sure}${times}${contrary ? ': a contradiction' : ''}.`;
}

function named(node: DrawnNode): string {
  return `“${node.lines[0]}” (${daysInWords(node.days)})`;
}
