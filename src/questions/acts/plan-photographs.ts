import type { Given } from '../../domain/acts/act.ts';
import type { photographs } from '../../domain/acts/photographs.ts';
import type { RecordOf } from '../../domain/model/row.ts';
import { type Planned, saidOf } from './act-parts.ts';
import type { Draft } from './draft.ts';
import { refusal } from './refusal.ts';

type GivenPhotographs = Given<typeof photographs.fields>;
type GivenBox = NonNullable<GivenPhotographs['boxes']>[number];

interface Marked {
  readonly id: string;
  readonly contentHash: string | undefined;
}

export async function planPhotographs(given: GivenPhotographs, draft: Draft): Promise<Planned> {
  if (given.of !== undefined && given.photograph !== undefined)
    throw refusal('photograph', 'expected of or photograph, came both');
  const marked = given.photograph === undefined ? taken(given, draft) : [await there(given.photograph, draft)];
  const boxes = (given.boxes ?? []).map((box, i) => regionOf(box, i, marked));
  const regions = [...Map.groupBy(boxes, ({ picture, photograph }) => `${picture} ${photograph}`).values()].map(
    ([first, ...others]) => ({ ...first!, rectangles: [first!, ...others].map(({ rectangle }) => rectangle) }),
  );
  return {
    photographs: marked.map(({ id }) => id),
    regions: await draft.claims(
      'Region',
      regions.map(({ rectangle: _, ...fields }) => fields),
      saidOf(given),
    ),
  };
}

/** The new photographs. */
function taken(given: GivenPhotographs, draft: Draft): readonly Marked[] {
  const { of, view, scale, light, contentHash, photographer, taken, rights, credit, permission } = given;
  const all = given.photographs ?? [
    {
      ...(view === undefined ? {} : { view }),
      ...(scale === undefined ? {} : { scale }),
      ...(contentHash === undefined ? {} : { contentHash }),
    },
  ];
  return all.map((each, i) => {
    const hash = each.contentHash;
    if (hash !== undefined && !/^[0-9a-f]{64}$/.test(hash)) {
      const field = given.photographs === undefined ? 'contentHash' : `photographs[${i}].contentHash`;
      throw refusal(field, `expected a SHA-256 as 64 hexadecimal digits in small letters, came "${hash}"`);
    }
    const common = { of: of!, photographer, taken, rights, credit, permission };
    return { id: draft.add('Photograph', { light, ...each, ...common }), contentHash: hash };
  });
}

async function there(id: string, { store }: Draft): Promise<Marked> {
  const [row] = await store.rows([id]);
  return { id, contentHash: (row as RecordOf<'Photograph'> | undefined)?.contentHash };
}

/** Places are tied to bytes: without the SHA-256 of a photograph nothing can be marked on it. */
function regionOf({ photograph: number = 1, picture, ...rectangle }: GivenBox, i: number, marked: readonly Marked[]) {
  const on = marked[number - 1];
  if (on === undefined)
    throw refusal(
      `boxes[${i}].photograph`,
      `expected the number of a photograph, 1 to ${marked.length}, came ${number}`,
    );
  const { id: photograph, contentHash } = on;
  if (contentHash === undefined)
    throw refusal(
      `boxes[${i}]`,
      `expected a photograph whose contentHash is known, came number ${number}, which has none`,
    );
  if (rectangle.x + rectangle.width > 100 || rectangle.y + rectangle.height > 100) {
    const came = `${rectangle.x},${rectangle.y},${rectangle.width},${rectangle.height}`;
    throw refusal(`boxes[${i}]`, `expected a rectangle within the photograph, in percent, came ${came}`);
  }
  return { picture, photograph, contentHash, rectangle };
}
