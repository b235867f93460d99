import type { Grounds } from '../questions/grounds.ts';

/** What an answer rests on, as lines. */
export function groundsText({ cautions, basis, conventions }: Grounds): string[] {
  const used = conventions.map(use => (use.version === 1 ? use.key : `${use.key} (version ${use.version})`));
  return [
    ...cautions,
    `Reasoned from ${basis}.`,
    ...(used.length === 0 ? [] : [`Conventions used: ${used.join(', ')}.`]),
  ];
}
