import { daysFromCivil, daysOfYear } from '../../../src/domain/dates/calendar.ts';
import type { DayRange } from '../../../src/domain/dates/day-bounds.ts';
import type { Drawing, DrawnNode, DrawnStep, NodeKind } from '../../../src/output/draw/drawing.ts';

// All names here are invented.

/** Days of a year, or of the years from one to another. */
export function years(first: number, last = first): DayRange {
  return { lo: daysOfYear(first).lo, hi: daysOfYear(last).hi };
}

export function node(
  id: string,
  kind: NodeKind,
  lines: string | readonly [string, ...string[]],
  days: DayRange = {},
  more: Partial<DrawnNode> = {},
): DrawnNode {
  return { id, kind, lines: typeof lines === 'string' ? [lines] : lines, days, ...more };
}

export function step(from: string, to: string, more: Partial<DrawnStep> = {}): DrawnStep {
  return { from, to, kind: 'copied', certainty: 'CERTAIN', ...more };
}

export function drawing(
  nodes: readonly DrawnNode[],
  steps: readonly DrawnStep[],
  more: Partial<Drawing> = {},
): Drawing {
  return {
    of: nodes[0]?.id ?? 'plate-none',
    title: nodes[0]?.lines[0] ?? '',
    subtitle: `Lineage of a picture: ${nodes.length} pictures, ${steps.length} steps`,
    nodes,
    steps,
    notes: [],
    ...more,
  };
}

/** A family of prints with every kind of step, sign and certainty. */
export const netMenders = drawing(
  [
    node(
      'artwork-a',
      'artwork',
      ['The net menders', 'drawing by Cornelis Braam, lost'],
      { hi: daysFromCivil(1751, 6, 1) },
      { lost: true },
    ),
    node('surface-b', 'surface', ['Copper of plate 4', 'Amsterdam'], years(1750, 1751)),
    node('plate-c', 'plate', ['De nettenboeters', 'etching, Vermaak aan de oever, pl. 4'], years(1751)),
    node('plate-d', 'plate', ['Die Netzflicker', 'engraving, Lust am Ufer, Taf. 4'], years(1758)),
    node('plate-e', 'plate', ['The Net Menders', 'wood engraving, The Monthly Cabinet'], {
      lo: daysFromCivil(1765, 3, 1),
      hi: daysFromCivil(1765, 3, 31),
    }),
    node('surface-f', 'surface', ['Stereotype cast of the block'], years(1766, 1772)),
    node('plate-g', 'plate', ['The Fishers at Home', 'wood engraving, A Child’s Shore'], years(1774)),
    node(
      'motif-h',
      'motif',
      ['Two men mending nets, a dog beside them', 'painted, dish, Ellerholm'],
      years(1766, 1771),
    ),
    node('motif-i', 'motif', ['Net menders', 'transfer print, mug'], { lo: daysFromCivil(1766, 1, 1) }),
    node('detail-j', 'detail', ['The dog'], years(1758)),
    node('motif-k', 'motif', ['A dog, alone', 'enamelled, snuff box'], years(1760, 1785)),
    node('sheet-l', 'sheet', ['Les raccommodeurs de filets', 'etching, single sheet, Paris'], years(1755, 1761)),
  ],
  [
    step('artwork-a', 'surface-b', { sign: 'reverse', certainty: 'PROBABLE' }),
    step('surface-b', 'plate-c', { kind: 'printed', sign: 'reverse' }),
    step('plate-c', 'plate-d', { sign: 'reverse' }),
    step('plate-c', 'sheet-l', { sign: 'same', certainty: 'POSSIBLE' }),
    step('plate-d', 'motif-h', { sign: 'same' }),
    step('plate-d', 'detail-j', { kind: 'part' }),
    step('detail-j', 'motif-k', { sign: 'direction not known', certainty: 'DOUBTFUL' }),
    step('plate-d', 'plate-e', { sign: 'reverse', certainty: 'PROBABLE' }),
    step('plate-e', 'surface-f', { kind: 'cast' }),
    step('surface-f', 'plate-g', { kind: 'printed', sign: 'reverse' }),
    step('plate-e', 'motif-i', { sign: 'same' }),
    step('motif-h', 'sheet-l', { sign: 'same', certainty: 'POSSIBLE' }),
  ],
  {
    of: 'motif-h',
    title: 'Two men mending nets, a dog beside them',
    subtitle: 'Lineage of a motif, towards sources and copies: 12 pictures, 12 steps',
    notes: [
      'About the recorded claims: “none” means not if these claims are right. A score or verdict is not proof and not appraisal.',
    ],
  },
);

export const oneNode = drawing(
  [node('plate-one', 'sheet', ['The Ferry at Evening', 'etching, single sheet, Amsterdam'], years(1755, 1761))],
  [],
  {
    subtitle: 'Lineage of a picture: nothing was copied from it, nothing is recorded as its source',
  },
);

export const withoutDates = drawing(
  [
    node('plate-b', 'plate', ['A windmill by the water', 'etching']),
    node('artwork-a', 'artwork', ['Windmill, evening', 'painting']),
    node('motif-c', 'motif', ['Windmill', 'painted, tile']),
    node('motif-d', 'motif', ['Windmill with a barge', 'painted, tile'], years(1760, 1790)),
    node('plate-e', 'plate', ['Windmühle am Wasser', 'etching'], years(1779)),
    node('motif-f', 'motif', ['Mill and two cows', 'embroidered, panel']),
  ],
  [
    step('artwork-a', 'plate-b', { sign: 'same' }),
    step('plate-b', 'motif-c', { sign: 'reverse' }),
    step('plate-b', 'motif-d', { sign: 'direction not known' }),
    step('plate-e', 'motif-f', { certainty: 'POSSIBLE' }),
    step('plate-b', 'plate-e', { sign: 'reverse' }),
  ],
);

export const noDateAtAll = drawing(
  [
    node('plate-a', 'plate', 'A fountain'),
    node('plate-b', 'plate', 'A fountain with swans'),
    node('motif-c', 'motif', 'Swans'),
  ],
  [step('plate-a', 'plate-b', { sign: 'reverse' }), step('plate-b', 'motif-c', { sign: 'same' })],
);

export const allAtOneDate = drawing(
  Array.from({ length: 9 }, (_, i) =>
    node(`plate-n${i}`, i === 0 ? 'surface' : 'plate', [`Plate ${i} of the set`, 'etching, Augsburg'], years(1720)),
  ),
  [
    ...[1, 2, 3].map(i => step('plate-n0', `plate-n${i}`, { kind: 'printed', sign: 'reverse' })),
    step('plate-n1', 'plate-n4', { sign: 'reverse' }),
    step('plate-n4', 'plate-n5', { sign: 'same' }),
    step('plate-n2', 'plate-n6', { sign: 'same', certainty: 'POSSIBLE' }),
    step('plate-n3', 'plate-n6', { sign: 'reverse', certainty: 'POSSIBLE' }),
    step('plate-n5', 'plate-n7', { sign: 'same' }),
    step('plate-n1', 'plate-n8', { sign: 'direction not known' }),
  ],
);

export const chainOfTwelve = drawing(
  Array.from({ length: 12 }, (_, i) =>
    node(
      `plate-c${String(i).padStart(2, '0')}`,
      i % 3 === 2 ? 'motif' : 'plate',
      [`The leopard, ${i + 1}`, i % 3 === 2 ? 'painted, vase' : 'engraving'],
      years(1700 + 13 * i, 1704 + 13 * i),
    ),
  ),
  Array.from({ length: 11 }, (_, i) =>
    step(`plate-c${String(i).padStart(2, '0')}`, `plate-c${String(i + 1).padStart(2, '0')}`, {
      sign: i % 2 === 0 ? 'reverse' : 'same',
    }),
  ),
);

export const fanOfForty = drawing(
  [
    node('plate-hub', 'sheet', ['The Tea Party', 'mezzotint, single sheet'], years(1760)),
    ...Array.from({ length: 40 }, (_, i) =>
      node(
        `motif-f${String(i).padStart(2, '0')}`,
        'motif',
        [`Tea party ${i + 1}`, 'transfer print, jug'],
        years(1762 + ((i * 7) % 50), 1765 + ((i * 11) % 7) + ((i * 7) % 50)),
      ),
    ),
  ],
  Array.from({ length: 40 }, (_, i) =>
    step('plate-hub', `motif-f${String(i).padStart(2, '0')}`, {
      sign: (['same', 'reverse', 'direction not known'] as const)[i % 3]!,
      certainty: (['CERTAIN', 'PROBABLE', 'POSSIBLE', 'DOUBTFUL'] as const)[i % 4]!,
    }),
  ),
);

export const contradictions = drawing(
  [
    node('plate-a', 'plate', ['The parrot', 'engraving, Nuremberg'], years(1740)),
    node('plate-b', 'plate', ['Le perroquet', 'etching, Paris'], years(1752, 1758)),
    node('motif-c', 'motif', ['Parrot on a branch', 'painted, plate'], years(1745, 1749)),
    node('plate-d', 'plate', ['Papagei', 'woodcut, Leipzig'], {
      lo: daysFromCivil(1765, 1, 1),
      hi: daysFromCivil(1760, 12, 31),
    }),
    node('motif-e', 'motif', ['Parrot, cherries', 'painted, tureen'], years(1763, 1770)),
    node('motif-f', 'motif', ['Parrot', 'gilt, cup'], years(1730, 1734)),
  ],
  [
    step('plate-a', 'plate-b', { sign: 'reverse', contradiction: true }),
    step('plate-b', 'motif-c', { sign: 'same' }),
    step('plate-b', 'plate-d', { sign: 'reverse', contradiction: true }),
    step('plate-a', 'plate-d', { sign: 'reverse', contradiction: true }),
    step('plate-d', 'motif-e', { sign: 'same', certainty: 'PROBABLE' }),
    step('plate-b', 'motif-f', { sign: 'same', certainty: 'DOUBTFUL' }),
    step('plate-a', 'motif-c', { sign: 'reverse' }),
  ],
);

export const aCycle = drawing(
  [
    node('plate-a', 'plate', ['The arbour', 'etching'], years(1700, 1710)),
    node('plate-b', 'plate', ['La tonnelle', 'etching'], years(1703, 1712)),
    node('plate-c', 'plate', ['Die Laube', 'engraving'], years(1720)),
    node('plate-d', 'plate', ['Het prieel', 'engraving'], years(1720)),
    node('motif-e', 'motif', ['Arbour', 'lacquer, tray'], years(1730, 1740)),
  ],
  [
    step('plate-a', 'plate-b', { sign: 'reverse' }),
    step('plate-b', 'plate-a', { sign: 'reverse', certainty: 'POSSIBLE' }),
    step('plate-b', 'plate-c', { sign: 'same', contradiction: true }),
    step('plate-c', 'plate-d', { sign: 'reverse', contradiction: true }),
    step('plate-d', 'plate-a', { sign: 'reverse' }),
    step('plate-d', 'motif-e', { sign: 'reverse' }),
    step('motif-e', 'motif-e', { sign: 'same' }),
  ],
);

export const manyScripts = drawing(
  [
    node(
      'plate-a',
      'plate',
      [
        'Nouveau recueil de toutes sortes de desseins pour la fayence, contenant des fleurs, oiseaux, papillons et paysages',
        'livre de desseins, planche première, gravée à l’eau-forte',
      ],
      years(1738, 1742),
    ),
    node('plate-b', 'plate', ['芥子園畫傳初集卷之三山石譜樹木譜人物屋宇譜', '木版, 南京'], years(1679)),
    node('plate-c', 'plate', ['كتاب صور الأزهار والطيور في البساتين', 'حفر'], years(1730, 1735)),
    node('plate-d', 'plate', ['ספר הציורים של הפרחים', 'תחריט'], years(1750)),
    node(
      'plate-e',
      'plate',
      ['Новая книга рисунков для живописцев по фаянсу', 'гравюра, Санктпетербургъ'],
      years(1765),
    ),
    node('plate-f', 'plate', ['Βιβλίον ἀνθέων καὶ ὀρνίθων', 'χαλκογραφία, Ἑνετίησιν'], years(1755, 1760)),
    node(
      'plate-g',
      'plate',
      [
        'Ausführlichstes Musterbuchvorlagenverzeichnisunternehmen <A & B> "zur" \u0007Porcellainmahlerey',
        'Kupferstich',
      ],
      years(1770),
    ),
    node('motif-h', 'motif', ['草花と鳥の図', '染付, 皿'], years(1775, 1790)),
    node('motif-i', 'motif', ['꽃과 새 그림이 있는 접시', '청화, 접시'], years(1780, 1800)),
    node('motif-j', 'motif', ['फूल और पक्षी', 'चित्रित'], years(1790, 1800)),
  ],
  [
    step('plate-b', 'plate-c', { sign: 'same', certainty: 'POSSIBLE' }),
    step('plate-a', 'plate-d', { sign: 'reverse' }),
    step('plate-c', 'plate-a', { sign: 'reverse' }),
    step('plate-a', 'plate-e', { sign: 'reverse' }),
    step('plate-a', 'plate-f', { sign: 'same' }),
    step('plate-e', 'plate-g', { sign: 'same' }),
    step('plate-b', 'motif-h', { sign: 'same' }),
    step('motif-h', 'motif-i', { sign: 'same' }),
    step('plate-g', 'motif-j', { sign: 'same' }),
  ],
);

export const fiveYears = drawing(
  [
    node('sheet-a', 'sheet', ['The Macaroni at Vauxhall', 'etching, Fleet Street'], {
      lo: daysFromCivil(1772, 3, 14),
      hi: daysFromCivil(1772, 3, 14),
    }),
    node('sheet-b', 'sheet', ['A Macaroni', 'etching, Dublin'], {
      lo: daysFromCivil(1772, 6, 1),
      hi: daysFromCivil(1772, 9, 30),
    }),
    node('plate-c', 'plate', ['The Macaroni', 'etching, The Town Magazine'], {
      lo: daysFromCivil(1772, 12, 1),
      hi: daysFromCivil(1772, 12, 31),
    }),
    node('motif-d', 'motif', ['Macaroni', 'transfer print, jug'], years(1773, 1774)),
    node('motif-e', 'motif', ['Macaroni with a dog', 'painted, enamel box'], {
      lo: daysFromCivil(1774, 1, 1),
      hi: daysFromCivil(1776, 6, 30),
    }),
    node('motif-f', 'motif', ['Macaroni', 'printed, handkerchief'], { lo: daysFromCivil(1772, 4, 1) }),
  ],
  [
    step('sheet-a', 'sheet-b', { sign: 'reverse' }),
    step('sheet-a', 'plate-c', { sign: 'reverse', certainty: 'PROBABLE' }),
    step('plate-c', 'motif-d', { sign: 'same' }),
    step('sheet-b', 'motif-e', { sign: 'same', certainty: 'POSSIBLE' }),
    step('sheet-a', 'motif-f', { sign: 'reverse' }),
  ],
);

export const fourCenturies = drawing(
  [
    node('artwork-a', 'artwork', ['Saint George', 'drawing, lost'], years(1480, 1500), { lost: true }),
    node('sheet-b', 'sheet', ['S. Georgius', 'engraving'], years(1501, 1505)),
    node('sheet-c', 'sheet', ['S. Georgius', 'engraving, copy'], years(1520, 1560)),
    node('plate-d', 'plate', ['Ritter Georg', 'woodcut, almanac'], years(1611)),
    node('motif-e', 'motif', ['Saint George', 'enamel, Limoges'], years(1535, 1545)),
    node('plate-f', 'plate', ['St George and the Dragon', 'wood engraving, a weekly'], years(1841)),
    node('motif-g', 'motif', ['Saint George', 'mould, gingerbread'], years(1600, 1800)),
    node('motif-h', 'motif', ['St George', 'transfer print, plate'], { lo: daysFromCivil(1850, 1, 1) }),
    node('plate-i', 'plate', ['Saint Georges', 'lithograph'], years(1872)),
  ],
  [
    step('artwork-a', 'sheet-b', { sign: 'reverse', certainty: 'POSSIBLE' }),
    step('sheet-b', 'sheet-c', { sign: 'reverse' }),
    step('sheet-b', 'motif-e', { sign: 'same' }),
    step('sheet-c', 'plate-d', { sign: 'same', certainty: 'PROBABLE' }),
    step('plate-d', 'motif-g', { sign: 'direction not known' }),
    step('sheet-b', 'plate-f', { sign: 'reverse' }),
    step('plate-f', 'motif-h', { sign: 'same' }),
    step('sheet-c', 'plate-i', { sign: 'reverse' }),
  ],
);

/** Numbers from a seed: mulberry32. */
export function numbers(seed: number): () => number {
  let a = seed;
  return () => {
    a = (a + 0x6d2b79f5) | 0;
    let t = Math.imul(a ^ (a >>> 15), 1 | a);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A family of so many pictures, each after one or two earlier ones, some dated loosely. */
export function family(count: number, seed = 1, secondSource = 0.15): Drawing {
  const next = numbers(seed);
  const kinds: NodeKind[] = ['plate', 'motif', 'plate', 'motif', 'sheet', 'artwork'];
  const nodes = Array.from({ length: count }, (_, i) => {
    const year = 1700 + Math.floor((i / count) * 150 + next() * 10);
    return node(
      `plate-r${String(i).padStart(4, '0')}`,
      kinds[Math.floor(next() * kinds.length)]!,
      [`Picture ${i} of the family`, 'etching'],
      years(year, year + Math.floor(next() * 8)),
      { group: { id: `work-${i % 60}`, label: `Work ${i % 60}` } },
    );
  });
  const steps = nodes.slice(1).flatMap((each, k) => {
    const i = k + 1;
    const near = () => nodes[Math.max(0, i - 1 - Math.floor(next() ** 2 * Math.min(i, 40)))]!.id;
    const sources = new Set([near(), ...(next() < secondSource ? [near()] : [])]);
    return [...sources].map(source =>
      step(source, each.id, {
        sign: next() < 0.5 ? 'same' : 'reverse',
        certainty: next() < 0.7 ? 'CERTAIN' : 'POSSIBLE',
      }),
    );
  });
  return drawing(nodes, steps);
}

export const familyOf30 = family(30);
export const familyOf100 = family(100);
export const familyOf300 = family(300);

export const descentOfEditions = drawing(
  [
    node('edition-a', 'edition', ['Vermaak aan de oever', 'Amsterdam, P. Hartigh'], years(1751), {
      plates: Array.from({ length: 12 }, () => 'NEW' as const),
    }),
    node(
      'edition-b',
      'edition',
      ['Lust am Ufer', 'Leipzig, Weidners Erben', 'translated, without leave; 12 plates copied'],
      years(1758),
      { plates: Array.from({ length: 12 }, () => 'COPIED' as const) },
    ),
    node(
      'edition-c',
      'edition',
      ['Pleasures of the Shore', 'London, T. Calloway', 'translated; 11 plates went along, 1 left out'],
      years(1764),
      { plates: [...Array.from({ length: 11 }, () => 'WENT_ALONG' as const), 'LEFT_OUT'] },
    ),
    node(
      'edition-d',
      'edition',
      [
        'Vermaak aan de oever',
        'Amsterdam, P. Hartigh',
        '8 plates went along, 2 from the same surfaces, 1 copied, 3 new',
      ],
      { lo: daysFromCivil(1763, 1, 1), hi: daysFromCivil(1773, 12, 31) },
      {
        plates: [
          'WENT_ALONG',
          'WENT_ALONG',
          'WENT_ALONG',
          'WENT_ALONG',
          'SAME_SURFACE',
          'SAME_SURFACE',
          'WENT_ALONG',
          'WENT_ALONG',
          'WENT_ALONG',
          'WENT_ALONG',
          'COPIED',
          'NOT_KNOWN',
          'NEW',
          'NEW',
          'NEW',
        ],
      },
    ),
    node('edition-e', 'edition', ['Pleasures of the Shore, abridged for children', 'Dublin'], years(1770, 1775), {
      plates: Array.from({ length: 6 }, () => 'COPIED' as const),
    }),
  ],
  [
    step('edition-a', 'edition-b', { kind: 'copied surfaces', sign: 'without leave' }),
    step('edition-a', 'edition-c', { kind: 'same surfaces' }),
    step('edition-c', 'edition-d', { kind: 'retouched surfaces' }),
    step('edition-c', 'edition-e', { kind: 'recut surfaces', sign: 'without leave', certainty: 'PROBABLE' }),
    step('edition-b', 'edition-e', { kind: 'surfaces not known', certainty: 'POSSIBLE' }),
  ],
  {
    of: 'edition-c',
    title: 'Pleasures of the Shore',
    subtitle: 'Descent of the editions, with what became of their plates: 5 editions, 5 steps',
  },
);
