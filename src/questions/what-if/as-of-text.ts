import type { AsOf } from './what-if.ts';

/** What a person writes: the number of a change set, a day (`2026-03-01`), or a moment (`2026-03-01T12:00:00Z`). */
export function asOfText(text: string): AsOf {
  if (/^\d+$/.test(text)) return { changeSet: Number(text) };
  return text.includes('T') ? { moment: text } : { day: text };
}
