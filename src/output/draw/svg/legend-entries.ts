import { certainty } from '../../../domain/model/vocabularies.ts';
import type { Drawing, DrawnNode, DrawnStep, StepCertainty } from '../drawing.ts';
import type { Bar } from '../layout/bar.ts';
import type { Layout } from '../layout/layout.ts';
import { type LineLook, line } from './line.ts';
import { fateMark, fateWords, mark, nodeWords } from './marks.ts';
import { palette } from './palette.ts';
import { arrow, cross, sign } from './signs.ts';
import { dashes, signWords, stepLooks } from './step-looks.ts';
import { n } from './xml.ts';

/** One thing explained: its sample is drawn around (x, y), `room` wide. */
export interface Entry {
  readonly words: string;
  readonly room: number;
  sample(x: number, y: number): string;
}

/** What the drawing uses, in groups: marks, lines and signs, bars, plates. What it does not use is not explained. */
export function legendEntries({ nodes, steps, of }: Drawing, { lanes, spots }: Layout): readonly (readonly Entry[])[] {
  const bars = spots.flatMap(({ bar }) => bar ?? []);
  const fates = used(fateWords, fate => nodes.some(node => node.plates?.includes(fate)));
  return [
    markEntries(nodes, of),
    [...lineEntries(steps), ...signEntries(steps), ...(lanes.some(lane => lane.contrary) ? [contradiction] : [])],
    bars.length === 0 ? [] : barEntries(bars, nodes.every(({ kind }) => kind === 'edition') ? 'published' : 'made'),
    fates.map((fate): Entry => ({ words: fateWords[fate], room: 10, sample: (x, y) => fateMark(fate, x, y) })),
  ].filter(group => group.length > 0);
}

function used<K extends string>(words: Readonly<Record<K, unknown>>, is: (key: K) => boolean | undefined): K[] {
  return (Object.keys(words) as K[]).filter(key => is(key) === true);
}

function markEntries(nodes: readonly DrawnNode[], of: string): Entry[] {
  const entry = (words: string, node: Pick<DrawnNode, 'kind' | 'lost' | 'count'>, ringed = false): Entry => ({
    words,
    room: 18,
    sample: (x, y) => mark(node, x, y, ringed),
  });
  const asked = nodes.filter(node => node.id === of && nodes.length > 1);
  const lost = nodes.filter(node => node.lost === true).slice(0, 1);
  const several = nodes.filter(node => (node.count ?? 1) > 1).slice(0, 1);
  return [
    ...used(nodeWords, kind => nodes.some(node => node.kind === kind)).map(kind => entry(nodeWords[kind], { kind })),
    ...lost.map(({ kind }) => entry('lost or inferred', { kind, lost: true })),
    ...several.map(({ kind }) => entry('several drawn as one', { kind, count: 2 })),
    ...asked.map(({ kind }) => entry('asked about', { kind }, true)),
  ];
}

function lineEntries(steps: readonly DrawnStep[]): Entry[] {
  const entry = (words: string, form: LineLook['form'], sure: StepCertainty): Entry => ({
    words,
    room: 38,
    sample: (x, y) => sampleLine(x, y, { form, certainty: sure, contrary: false }),
  });
  const kinds = used(stepLooks, kind => steps.some(step => step.kind === kind));
  const certainties = used(dashes, sure => sure !== 'CERTAIN' && steps.some(step => step.certainty === sure));
  return [
    ...kinds.map(kind => entry(stepLooks[kind].legend, stepLooks[kind].form, 'CERTAIN')),
    ...certainties.map(sure => entry(certainty.words[sure], 'single', sure)),
  ];
}

function signEntries(steps: readonly DrawnStep[]): Entry[] {
  return used(signWords, what => steps.some(step => step.sign === what)).map(what => ({
    words: signWords[what],
    room: 16,
    sample: (x, y) => sign(what, x, y, palette.ink),
  }));
}

const contradiction: Entry = {
  words: 'in contradiction with its dates or with other claims',
  room: 38,
  sample: (x, y) => sampleLine(x, y, { form: 'single', certainty: 'CERTAIN', contrary: true }) + cross(x - 4, y),
};

function sampleLine(x: number, y: number, look: LineLook): string {
  const colour = look.contrary ? palette.contradiction : palette.ink;
  return `<g fill="none">${line(`M${n(x - 18)} ${n(y)}H${n(x + 15)}`, look)}</g>${arrow(x + 18, y, 1, colour)}`;
}

function barEntries(bars: readonly Bar[], event: 'made' | 'published'): Entry[] {
  const ends = bars.flatMap(({ left, right }) => [left, right]);
  const entry = (words: string, sample: Entry['sample']): Entry => ({ words, room: 30, sample });
  return [
    entry(`days on which it may have been ${event}; the mark stands at their middle`, (x, y) => closedSample(x, y)),
    ...(ends.includes('open') ? [entry('no end known; the mark stands at the other', openSample)] : []),
    ...(ends.includes('beyond') ? [entry('runs on beyond the drawing', beyondSample)] : []),
    ...(bars.some(({ contrary }) => contrary)
      ? [entry('days that claims about it contradict', (x, y) => closedSample(x, y, palette.contradiction))]
      : []),
  ];
}

function band(x: number, y: number, width: number, opacity = 1, colour: string = palette.bar): string {
  const thin = opacity === 1 ? '' : ` fill-opacity="${n(opacity)}"`;
  return `<rect x="${n(x)}" y="${n(y - 1.2)}" width="${n(width)}" height="2.4" fill="${colour}"${thin}/>`;
}

function closedSample(x: number, y: number, colour: string = palette.bar): string {
  return `${band(x - 13, y, 26, 1, colour)}<path d="M${n(x - 13)} ${n(y - 2.8)}v5.6m26 0v-5.6" stroke="${colour}" stroke-width="0.9"/>`;
}

/** Bands that thin out, as a gradient would. */
function openSample(x: number, y: number): string {
  return [1, 0.8, 0.6, 0.4, 0.2].map((opacity, i) => band(x - 13 + i * 5.2, y, 5.3, opacity)).join('');
}

function beyondSample(x: number, y: number): string {
  return `${band(x - 13, y, 20)}<path d="M${n(x + 7)} ${n(y - 2.8)}l6 2.8l-6 2.8z" fill="${palette.bar}"/>`;
}
