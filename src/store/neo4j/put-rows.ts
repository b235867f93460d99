import neo4j from 'neo4j-driver';
import type { WalkStep } from '../../domain/descent/walk-steps.ts';
import { kindOfId } from '../../domain/model/id.ts';
import type { KindName } from '../../domain/model/kinds.ts';
import { type LinkKind, linksOfKind } from '../../domain/model/links.ts';
import type { Ask } from './connection.ts';
import type { Before, KnownRows } from './known-rows.ts';
import { inOrderOfLinks, type LinkRow } from './new-rows.ts';
import { type Properties, propertyNames, withoutOthers } from './row-codec.ts';
import { withBlock } from './search-words.ts';
import type { HeldWindow } from './window-writer.ts';
import {
  bringBackText,
  closeLinksText,
  createLinksText,
  createRowsText,
  createStepsText,
  deleteStepsText,
  takeOutText,
  writeCypher,
} from './write-statements.ts';
import { type DerivedStep, isStepKind, stepOf, type WrittenBatch, type WrittenRow } from './written-batch.ts';

/** How far change sets and rows have come: part of what the node Store holds. */
export interface RowState {
  changeSet: number;
  /** Last number given to a row or a waiting link: they are counted together, in the order in which they come. */
  number: number;
}

/**
 * Asks for all that puts the rows and takes them out, in the order in which the server is to make it.
 * @param windows of editions that are new, among others
 * @param state is changed in its place
 */
export function putRows(
  run: Ask,
  { put, remove, changeSet }: WrittenBatch,
  { before, gone, fresh }: KnownRows,
  windows: ReadonlyMap<string, HeldWindow>,
  state: RowState,
  token: string,
): Promise<unknown>[] {
  const number = neo4j.int(++state.changeSet);
  const numberOf = (id: string) => before.get(id)!['_number'] as number;
  const removed = remove.toSorted((a, b) => numberOf(a) - numberOf(b));
  const written = [...put.map(({ id }) => id), ...removed];
  const making: Promise<unknown>[] = [
    run(writeCypher.createChangeSet, { changeSet: { ...changeSet, number, token, written, removed } }),
  ];
  const back = put.filter(({ id }) => gone.has(id));
  for (const [kind, those] of Map.groupBy(back, row => row.kind)) {
    const rows = those.map(({ id, fields, derived }) => {
      return { id, kind, ...fields, ...derivedOf(derived, gone.get(id)!), _since: number };
    });
    making.push(run(bringBackText(kind), { rows }));
  }
  const numbers = new Map(fresh.map(({ id }) => [id, ++state.number]));
  const { created, linkedLater } = inOrderOfLinks(fresh);
  for (const { kind, links, rows: those } of created) {
    const names = propertyNames(kind);
    const rows = those.map(({ id, fields, derived }) => {
      const own = numbers.get(id)!;
      const values: Properties = { ...fields, ...derivedOf(derived, own), ...windowOf(windows.get(id)) };
      return [id, neo4j.int(own), ...names.map(name => values[name] ?? null)];
    });
    making.push(run(createRowsText(kind, links), { kind, changeSet: number, rows }));
  }
  const replaced = put.filter(({ id }) => before.has(id));
  if (replaced.length > 0) {
    const rows = replaced.map(({ id, kind, fields, derived }) => {
      const values = { ...withoutOthers(kind, { ...fields }), ...derivedOf(derived, numberOf(id)), _since: number };
      return { id, values };
    });
    making.push(run(writeCypher.putVersions, { rows, changeSet: number }));
  }
  const old = put.filter(({ id }) => !numbers.has(id));
  for (const [link, changes] of linkChanges(old, remove, before)) {
    const [closed, opened] = [changes.flatMap(({ old }) => old?.[0] ?? []), changes.flatMap(added)];
    if (closed.length > 0) making.push(run(closeLinksText(link), { ids: closed, changeSet: number }));
    if (opened.length > 0) making.push(run(createLinksText(link), { links: opened, changeSet: number }));
  }
  for (const [link, links] of linkedLater) making.push(run(createLinksText(link), { links, changeSet: number }));
  for (const [step, changes] of stepChanges(put, remove, before)) {
    const [closed, opened] = [changes.flatMap(({ old }) => (old === undefined ? [] : [old])), changes.flatMap(added)];
    if (closed.length > 0) making.push(run(deleteStepsText(step), { steps: closed }));
    if (opened.length > 0) making.push(run(createStepsText(step), { steps: opened }));
  }
  for (const [kind, ids] of Map.groupBy(removed, id => kindOfId(id)!)) {
    making.push(run(takeOutText(kind), { ids, changeSet: number }));
  }
  return making;
}

/** Properties derived from a row and its number. */
function derivedOf(derived: Properties, number: number): Properties {
  const words = derived['_words'];
  return typeof words === 'string' ? { ...derived, _words: withBlock(words, number) } : derived;
}

/** The window of an edition as its properties. */
function windowOf(window: HeldWindow | undefined): Properties {
  return window === undefined ? {} : { _window: window[0], _traits: neo4j.int(window[1]) };
}

interface Change<T> {
  readonly old: T | undefined;
  readonly new: T | undefined;
}

interface RowChange {
  readonly id: string;
  readonly kind: KindName;
  /** Of the version that is put; none of a row that is taken out. */
  readonly fields: Properties | undefined;
}

function rowChanges(put: readonly WrittenRow[], remove: readonly string[]): readonly RowChange[] {
  return [...put, ...remove.map(id => ({ id, kind: kindOfId(id)!, fields: undefined }))];
}

/** Links that begin or end, by kind of link. */
function linkChanges(
  put: readonly WrittenRow[],
  remove: readonly string[],
  before: Before,
): ReadonlyMap<LinkKind, readonly Change<LinkRow>[]> {
  const changes = rowChanges(put, remove).flatMap(({ id, kind, fields }) =>
    linksOfKind(kind).map(link => {
      const rowOf = (target: unknown): LinkRow | undefined =>
        target === undefined ? undefined : [id, target as string];
      return { link, old: rowOf(before.get(id)?.[link.name]), new: rowOf(fields?.[link.name]) };
    }),
  );
  return Map.groupBy(changes.filter(isChange), ({ link }) => link);
}

/** Derived steps that begin or end, by what they are. */
function stepChanges(
  put: readonly WrittenRow[],
  remove: readonly string[],
  before: Before,
): ReadonlyMap<WalkStep, readonly Change<DerivedStep>[]> {
  const changes = rowChanges(put, remove).flatMap(({ id, kind, fields }) => {
    if (!isStepKind(kind)) return [];
    const properties = before.get(id);
    return [{ step: kind, old: properties && stepOf(id, kind, properties), new: fields && stepOf(id, kind, fields) }];
  });
  return Map.groupBy(changes.filter(isChange), ({ step }) => step);
}

function added<T>(change: Change<T>): readonly T[] {
  return change.new === undefined ? [] : [change.new];
}

function isChange(change: Change<readonly string[]>): boolean {
  return change.old?.join() !== change.new?.join();
}
