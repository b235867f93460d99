import { type Basis, defaultBasis, isSameBasis } from '../../domain/model/counted.ts';
import type { AnyRow, RecordOf } from '../../domain/model/row.ts';
import { PlatestemmaError } from '../../errors.ts';
import type { GraphStore } from '../../store/graph-store.ts';
import { conventionsInForce, storedConventions } from '../conventions-in-force.ts';
import type { Premises } from '../premises.ts';
import { asOfStore } from './as-of-store.ts';
import { changeSetAt } from './change-set-at.ts';
import { type LeftOut, nothingLeftOut } from './left-out.ts';
import { leftOutOf } from './left-out-of.ts';
import { overStore } from './over-store.ts';
import { asOfWords, metWords, supposedWords, withoutWords } from './premises-words.ts';
import { scannedWindows } from './scanned-windows.ts';
import { supposedOf } from './supposed-of.ts';
import { SupposedRows } from './supposed-rows.ts';
import { touchedWindows } from './touched-windows.ts';
import type { WhatIf, Without } from './what-if.ts';
import { whatIfStore } from './what-if-store.ts';

/** A store as a question takes it, and what the answers say of it. */
export interface Given {
  readonly store: GraphStore;
  readonly premises: Premises;
}

/**
 * The graph as it was, or as it would be: what is asked of this store is asked of that graph. Nothing is stored.
 * @param signal of an asker who may stop waiting
 * @throws INPUT_INVALID, SUPPOSE_TOO_LARGE, KIND_MISMATCH, ID_MISTYPED, DATE_UNREADABLE
 */
export async function given(now: GraphStore, whatIf: WhatIf, signal?: AbortSignal): Promise<Given> {
  let scanned = false;
  const onScan = () => {
    scanned = true;
  };
  const basis = basisOf(whatIf);
  const then = await asOf(now, whatIf, onScan, signal);
  const other = await otherwise(then.store, then.store === now, whatIf, basis, onScan);
  const supposed = other.words.length > 0 || basis.exceptCertainties !== undefined;
  return {
    store: other.store,
    premises: {
      basis,
      supposed,
      ...(then.number === undefined ? {} : { asOf: then.number }),
      words: () => [
        ...then.words,
        ...other.words,
        ...metWords(other.leftOut),
        ...(scanned
          ? ['Each edition was looked at for this answer: what is counted beforehand is of the graph as it is now.']
          : []),
      ],
    },
  };
}

function basisOf({ basis = {}, without = {} }: WhatIf): Basis {
  const { certainties = [] } = without;
  const found: Basis = {
    stances: basis.stances ?? defaultBasis.stances,
    certaintyAtLeast: basis.certaintyAtLeast ?? defaultBasis.certaintyAtLeast,
    ...(certainties.length === 0 ? {} : { exceptCertainties: [...new Set(certainties)] }),
  };
  if (found.stances.length > 0) return found;
  throw new PlatestemmaError('INPUT_INVALID', 'basis: expected at least one stance, came none', {
    place: { field: 'basis' },
  });
}

interface Then {
  readonly store: GraphStore;
  readonly number?: number;
  readonly words: readonly string[];
}

/** As of the newest change set the graph is as it is now. */
async function asOf(
  now: GraphStore,
  { asOf: when }: WhatIf,
  onScan: () => void,
  signal: AbortSignal | undefined,
): Promise<Then> {
  if (when === undefined) return { store: now, words: [] };
  const number = await changeSetAt(now, when);
  const [[changeSet], last] = await Promise.all([now.changeSets([number]), now.lastChangeSet()]);
  const store = number >= last ? now : asOfStore(now, number, onScan, signal);
  return { store, number, words: [asOfWords(changeSet)] };
}

interface Other {
  readonly store: GraphStore;
  readonly leftOut: LeftOut;
  readonly words: readonly string[];
}

/** @param isKept the store keeps the windows of editions */
async function otherwise(
  base: GraphStore,
  isKept: boolean,
  { suppose = [], without = {} }: WhatIf,
  basis: Basis,
  onScan: () => void,
): Promise<Other> {
  const words = withoutWords(without);
  if (suppose.length === 0 && words.length === 0) {
    const isDefault = isSameBasis(basis, defaultBasis);
    const store = isDefault ? base : overStore(base, scannedWindows(base, basis, onScan));
    return { store, leftOut: nothingLeftOut, words: [] };
  }
  const conventions = await conventionsInForce(base);
  const { leftOut, claims } = await leftOutOf(base, without, conventions);
  const rows = await supposedOf(base, suppose, conventions, leftOut);
  const changed = await conventionsChanged(base, rows, without);
  const over = whatIfStore(base, { supposed: new SupposedRows(rows), leftOut, hidden: changed.hidden });
  const isFew = isKept && isSameBasis(basis, defaultBasis) && leftOut.isByIds;
  const windows = isFew
    ? touchedWindows(base, over, [...rows, ...claims], changed.any)
    : scannedWindows(over, basis, onScan);
  return {
    store: overStore(over, windows),
    leftOut,
    words: [...(await supposedWords(base, rows)), ...words],
  };
}

interface ConventionsChanged {
  readonly hidden: ReadonlySet<string>;
  readonly any: boolean;
}

/** What is supposed takes the place of what the graph has under the same key; what is left out is as the program has it. */
async function conventionsChanged(
  base: GraphStore,
  supposed: readonly AnyRow[],
  { rules = [] }: Without,
): Promise<ConventionsChanged> {
  const keys = supposed.flatMap(row => (row.kind === 'Convention' ? [row.key] : []));
  const stored = keys.length + rules.length === 0 ? [] : await storedConventions(base);
  const leaves = ({ key, id }: RecordOf<'Convention'>) =>
    keys.includes(key) || rules.includes(key) || rules.includes(id);
  const hidden = stored.filter(leaves);
  return { hidden: new Set(hidden.map(({ id }) => id)), any: keys.length + hidden.length > 0 };
}
