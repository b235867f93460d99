import { compareText } from '../../../src/domain/text/compare.ts';
import type { GraphStore, Walk, WalkAsked } from '../../../src/store/graph-store.ts';
import type { Fault } from './fault.ts';

function asking(fault: string, ask: (asked: WalkAsked) => WalkAsked): Fault {
  return { fault, spoil: s => ({ walk: asked => s.walk(ask(asked)) }) };
}

function answering(fault: string, answer: (walk: Walk, asked: WalkAsked) => Walk): Fault {
  return { fault, spoil: s => ({ walk: async asked => answer(await s.walk(asked), asked) }) };
}

const allSteps = ['Copying', 'PrintedFrom', 'Casting', 'EditionDescent', 'Detail'] as const;

export const walkFaults: readonly Fault[] = [
  asking('walks ignore the view', ({ view: _, ...asked }) => asked),
  asking('walks ignore the basis', ({ basis: _, ...asked }) => asked),
  asking('walks cross what is excluded', ({ excluded: _, ...asked }) => asked),
  asking('walks take every step', asked => ({ ...asked, steps: allSteps })),
  asking('walks cross no castings', asked => ({ ...asked, steps: asked.steps.filter(step => step !== 'Casting') })),
  asking('walks cross no details', asked => ({ ...asked, steps: asked.steps.filter(step => step !== 'Detail') })),
  asking('walks go both ways', asked => ({ ...asked, direction: 'BOTH' })),
  asking('walks go to sources alone', asked => ({ ...asked, direction: 'SOURCES' })),
  asking('walks begin with one record', asked => ({ ...asked, from: asked.from.slice(0, 1) })),
  asking('walks go a step too far', asked => ({ ...asked, depth: asked.depth + 1 })),
  asking('walks ignore the limit', asked => ({ ...asked, limit: 2000 })),
  answering('a cut walk does not say so', walk => ({ ...walk, frontier: [], cut: false })),
  answering('walks lose their stamps', walk => ({
    ...walk,
    records: walk.records.map(({ since: _, ...row }) => row as (typeof walk.records)[number]),
  })),
  answering('the records of a walk come by id', walk => ({
    ...walk,
    records: [...walk.records].sort((a, b) => compareText(a.id, b.id)),
  })),
  answering('claims that no step took are left out', walk => ({
    ...walk,
    claims: walk.claims.filter(claim => claim.kind !== 'Copying' || isStep(walk, claim.copy, claim.source)),
  })),
  {
    fault: 'a walk gives its longest way',
    spoil: s => ({
      walk: async asked => {
        const walk = await s.walk(asked);
        return { ...walk, depth: await longest(s, asked, walk) };
      },
    }),
  },
  {
    fault: 'both directions are walked as one',
    spoil: s => ({
      walk: async asked => {
        if (asked.direction !== 'BOTH') return s.walk(asked);
        const sources = await s.walk({ ...asked, direction: 'SOURCES' });
        return s.walk({ ...asked, from: [...asked.from, ...sources.records.map(row => row.id)] });
      },
    }),
  },
  {
    fault: 'a direction goes on from what the other one reached',
    spoil: s => ({
      walk: async asked => {
        const walk = await s.walk(asked);
        if (asked.direction !== 'BOTH') return walk;
        const deeper = await s.walk({ ...asked, depth: asked.depth + 1, limit: asked.limit });
        return deeper.records.length === walk.records.length ? { ...walk, frontier: [], cut: false } : walk;
      },
    }),
  },
];

function isStep({ records, depth }: Walk, copy: string, source: string): boolean {
  const at = (id: string) => depth[records.findIndex(row => row.id === id)]!;
  return Math.abs(at(copy) - at(source)) === 1;
}

/** Depths counted anew, where a deeper way to a record is kept in place of a shorter one. */
async function longest(store: GraphStore, asked: WalkAsked, walk: Walk): Promise<readonly number[]> {
  const depths = new Map(walk.records.map((row, i) => [row.id, walk.depth[i]!]));
  for (const row of walk.records) {
    const next = await store.walk({ ...asked, from: [row.id], depth: 1 });
    for (const reached of next.records) {
      const deeper = depths.get(row.id)! + 1;
      if (reached.id !== row.id && depths.has(reached.id) && deeper > depths.get(reached.id)!)
        depths.set(reached.id, deeper);
    }
  }
  return walk.records.map(row => depths.get(row.id)!);
}
