import type { GraphQLResolveInfo } from 'graphql';
import { claimSentence, namedInSentence } from '../../domain/model/claim-sentence.ts';
import type { Field, Kind, Role } from '../../domain/model/declaration.ts';
import {
  claimKindNames,
  claimKinds,
  type RecordKindName,
  recordKindNames,
  recordKinds,
} from '../../domain/model/kinds.ts';
import { labelOf } from '../../domain/model/label.ts';
import type { AnyClaim, AnyRecord, AnyRow } from '../../domain/model/row.ts';
import { type Inverse, inversesOf } from '../../domain/model/sdl-inverse.ts';
import type { ApiContext } from '../context.ts';
import { graphOf } from '../graph.ts';
import { connection, pageById } from '../paging/connection.ts';
import { listDigest } from '../paging/cursor.ts';
import { isNumber, isText, type PageArgs, pageAsked } from '../paging/page-args.ts';
import { aroundLinked } from './asked-around.ts';
import { type ClaimsWanted, claimsAbout } from './claims-about.ts';
import { isRecord, loadLink, soon } from './load.ts';

type Resolver = (row: never, args: never, context: ApiContext, info: GraphQLResolveInfo) => unknown;
type TypeResolvers = Readonly<Record<string, Resolver>>;

/** Resolvers of every kind of record and claim, derived from the declarations; what is not here is read as it stands. */
export function kindResolvers(): Record<string, TypeResolvers> {
  return {
    ...Object.fromEntries(recordKindNames.map(kind => [kind, recordResolvers(kind)])),
    ...Object.fromEntries(claimKindNames.map(kind => [kind, claimResolvers(claimKinds[kind])])),
    ...itemResolvers(),
    Evidence: evidenceResolvers,
  };
}

function recordResolvers(kind: RecordKindName): TypeResolvers {
  const inverses = inversesOf(kind).map(inverse => [inverse.name, inverseResolver(inverse)]);
  return { ...recordBase, ...fieldResolvers(recordKinds[kind]), ...Object.fromEntries(inverses) };
}

function claimResolvers(declared: Kind & { readonly type: 'claim' }): TypeResolvers {
  const roles = Object.keys(declared.roles satisfies Readonly<Record<string, Role>>);
  return {
    ...claimBase,
    ...Object.fromEntries(roles.map(role => [role, linkResolver(role)])),
    ...fieldResolvers(declared),
  };
}

/** Of the items that name other records. */
function itemResolvers(): Record<string, TypeResolvers> {
  const items = [...Object.values<Kind>(recordKinds), ...Object.values<Kind>(claimKinds)].flatMap(({ fields }) =>
    Object.values(fields).filter(field => field.type === 'items'),
  );
  return Object.fromEntries(
    items.flatMap(({ name, item }): [string, TypeResolvers][] => {
      const links = Object.entries(item).filter(([, part]) => part.type === 'record');
      return links.length === 0 ? [] : [[name, Object.fromEntries(links.map(([part]) => [part, linkResolver(part)]))]];
    }),
  );
}

function fieldResolvers(declared: Kind): TypeResolvers {
  return Object.fromEntries(
    Object.entries<Field>(declared.fields).flatMap(([name, field]): [string, Resolver][] => {
      if (field.type === 'record') return [[name, linkResolver(name)]];
      return field.type === 'items' || ('many' in field && field.many === true) ? [[name, listResolver(name)]] : [];
    }),
  );
}

function linkResolver(name: string): Resolver {
  return (row: Readonly<Record<string, string | undefined>>, _args: never, context, info) =>
    loadLink(row[name], graphOf(info, context));
}

function listResolver(name: string): Resolver {
  return (row: Readonly<Record<string, unknown>>) => row[name] ?? [];
}

/** Records whose field names this one; the connection also says how many there are. */
function inverseResolver(inverse: Inverse): Resolver {
  const via = [{ kind: inverse.of, name: inverse.field }];
  return (row: AnyRecord, args: PageArgs, context, info) => {
    const { loaders } = graphOf(info, context);
    const list = listDigest(inverse.name, args, row.id);
    const asked = pageAsked(args, list, isText);
    const rows = loaders.linked({ id: row.id, via, around: aroundLinked(info, via) });
    return soon(rows, all => ({ ...connection(pageById(all, asked), list), totalCount: all.length }));
  };
}

const history: Resolver = async (row: AnyRow, args: PageArgs, context, info) => {
  const { questions } = graphOf(info, context);
  const list = listDigest('history', {}, row.id);
  return connection(await questions.history(row.id, pageAsked(args, list, isNumber)), list);
};

const claims: Resolver = (row: AnyRow, args: PageArgs & ClaimsWanted, context, info) => {
  const list = listDigest('claims', args, row.id);
  const asked = pageAsked(args, list, isText);
  return soon(claimsAbout(row, args, asked, graphOf(info, context), info), page => connection(page, list));
};

const recordBase: TypeResolvers = {
  label: (row: AnyRecord, { language }: { language?: string | null }) => labelOf(row, language ?? undefined) ?? null,
  labels: listResolver('labels'),
  notes: listResolver('notes'),
  sameAs: listResolver('sameAs'),
  columns: (row: AnyRecord) => Object.entries(row.columns ?? {}).map(([name, text]) => ({ name, text })),
  origins: (row: AnyRecord, _args: never, context, info) => graphOf(info, context).loaders.origins(row.id),
  claims,
  history,
};

const claimBase: TypeResolvers = {
  says: async (row: AnyClaim, { language }: { language?: string | null }, context, info) => {
    const { loaders } = graphOf(info, context);
    const ids = namedInSentence(row);
    const rows = await Promise.all(ids.map(id => loaders.row(id)));
    const labels = new Map(rows.map((named, i) => [ids[i]!, labelIn(named, language ?? undefined)]));
    return claimSentence(row, id => labels.get(id));
  },
  standing: (row: AnyClaim) => row.standing ?? 'STANDING',
  stance: (row: AnyClaim) => row.stance ?? 'HELD',
  certainty: (row: AnyClaim) => row.certainty ?? 'CERTAIN',
  evidence: listResolver('evidence'),
  supersededBy: linkResolver('supersededBy'),
  alternativeTo: linkResolver('alternativeTo'),
  claims,
  history,
};

const evidenceResolvers: TypeResolvers = {
  reference: linkResolver('reference'),
  record: linkResolver('record'),
  claim: linkResolver('claim'),
  photograph: linkResolver('photograph'),
  region: listResolver('region'),
};

function labelIn(row: AnyRow | undefined, language: string | undefined): string | undefined {
  return row !== undefined && isRecord(row) ? labelOf(row, language) : undefined;
}
