import { type GraphQLResolveInfo, Kind, type SelectionSetNode, type ValueNode } from 'graphql';
import { type ClaimKindName, claimKindNames, recordKindNames } from '../../domain/model/kinds.ts';
import { linkKinds, linksOfKind } from '../../domain/model/links.ts';
import { inversesOf } from '../../domain/model/sdl-inverse.ts';
import { kindEnumValue } from '../../domain/model/sdl-names.ts';
import type { Around, Via } from '../../store/graph-store.ts';
import { defaultPage } from '../paging/page-args.ts';
import { innerOf } from './asks-for.ts';

/** Rounds that are looked ahead at most. */
const mostRounds = 4;

/**
 * What a field that gives a row asks the store for below it: the claims and records of each level, and what they name. It may
 * be more than is asked for in the end, never less than is looked up with it: what is left out is asked for when it is needed.
 * @returns undefined if it asks for nothing
 */
export function aroundRow(info: GraphQLResolveInfo): Around | undefined {
  const ahead = new Ahead(info);
  for (const set of selectionsOf(info)) ahead.row(set, 0, 0);
  return ahead.asked();
}

/** The same of a connection of rows that hold another in some links. @returns undefined if it asks for those rows alone */
export function aroundLinked(info: GraphQLResolveInfo, via: readonly Via[]): Around | undefined {
  const ahead = new Ahead(info, via);
  for (const node of info.fieldNodes)
    ahead.connection(node.selectionSet, firstOf(argument(node.arguments, 'first')), 0);
  return ahead.namesOther ? ahead.asked() : undefined;
}

/** Gathers rounds from selections. */
class Ahead {
  readonly #info: GraphQLResolveInfo;
  readonly #rounds: Via[][];
  /** Rows that the connections of the first round may show. */
  #shown = 0;
  /** What rows name is asked for. */
  namesOther = false;

  constructor(info: GraphQLResolveInfo, via?: readonly Via[]) {
    this.#info = info;
    this.#rounds = via === undefined ? [] : [[...via]];
  }

  /** Full pages, each row with one that it names, are looked around: whoever asks for longer ones pays for no more. */
  asked(): Around | undefined {
    return this.#rounds.length === 0 ? undefined : { rounds: this.#rounds, most: 2 * this.#shown + 1 };
  }

  /**
   * @param round which one looks around the rows of the selection
   * @param naming which one comes upon what they name
   */
  row(set: SelectionSetNode, round: number, naming: number): void {
    for (const selection of set.selections) {
      if (selection.kind !== Kind.FIELD) {
        const inner = innerOf(selection, this.#info);
        if (inner !== undefined) this.row(inner, round, naming);
        continue;
      }
      const { name, arguments: given, selectionSet } = selection;
      const via = viaOf(name.value, argument(given, 'kinds'));
      if (via !== undefined) {
        this.#add(round, via);
        this.connection(selectionSet, firstOf(argument(given, 'first')), round);
      } else if (name.value === 'says' || (selectionSet !== undefined && linkNames.has(name.value))) {
        this.namesOther = true;
        this.#add(naming, []);
        if (selectionSet !== undefined) this.row(selectionSet, naming + 1, naming + 1);
      }
    }
  }

  /** @param round which one comes upon the rows of the connection */
  connection(set: SelectionSetNode | undefined, first: number, round: number): void {
    if (round === 0) this.#shown += first;
    if (set !== undefined) this.#items(set, round);
  }

  #items(set: SelectionSetNode, round: number): void {
    for (const selection of set.selections) {
      if (selection.kind !== Kind.FIELD) {
        const inner = innerOf(selection, this.#info);
        if (inner !== undefined) this.#items(inner, round);
      } else if (selection.selectionSet !== undefined) {
        if (selection.name.value === 'edges') this.#items(selection.selectionSet, round);
        else if (selection.name.value !== 'pageInfo') this.row(selection.selectionSet, round + 1, round);
      }
    }
  }

  #add(round: number, via: readonly Via[]): void {
    if (round >= mostRounds) return;
    while (this.#rounds.length <= round) this.#rounds.push([]);
    const links = this.#rounds[round]!;
    for (const { kind, name } of via) {
      if (!links.some(link => link.kind === kind && link.name === name)) links.push({ kind, name });
    }
  }
}

function selectionsOf(info: GraphQLResolveInfo): readonly SelectionSetNode[] {
  return info.fieldNodes.flatMap(({ selectionSet }) => selectionSet ?? []);
}

/** Links through which the rows of a connection are found; undefined where it is none, or only a variable says of which kinds. */
function viaOf(field: string, kinds: ValueNode | undefined): readonly Via[] | undefined {
  if (field !== 'claims') return inverses.get(field);
  const named = kinds === undefined ? claimKindNames : kindsIn(kinds);
  return named?.flatMap(kind => linksOfKind(kind));
}

function kindsIn(value: ValueNode): readonly ClaimKindName[] | undefined {
  if (value.kind === Kind.NULL) return claimKindNames;
  const values = value.kind === Kind.LIST ? value.values : [value];
  const kinds = values.map(each => (each.kind === Kind.ENUM ? claimKindOf.get(each.value) : undefined));
  return kinds.every(kind => kind !== undefined) ? kinds : undefined;
}

function firstOf(value: ValueNode | undefined): number {
  return value?.kind === Kind.INT ? Number(value.value) : defaultPage;
}

function argument(
  given: readonly { readonly name: { readonly value: string }; readonly value: ValueNode }[] | undefined,
  name: string,
): ValueNode | undefined {
  return given?.find(each => each.name.value === name)?.value;
}

const claimKindOf: ReadonlyMap<string, ClaimKindName> = new Map(
  claimKindNames.map(kind => [kindEnumValue(kind), kind]),
);

const linkNames: ReadonlySet<string> = new Set(linkKinds.map(({ name }) => name));

/** Links of the connections that records have from the fields of others, by their names. */
const inverses: ReadonlyMap<string, readonly Via[]> = new Map(
  [...Map.groupBy(recordKindNames.flatMap(inversesOf), ({ name }) => name)].map(([name, all]) => [
    name,
    all.map(({ of, field }) => ({ kind: of, name: field })),
  ]),
);
