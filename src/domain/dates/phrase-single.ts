import { readCentury } from './phrase-century.ts';
import { readDayMonthYear } from './phrase-day.ts';
import { readDecade } from './phrase-decade.ts';
import { readEra } from './phrase-era.ts';
import { readNumericDate } from './phrase-numeric.ts';
import type { PhraseConventions } from './phrase-reading.ts';
import { romanYear } from './phrase-roman.ts';
import { exact, type SingleDate } from './phrase-single-date.ts';
import { markValue } from './phrase-value.ts';

/** Reads one date with its own marks ("ca. 1865", "early 1930s", "12 May 1764?"), or undefined. */
export function readSingle(text: string, conventions: PhraseConventions): SingleDate | undefined {
  const { rest, marks } = takeMarks(text);
  const single = readUnmarked(rest, conventions);
  if (single === undefined || marks.size === 0) return single;
  let { value } = single;
  for (const mark of marks) value = markValue(value, mark);
  const unit = { ...single.unit, ...Object.fromEntries([...marks].map(mark => [mark, true])) };
  const flags = marks.has('approximate') ? [...(single.flags ?? []), 'circa' as const] : single.flags;
  return { ...single, value, unit, ...(flags === undefined ? {} : { flags }) };
}

type Mark = 'uncertain' | 'approximate';

/** Words before or after a date, and the mark they stand for. Common practice of catalogues in five languages. */
const circa =
  'ca|c|circa|cca|about|around|approximately|approx|appr|um|gegen|vers|environ|env|hacia|verso il|alrededor de';
const perhaps =
  'probably|perhaps|possibly|maybe|uncertain:|wohl|vermutlich|vielleicht|peut-être|probablement|forse|probabilmente|quizá';
const circaBefore = new RegExp(String.raw`^(?:(?:${circa})\.? |(?:ca|c|approx)\. ?(?=\d)|ca(?=\d)|~ ?)(.+)$`, 'i');
const circaAfter = /^(.+?),? \(?(?:approx\.?|approximately|circa|ca\.?)\)?$/i;
const perhapsBefore = new RegExp(`^(?:${perhaps}),? (.+)$`, 'i');
const perhapsAfter = /^(.+?),? ?(?:\(uncertain\)|\(\?\)|\(guess\)| maybe| guess| uncertain|(?<!\d{4}-)\?)$/i;

/** The mark that the phrase begins or ends with, and what is left. */
export function takeMark(text: string): { readonly mark: Mark; readonly rest: string } | undefined {
  const approximate = circaBefore.exec(text)?.[1] ?? circaAfter.exec(text)?.[1];
  if (approximate !== undefined) return { mark: 'approximate', rest: approximate.trim() };
  const uncertain = perhapsBefore.exec(text)?.[1] ?? perhapsAfter.exec(text)?.[1];
  return uncertain === undefined ? undefined : { mark: 'uncertain', rest: uncertain.trim() };
}

function takeMarks(text: string): { readonly rest: string; readonly marks: ReadonlySet<Mark> } {
  const marks = new Set<Mark>();
  let rest = text.trim();
  for (let turn = 0; turn < 3; turn += 1) {
    const taken = takeMark(rest);
    if (taken === undefined) break;
    marks.add(taken.mark);
    rest = taken.rest;
  }
  return { rest, marks };
}

const introduction = /^(?:in )?(?:the )?(?:year |anno domini |anno |a\. ?d\. ?|im jahre? |en l'an |l'an )(?=\d{4}\b)/i;

function readUnmarked(written: string, conventions: PhraseConventions): SingleDate | undefined {
  const text = written.replace(introduction, '').replace(/^the (?=\S)/i, '');
  if (/^\d{4}$/.test(text)) return exact({ digits: text }, 'phrase-0-year');
  const roman = romanYear(text);
  if (roman !== undefined) return { ...exact({ digits: String(roman) }, 'phrase-19-roman'), flags: ['roman'] };
  return (
    readDecade(text) ??
    readCentury(text, conventions.century === 'XX00-XX99' ? 0 : 1) ??
    readDayMonthYear(text) ??
    readNumericDate(text) ??
    readEra(text)
  );
}
