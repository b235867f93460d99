import type { AnyRow, ClaimOf, RecordOf } from '../../src/domain/model/row.ts';
import { seededRandom } from '../support/seeded-random.ts';
import { type SyntheticEditions, syntheticEditions } from '../support/synthetic-editions.ts';

/**
 * Synthetic editions, each with its imprint as transcribed and a plate. Captions have words of an invented language
 * whose frequencies follow Zipf's law (the n-th commonest word 1/n as often as the commonest), as those of titles do.
 */
export function editionsWithPlates(count: number): SyntheticEditions {
  const { places, batches } = syntheticEditions(count);
  const names = new Map(places.map(place => [place.id, place.labels![0]!.text]));
  return { places, batches: () => withPlates(batches(), names) };
}

export const vocabulary = 200_000;
const wordsOfCaption = 8;

function* withPlates(
  batches: Iterable<readonly AnyRow[]>,
  names: ReadonlyMap<string, string>,
): Iterable<readonly AnyRow[]> {
  const random = seededRandom(7);
  for (const batch of batches) {
    const imprints = new Map<string, string>();
    for (const row of batch) {
      if (row.kind === 'Imprint' && row.place !== undefined) imprints.set(row.edition, names.get(row.place)!);
    }
    yield batch.flatMap((row): AnyRow[] => {
      if (row.kind !== 'Edition') return [row];
      const town = imprints.get(row.id);
      const edition = town === undefined ? row : { ...row, imprint: `${town} : printed for the author` };
      return [edition, ...plateOf(row.id.replace('edition-', ''), row.id, random)];
    });
  }
}

function plateOf(name: string, edition: string, random: () => number): [RecordOf<'Plate'>, ClaimOf<'Appearance'>] {
  const words = Array.from({ length: wordsOfCaption }, () => invented(zipf(random)));
  const plate = `plate-${name}`;
  return [
    { id: plate, kind: 'Plate', caption: words.join(' ') },
    { id: `appearance-${name}`, kind: 'Appearance', plate, edition, presence: 'PRESENT' },
  ];
}

/** A rank from 1; ranks are drawn by 1/n where the logarithm of the rank is uniform. */
function zipf(random: () => number): number {
  return Math.floor(vocabulary ** random());
}

const beginnings = 'b,br,c,ch,d,f,g,gr,h,k,l,m,n,p,pl,r,s,st,t,v'.split(',');
const vowels = 'a,e,i,o,u,ei,au'.split(',');

/** The word of a rank: the commoner, the shorter. */
export function invented(rank: number): string {
  let word = '';
  for (let rest = rank; rest > 0; rest = Math.floor(rest / (beginnings.length * vowels.length))) {
    word += beginnings[rest % beginnings.length]! + vowels[Math.floor(rest / beginnings.length) % vowels.length]!;
  }
  return word;
}
