import { holds } from './condition.ts';
import { findIn, textParts } from './patterns.ts';
import { cellOf, listLength, type Piece, type RowScope } from './row-scope.ts';
import type { Condition, Reading, Value, ValueRule } from './table-mapping.ts';

/** What a value gives in a row. */
export interface Got {
  readonly pieces: readonly Piece[];
  /** Columns that it was taken from. */
  readonly used: readonly string[];
  /** Those among them whose whole text is in the pieces. */
  readonly whole: readonly string[];
  /** The grammar that is to read the pieces. */
  readonly read?: Reading;
  readonly faults: readonly ValueFault[];
}

/** Words that a rule had nothing for. */
export interface ValueFault {
  readonly column: string;
  readonly message: string;
}

/** Where there is nothing. */
export const nothing: Got = { pieces: [], used: [], whole: [], faults: [] };

/** What a value gives in a row: no pieces where there is nothing. White space is tidied, characters are composed. */
export function evaluate(value: Value, scope: RowScope): Got {
  if (typeof value === 'string') return named(value, scope);
  if (value.if !== undefined && !holdsIn(value.if, scope)) return nothing;
  const got = based(value, scope);
  return got.pieces.length === 0 || !hasRules(value) ? reading(got, value.read) : ruled(got, value);
}

/** Whether a condition holds in a row. */
export function holdsIn(condition: Condition, scope: RowScope): boolean {
  return holds(condition, name => joined(named(name, scope)));
}

/** The texts of a value, one after another; empty if it gives nothing. */
export function textOf(value: Value, scope: RowScope): string {
  return joined(evaluate(value, scope));
}

export function joined({ pieces }: Got): string {
  return pieces.map(piece => piece.text).join('; ');
}

function based(rule: ValueRule, scope: RowScope): Got {
  if (rule.column !== undefined) return named(rule.column, scope);
  if (rule.text !== undefined) return written(rule.text, scope);
  if (rule.always !== undefined) return { ...nothing, pieces: [{ text: rule.always, source: rule.always }] };
  if (rule.first !== undefined) return firstOf(rule.first, scope);
  return allOf((rule.all ?? []).map(each => evaluate(each, scope)));
}

function named(name: string, scope: RowScope): Got {
  if (name === 'each' && scope.each !== undefined && 'piece' in scope.each) {
    return { ...nothing, pieces: [scope.each.piece] };
  }
  if (Object.hasOwn(scope.values, name)) return valueNamed(name, scope);
  const cell = cellOf(scope, name);
  if (cell === undefined) return listed(name, scope);
  const { column, text } = cell;
  return { ...nothing, pieces: [{ text, source: text }], used: [column], whole: [column] };
}

/** A value that the mapping names is made once a row, unless `each` may change it. */
function valueNamed(name: string, scope: RowScope): Got {
  if (scope.each !== undefined) return evaluate(scope.values[name]!, scope);
  let got = scope.made.get(name);
  if (got === undefined) {
    got = evaluate(scope.values[name]!, scope);
    scope.made.set(name, got);
  }
  return got;
}

/** A list of JSON whose elements are texts gives them all. */
function listed(name: string, scope: RowScope): Got {
  const length = listLength(scope, name) ?? 0;
  return allOf(Array.from({ length }, (_, i) => named(`${name}.${i}`, scope)));
}

function written(text: string, scope: RowScope): Got {
  const parts = textParts(text);
  const values = parts.map((part, i) => (i % 2 === 0 ? undefined : named(part, scope)));
  const { used, whole, faults } = allOf(values.filter(value => value !== undefined));
  if (values.some(value => value?.pieces.length === 0)) return { ...nothing, used, faults };
  const made = parts.map((part, i) => (values[i] === undefined ? part : joined(values[i]))).join('');
  return { pieces: [{ text: made, source: made }], used, whole, faults };
}

function firstOf(values: readonly Value[], scope: RowScope): Got {
  const faults: ValueFault[] = [];
  for (const value of values) {
    const got = evaluate(value, scope);
    if (got.pieces.length > 0) return got;
    faults.push(...got.faults);
  }
  return { ...nothing, faults };
}

function allOf(gots: readonly Got[]): Got {
  if (gots.length < 2) return gots[0] ?? nothing;
  return {
    pieces: gots.flatMap(got => got.pieces),
    used: [...new Set(gots.flatMap(got => got.used))],
    whole: [...new Set(gots.flatMap(got => got.whole))],
    faults: gots.flatMap(got => got.faults),
  };
}

function hasRules({ nothing, part, replace, split, words }: ValueRule): boolean {
  return (
    nothing !== undefined || part !== undefined || replace !== undefined || split !== undefined || words !== undefined
  );
}

function reading(got: Got, read: Reading | undefined): Got {
  return read === undefined ? got : { ...got, read };
}

function ruled(got: Got, rule: ValueRule): Got {
  const faults = [...got.faults];
  const shaped = got.pieces
    .filter(({ text }) => rule.nothing?.includes(text) !== true)
    .flatMap(piece => (rule.part === undefined ? [piece] : found(piece, rule.part, rule.written)))
    .map(piece => ({ ...piece, text: standsFor(rule.replace ?? {}, piece.text) ?? piece.text }));
  const parts = shaped.flatMap(piece => (rule.split === undefined ? [piece] : parted(piece, rule.split)));
  const pieces = rule.words === undefined ? parts : parts.flatMap(piece => meant(piece, rule, got.used, faults));
  const whole = sameTexts(got.pieces, shaped) && sameTexts(parts, pieces) ? got.whole : [];
  return reading({ ...got, pieces, whole, faults }, rule.read);
}

/** Parting a text loses nothing of it; every other rule may. */
function sameTexts(before: readonly Piece[], after: readonly Piece[]): boolean {
  return before.length === after.length && after.every(({ text }, i) => text === before[i]!.text);
}

function found({ text, source }: Piece, pattern: string, form: string | undefined): Piece[] {
  const match = findIn(pattern, text);
  if (match === undefined) return [];
  const made = form?.replace(/\$([1-9])/g, (_, group: string) => match[Number(group)] ?? '') ?? match[1] ?? match[0];
  return made.trim() === '' ? [] : [{ text: made.trim(), source }];
}

function parted({ text }: Piece, marks: string | readonly string[]): Piece[] {
  const [first, ...others] = typeof marks === 'string' ? [marks] : marks;
  return others
    .reduce((all, mark) => all.replaceAll(mark, first!), text)
    .split(first!)
    .map(part => part.trim())
    .filter(part => part !== '')
    .map(part => ({ text: part, source: part }));
}

function meant({ text, source }: Piece, rule: ValueRule, used: readonly string[], faults: ValueFault[]): Piece[] {
  const word = standsFor(rule.words!, text) ?? rule.otherwise;
  if (word !== undefined) return word === null ? [] : [{ text: word, source }];
  const known = Object.keys(rule.words!);
  const list =
    known.length > 8
      ? `one of the ${known.length} words of the mapping`
      : `one of ${known.map(each => `"${each}"`).join(', ')}`;
  faults.push({ column: used.join(', '), message: `expected ${list}, came "${text.slice(0, 100)}"` });
  return [];
}

function standsFor(words: Readonly<Record<string, string>>, text: string): string | undefined {
  return Object.hasOwn(words, text) ? words[text] : undefined;
}
