import type { Given } from '../../domain/acts/act.ts';
import type { looking } from '../../domain/acts/looking.ts';
import { kindOfId } from '../../domain/model/id.ts';
import type { RecordOf } from '../../domain/model/row.ts';
import { howCopied, type Planned, saidOf } from './act-parts.ts';
import type { Draft } from './draft.ts';
import { refusal } from './refusal.ts';

type GivenLooking = Given<typeof looking.fields>;

const results = [
  ['found', 'FOUND'],
  ['unsure', 'UNSURE'],
  ['notFound', 'NOT_FOUND'],
] as const;

export async function planLooking(given: GivenLooking, draft: Draft): Promise<Planned> {
  const { exemplar, source, searchWords, coverage, lookedBy, lookedOn, finds = [] } = given;
  const target = given.target ?? (await editionOf(exemplar, draft));
  const where = { target, exemplar, source, searchWords, coverage, lookedBy, lookedOn };
  const sought = await soughtIn(given, draft);
  const examinations = sought.map(({ id, result }) => ({ sought: id, result, ...where }));
  const copyings = finds.map(find => ({ copy: find.sought, source: find.picture, ...howCopied(find) }));
  return {
    examinations: await draft.claims('Examination', examinations, saidOf(given)),
    copyings: await draft.claims('Copying', copyings, saidOf(given)),
  };
}

async function editionOf(exemplar: string | undefined, { store }: Draft): Promise<string | undefined> {
  if (exemplar === undefined) return undefined;
  const [row] = await store.rows([exemplar]);
  return row?.kind === 'Exemplar' ? row.edition : undefined;
}

interface Sought {
  readonly id: string;
  readonly result: (typeof results)[number][1];
}

/**
 * Each picture once. What is named by itself is as it is said there, whatever is said of its piece.
 * @throws INPUT_INVALID for one of which two things are said
 */
async function soughtIn(given: GivenLooking, { store }: Draft): Promise<readonly Sought[]> {
  const finds = (given.finds ?? []).map(({ sought }) => sought);
  const named = [
    ...finds.map(id => ({ id, result: 'FOUND' as const, field: 'finds' })),
    ...results.flatMap(([field, result]) => (given[field] ?? []).map(id => ({ id, result, field }))),
  ];
  const found = new Map<string, Sought>();
  const pieces = named.filter(({ id }) => kindOfId(id) === 'Piece');
  const motifs = await store.linked(
    pieces.map(({ id }) => id),
    [{ kind: 'Motif', name: 'piece' }],
  );
  for (const { id, result, field } of named) {
    if (kindOfId(id) === 'Piece') continue;
    refuseOther(found.get(id), result, field, id);
    found.set(id, { id, result });
  }
  const byPiece = new Map<string, Sought>();
  for (const [i, { id: piece, result, field }] of pieces.entries()) {
    const all = motifs[i] as readonly RecordOf<'Motif'>[];
    if (all.length === 0) throw refusal(field, `expected a piece with motifs, came "${piece}", which has none`);
    for (const { id } of all) {
      refuseOther(byPiece.get(id), result, field, piece);
      byPiece.set(id, { id, result });
    }
  }
  return [...found.values(), ...[...byPiece.values()].filter(({ id }) => !found.has(id))];
}

function refuseOther(before: Sought | undefined, result: Sought['result'], field: string, id: string): void {
  if (before === undefined || before.result === result) return;
  const [name] = results.find(([, each]) => each === before.result)!;
  throw refusal(field, `expected what is not said otherwise, came "${id}", which is in ${name} too`);
}
