import fc from 'fast-check';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { drawSvg } from '../../../src/output/draw/draw-svg.ts';
import type { Drawing } from '../../../src/output/draw/drawing.ts';
import { processorTime } from '../../support/processor-time.ts';
import * as drawings from './drawings.ts';
import { randomDrawing } from './random-drawing.ts';

const limits = { nodes: 300, exchanges: 20_000 };
const { aCycle, descentOfEditions, drawing, family, manyScripts, netMenders, node, oneNode, step, years } = drawings;
const draw = (each: Drawing) => drawSvg(each, limits);
const fixed = Object.entries(drawings).filter(
  (entry): entry is [string, Drawing] => typeof entry[1] !== 'function' && entry[1].nodes.length <= 100,
);

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

/** Elements of a document, refused if it is not well-formed. */
function elementsOf(text: string): readonly Element[] {
  const elements: Element[] = [];
  const parser = new SaxesParser({ xmlns: true, position: true });
  parser.on('error', error => {
    throw error;
  });
  parser.on('opentag', tag => {
    const attributes = Object.entries(tag.attributes).map(([name, attribute]) => [name, attribute.value]);
    elements.push({ name: tag.name, attributes: Object.fromEntries(attributes) });
  });
  parser.write(text).close();
  return elements;
}

const described = (svg: string) => /<desc [^>]*>([^<]*)<\/desc>/.exec(svg)![1]!;

describe('the document', () => {
  test.each(fixed)('%s is well-formed SVG that fetches nothing and runs nothing', (_name, each) => {
    const elements = elementsOf(draw(each));
    expect(elements[0]!.attributes['xmlns']).toBe('http://www.w3.org/2000/svg');
    const names = [...new Set(elements.map(({ name }) => name))].sort();
    const known = ['circle', 'defs', 'desc', 'g', 'linearGradient', 'path', 'rect', 'stop', 'svg', 'text', 'title'];
    expect(names.filter(name => !known.includes(name))).toEqual([]);
    const attributes = elements.flatMap(element => Object.entries(element.attributes));
    expect(attributes.filter(([name]) => /^on|href$|^src$|^style$/.test(name))).toEqual([]);
    const addresses = attributes.flatMap(([name, value]) => (/url\(|:\/\//.test(value) ? [`${name} ${value}`] : []));
    const own = ['open-left', 'open-right'].map(fade => `fill url(#${each.of}-${fade})`);
    expect(new Set(addresses)).toEqual(
      new Set(['xmlns http://www.w3.org/2000/svg', ...addresses.filter(address => own.includes(address))]),
    );
    expect(attributes.filter(([, value]) => /NaN|undefined|Infinity/.test(value))).toEqual([]);
  });

  test('what is not well-formed is found', () => {
    expect(() => elementsOf(draw(netMenders).replace('</desc>', ''))).toThrow();
    expect(() => elementsOf(draw(netMenders).replace('mending', 'mending & '))).toThrow();
  });

  test('any drawing is well-formed, and the same bytes whatever the order of its nodes and steps', () => {
    fc.assert(
      fc.property(
        randomDrawing(15).chain(each =>
          fc.tuple(
            fc.constant(each),
            fc.shuffledSubarray([...each.nodes], { minLength: each.nodes.length }),
            fc.shuffledSubarray([...each.steps], { minLength: each.steps.length }),
          ),
        ),
        ([each, nodes, steps]) => {
          const svg = draw(each);
          elementsOf(svg);
          expect(draw({ ...each, nodes, steps })).toBe(svg);
        },
      ),
      { numRuns: 150 },
    );
  });

  test('a step from a picture to itself is not drawn, and the drawing says so', () => {
    expect(draw(aCycle)).toContain('>One step leads from a picture to itself and is not drawn.</text>');
  });

  test('another drawing has other bytes', () => {
    expect(draw({ ...netMenders, title: 'x' })).not.toBe(draw(netMenders));
  });

  test('text is escaped, and what XML cannot hold is left out', () => {
    const svg = draw(manyScripts);
    expect(svg).toContain('&lt;A &amp; B&gt; &quot;zur&quot; Porcellainmahlerey');
    expect(svg).toContain('芥子園畫傳');
  });

  test('gives marks and names within its frame', () => {
    for (const [, each] of fixed) {
      const elements = elementsOf(draw(each));
      const { width, height } = elements[0]!.attributes;
      const texts = elements.filter(({ name }) => name === 'text');
      expect(texts.length).toBeGreaterThan(1);
      expect(texts.filter(({ attributes }) => Number(attributes['x']) > Number(width) - 15)).toEqual([]);
      expect(texts.filter(({ attributes }) => Number(attributes['y']) > Number(height) - 15)).toEqual([]);
    }
  });
});

describe('for those who hear it', () => {
  test('it has a name and tells the way in sentences', () => {
    const svg = draw(netMenders);
    const { role, 'aria-labelledby': labelled } = elementsOf(svg)[0]!.attributes;
    expect([role, labelled]).toEqual(['img', 'motif-h-title motif-h-desc']);
    expect(svg).toContain('<title id="motif-h-title">Two men mending nets, a dog beside them</title>');
    for (const sentence of [
      '“De nettenboeters” (1751) was printed from “Copper of plate 4” (1750–51), in reverse.',
      '“Die Netzflicker” (1758) was copied from “De nettenboeters” (1751), in reverse.',
      '“A dog, alone” (1760–85) was copied from “The dog” (1758), direction not known, doubtful.',
      '“The dog” (1758) is a detail of “Die Netzflicker” (1758).',
      '“Les raccommodeurs de filets” (1755–61) was copied from “Two men mending nets, a dog beside them” (1766–71), in the same direction, possible: a contradiction.',
    ]) {
      expect(described(svg)).toContain(sentence);
    }
  });

  test('one that stands alone is told', () => {
    expect(described(draw(oneNode))).toContain('“The Ferry at Evening” (1755–61) stands alone.');
  });

  test('a long way is told in part, and that it is', () => {
    expect(described(draw(family(200)))).toMatch(/\. \d+ further sentences are left out\.$/);
  });

  test('marks say in full what was cut', () => {
    expect(draw(manyScripts)).toContain(
      '<title>Nouveau recueil de toutes sortes de desseins pour la fayence, contenant des fleurs, oiseaux, papillons et paysages, livre de desseins, planche première, gravée à l’eau-forte, 1738–42</title>',
    );
  });
});

describe('the legend', () => {
  const explained = (each: Drawing) => {
    const svg = draw(each);
    return [
      ...['artwork', 'detail', 'lost or inferred', 'asked about', 'probable', 'in reverse', 'direction not known'],
      ...[
        'without leave',
        'in contradiction with its dates or with other claims',
        'no end known; the mark stands at the other',
        'plate copied',
      ],
    ].filter(words => svg.includes(`>${words}</text>`));
  };

  test('explains what is drawn and nothing else', () => {
    expect(explained(oneNode)).toEqual([]);
    expect(explained(descentOfEditions)).toEqual(['asked about', 'probable', 'without leave', 'plate copied']);
    expect(explained(netMenders)).toEqual([
      ...['artwork', 'detail', 'lost or inferred', 'asked about', 'probable', 'in reverse', 'direction not known'],
      ...['in contradiction with its dates or with other claims', 'no end known; the mark stands at the other'],
    ]);
  });
});

describe('without colour', () => {
  /** Shapes of the one step of a drawing, without colours and places. */
  const shapeOf = (more: Partial<Parameters<typeof step>[2] & object>, days = years(1800)) => {
    const svg = draw(
      drawing(
        [node('plate-a', 'plate', 'A', years(1700)), node('plate-b', 'plate', 'B', days)],
        [step('plate-a', 'plate-b', more)],
      ),
    );
    const lines = svg.slice(svg.indexOf('<g fill="none">'), svg.indexOf('\n', svg.indexOf('<g fill="none">')));
    return lines.replace(/#[0-9a-f]{6}/g, '').replace(/[MHV]-?[\d.]+( -?[\d.]+)?| [xy]="[\d.]+"/g, '');
  };

  test('every kind, certainty and sign of a step, and a contradiction, has a shape of its own', () => {
    const shapes = [
      ...(['copied', 'printed', 'cast', 'part', 'mixed surfaces'] as const).map(kind => shapeOf({ kind })),
      ...(['PROBABLE', 'POSSIBLE', 'DOUBTFUL'] as const).map(certainty => shapeOf({ certainty })),
      ...(['same', 'reverse', 'direction not known', 'without leave'] as const).map(sign => shapeOf({ sign })),
      shapeOf({ contradiction: true }),
    ];
    expect(new Set(shapes).size).toBe(shapes.length);
  });

  test('a step against its days is drawn as a contradiction, from right to left', () => {
    const svg = draw(aCycle);
    expect(svg).toContain('in contradiction');
    const backwards = draw(
      drawing(
        [node('plate-a', 'plate', 'A', years(1800)), node('plate-b', 'plate', 'B', years(1700))],
        [step('plate-a', 'plate-b')],
      ),
    );
    expect(backwards).toContain('>in contradiction with its dates or with other claims</text>');
    expect(described(backwards)).toContain('“B” (1700) was copied from “A” (1800): a contradiction.');
  });
});

describe('many', () => {
  test('above the most that are drawn those of one work are one, and the drawing says so', () => {
    expect(draw(family(500))).toContain('Of 500 pictures those of one work or piece are drawn as one.');
  });

  // Measured as processor time: 500 nodes 0.3 s, 2,000 1.3 s. The bounds leave room for a busy machine.
  test.each([
    [500, 10_000],
    [2000, 40_000],
  ])('%i nodes one by one come to an end', (count, milliseconds) => {
    const before = processorTime();
    expect(drawSvg(family(count), { nodes: 5000, exchanges: 200_000 }).length).toBeGreaterThan(count * 300);
    expect(processorTime() - before).toBeLessThan(milliseconds);
  });
});
