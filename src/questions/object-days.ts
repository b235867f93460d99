import type { Conventions } from '../domain/conventions/conventions.ts';
import { slackKeysOf, slackOf } from '../domain/conventions/slack-of.ts';
import type { Basis } from '../domain/model/counted.ts';
import type { AnyClaim, AnyRecord } from '../domain/model/row.ts';
import type { AnswerFlag } from '../domain/reach/answer-flag.ts';
import { markWindows } from '../domain/reach/mark-windows.ts';
import type { ObjectDay } from '../domain/reach/reach-edition-input.ts';
import { flagsOf, recordedDays } from '../domain/reach/recorded-days.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { countedDatings } from './edition-datings.ts';
import { openGroups } from './open-groups.ts';

export interface ObjectDays {
  readonly days: readonly ObjectDay[];
  readonly flags: readonly AnswerFlag[];
  readonly claims: readonly string[];
  /** Keys of the conventions by which they were read. */
  readonly keys: readonly string[];
}

/**
 * When a piece or motif was decorated: a motif by its own dating, else by that of its piece. A piece dated by a mark
 * has two readings, since a mark dates the body. Undefined where no dating counts.
 */
export async function objectDays(
  store: GraphStore,
  record: AnyRecord,
  conventions: Conventions,
  basis: Basis,
): Promise<ObjectDays | undefined> {
  const own = await datingsOf(store, record.id, conventions, basis);
  const datings =
    own.length > 0 || record.kind !== 'Motif' ? own : await datingsOf(store, record.piece, conventions, basis);
  if (datings.length === 0) return undefined;
  const days = recordedDays(datings);
  const byMark = datings.some(dating => dating.basis === 'MARK') && !(record.kind === 'Motif' && own.length > 0);
  return {
    days: byMark ? markWindows(days, conventions) : days.map(headline => ({ headline })),
    flags: flagsOf(datings),
    claims: datings.map(dating => dating.claim),
    keys: [
      ...slackKeysOf(
        datings.map(({ date }) => date),
        conventions,
      ),
      ...(byMark ? ['decoratedWithin'] : []),
    ],
  };
}

async function datingsOf(
  store: GraphStore,
  id: string,
  conventions: Conventions,
  basis: Basis,
): Promise<ReturnType<typeof countedDatings>> {
  const [found] = await store.linked([id], [{ kind: 'Dating', name: 'of' }]);
  const claims = (found ?? []) as readonly AnyClaim[];
  return countedDatings(claims, 'MADE', slackOf(conventions), basis, await openGroups(store, claims));
}
