import type { Conventions } from '../domain/conventions/conventions.ts';
import { checkId } from '../domain/model/id.ts';
import { PlatestemmaError } from '../errors.ts';
import { drawSvg } from '../output/draw/draw-svg.ts';
import type { Drawing } from '../output/draw/drawing.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { conventionsInForce } from './conventions-in-force.ts';
import { descent } from './descent.ts';
import { descentDrawing } from './descent-drawing.ts';
import type { DrawAsked } from './draw-asked.ts';
import type { ConventionUse } from './grounds.ts';
import { lineage } from './lineage.ts';
import { lineageDrawing } from './lineage-drawing.ts';
import { asRecorded, type Premises } from './premises.ts';

/**
 * A lineage or a descent of editions as a picture: an SVG document.
 * @throws NOT_FOUND for an id that is not there, and what the question drawn throws
 */
export async function draw(store: GraphStore, asked: DrawAsked, premises: Premises = asRecorded): Promise<string> {
  checkId(asked.of);
  const [row] = await store.rows([asked.of]);
  if (row === undefined) throw new PlatestemmaError('NOT_FOUND', `nothing is recorded under "${asked.of}"`);
  const [drawing, conventions] = await Promise.all([drawingOf(store, asked, premises), conventionsInForce(store)]);
  const used = [...drawing.conventions.map(({ key }) => key), 'draw.collapse', 'draw.budget'];
  return drawSvg({ ...drawing, conventions: conventions.uses(used) }, limitsOf(conventions));
}

type Answered = Drawing & { readonly conventions: readonly ConventionUse[] };

async function drawingOf(store: GraphStore, asked: DrawAsked, premises: Premises): Promise<Answered> {
  if (asked.what === 'DESCENT') {
    const answer = await descent(store, asked.of, premises);
    return { ...descentDrawing(answer), conventions: answer.grounds.conventions };
  }
  const { what: _, ...lineageAsked } = asked;
  const answer = await lineage(store, lineageAsked, premises);
  return { ...lineageDrawing(answer), conventions: answer.grounds.conventions };
}

function limitsOf(conventions: Conventions) {
  return { nodes: conventions.get('draw.collapse'), exchanges: conventions.get('draw.budget') };
}
