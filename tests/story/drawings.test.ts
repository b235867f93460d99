import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { layout } from '../../src/output/draw/layout/layout.ts';
import { lineage } from '../../src/questions/lineage.ts';
import { lineageDrawing } from '../../src/questions/lineage-drawing.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';
import { dateBreaches, linesAstray, overlaps } from '../output/draw/layout/laws.ts';
import { demoStore } from '../support/demo-store.ts';

describe('every lineage of the demo world', () => {
  let store: GraphStore;
  beforeAll(async () => {
    store = await demoStore('memory');
  });
  afterAll(() => store.close());

  test('is drawn in the order of its dates, nothing lies on anything else, and no note has an id in it', async () => {
    const pictures = ['Artwork', 'Plate', 'Motif', 'Detail', 'Matrix'];
    const ids = (await store.scan('', 2000)).filter(({ kind }) => pictures.includes(kind)).map(({ id }) => id);
    expect(ids.length).toBeGreaterThan(25);
    for (const of of ids) {
      const drawing = lineageDrawing(await lineage(store, { of }));
      const laid = layout(drawing, 20_000);
      expect([of, dateBreaches(drawing, laid), overlaps(laid), linesAstray(laid)]).toEqual([of, [], [], []]);
      expect(drawing.notes.join(' ')).not.toMatch(/\b(?:agent|artwork|detail|edition|matrix|motif|plate)-[a-z]/);
    }
  });
});
