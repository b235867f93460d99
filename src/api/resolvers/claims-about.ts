import type { GraphQLResolveInfo } from 'graphql';
import { type ClaimKindName, claimKindNames, isRecordKind, type KindName } from '../../domain/model/kinds.ts';
import { linksOfKind } from '../../domain/model/links.ts';
import type { AnyClaim, AnyRow, ClaimBase } from '../../domain/model/row.ts';
import type { Page, PageAsked } from '../../questions/page.ts';
import type { GraphStore, Via } from '../../store/graph-store.ts';
import type { Graph } from '../graph.ts';
import type { Soon } from '../loaders/loaders.ts';
import { pageById } from '../paging/connection.ts';
import { aroundLinked } from './asked-around.ts';
import { isClaim, soon } from './load.ts';

export interface ClaimsWanted {
  readonly kinds?: readonly ClaimKindName[] | null;
  readonly stance?: readonly NonNullable<ClaimBase['stance']>[] | null;
  readonly standing?: NonNullable<ClaimBase['standing']> | null;
}

/** Claims that name a record or claim in one of their roles, by id; at once where they are at hand. */
export function claimsAbout(
  about: { readonly id: string; readonly kind: KindName },
  wanted: ClaimsWanted,
  asked: PageAsked<string>,
  { loaders }: Graph,
  info: GraphQLResolveInfo,
): Soon<Page<AnyClaim, string>> {
  const via = linksTo(about.kind, wanted.kinds ?? claimKindNames);
  const rows = via.length === 0 ? [] : loaders.linked({ id: about.id, via, around: aroundLinked(info, via) });
  return soon(rows, all => pageById(all.filter(isClaim).filter(fits(wanted)), asked));
}

/**
 * Claims of some kinds, by id. Ids begin with their kind, so that those of a kind stand together; a rare stance makes
 * the store be read as far as it must.
 */
export async function claimsOfKinds(
  store: GraphStore,
  wanted: ClaimsWanted,
  asked: PageAsked<string>,
): Promise<Page<AnyClaim, string>> {
  const found: AnyClaim[] = [];
  const keep = fits(wanted);
  const prefixes = (wanted.kinds ?? claimKindNames).map(kind => `${kind.toLowerCase()}-`).sort();
  for (const prefix of new Set(prefixes)) {
    for await (const row of rowsFrom(store, prefix, asked.after ?? '')) {
      if (isClaim(row) && keep(row)) found.push(row);
      if (found.length > asked.first) return page(found, asked.first);
    }
  }
  return page(found, asked.first);
}

/** Rows whose id begins with the prefix and comes after the given one. */
async function* rowsFrom(store: GraphStore, prefix: string, after: string): AsyncGenerator<AnyRow> {
  const chunk = 500;
  let last = after > prefix ? after : prefix;
  while (last.startsWith(prefix)) {
    const rows = await store.scan(last, chunk);
    for (const row of rows) {
      if (!row.id.startsWith(prefix)) return;
      yield row;
    }
    if (rows.length < chunk) return;
    last = rows.at(-1)!.id;
  }
}

function page(found: readonly AnyClaim[], first: number): Page<AnyClaim, string> {
  return {
    items: found.slice(0, first).map(claim => ({ item: claim, position: claim.id })),
    more: found.length > first,
  };
}

function fits({ stance, standing }: ClaimsWanted): (claim: AnyClaim) => boolean {
  return claim =>
    (stance === undefined || stance === null || stance.includes(claim.stance ?? 'HELD')) &&
    (standing === undefined || standing === null || standing === (claim.standing ?? 'STANDING'));
}

/** Roles that may name a record or claim of a kind. */
function linksTo(named: KindName, kinds: readonly ClaimKindName[]): readonly Via[] {
  const any = isRecordKind(named) ? 'any record' : 'any claim';
  return claimKindNames
    .filter(kind => kinds.includes(kind))
    .flatMap(kind =>
      linksOfKind(kind)
        .filter(link => link.to.includes(named) || link.to.includes(any))
        .map(({ name }) => ({ kind, name })),
    );
}
