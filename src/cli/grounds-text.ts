import type { Grounds } from '../questions/grounds.ts';
import type { Premises } from '../questions/premises.ts';

/** What an answer rests on, as lines. */
export function groundsText({ cautions, basis, conventions }: Grounds): string[] {
  return [...cautions, `Reasoned from ${basis}.`, ...conventionsText(conventions)];
}

export function conventionsText(conventions: Grounds['conventions']): string[] {
  const used = conventions.map(use => (use.version === 1 ? use.key : `${use.key} (version ${use.version})`));
  return used.length === 0 ? [] : [`Conventions used: ${used.join(', ')}.`];
}

/** How the graph was taken otherwise than it is recorded now, above what is told of it. */
export function premisesText(premises: readonly string[]): readonly string[] {
  return premises.length === 0 ? [] : [...premises, ''];
}

/** The same where an answer has no grounds. */
export function premisesLines(premises: Premises): string {
  return premisesText(premises.words())
    .map(line => `${line}\n`)
    .join('');
}

export function asOfJson({ asOf }: Premises): object {
  return asOf === undefined ? {} : { asOf };
}
