import type { CslNode } from 'citeproc';
import type { CslDate, CslItem } from './csl-item.ts';
import { hideMarkup } from './plain-text.ts';

/** What a style does of itself, and what the item must say where it does not. */
export interface StyleHabits {
  /** Asks whether an edition is a number, and words it if so. */
  readonly numbersEditions: boolean;
  /** Asks whether a date of issue is uncertain, and marks it if so. */
  readonly marksUncertainty: boolean;
}

export function habitsOf(style: CslNode): StyleHabits {
  return {
    numbersEditions: asks(style, 'is-numeric', 'edition'),
    marksUncertainty: asks(style, 'is-uncertain-date', 'issued'),
  };
}

function asks(node: CslNode, condition: string, variable: string): boolean {
  if (node.attrs[condition]?.split(/\s+/).includes(variable)) return true;
  return node.children.some(child => typeof child !== 'string' && asks(child, condition, variable));
}

/**
 * An item as the engine is given it. Titles of no stated language would get English capitals: ours are as transcribed.
 * A style that prints any edition as it comes is given the statement, not the bare number; one that is silent on
 * uncertainty is given the date in the brackets of cataloguing, `[1764?]`.
 */
export function forEngine(item: CslItem, habits: StyleHabits): object {
  const { custom, ...rest } = item;
  const edition = habits.numbersEditions ? undefined : custom.editionStatement?.replace(/\.$/, '');
  const issued = habits.marksUncertainty ? undefined : bracketed(item.issued);
  return hideMarkup({
    ...rest,
    language: item.language ?? 'und',
    ...(edition === undefined ? {} : { edition }),
    ...(issued === undefined ? {} : { issued }),
  }) as object;
}

function bracketed(date: CslDate | undefined): CslDate | undefined {
  if (date?.circa !== true || date['date-parts'] === undefined) return undefined;
  const years = date['date-parts'].map(([year]) => yearText(year!));
  return { literal: `[${years.join('–')}?]` };
}

function yearText(year: number): string {
  if (year === 0) return '';
  return year < 0 ? `${-year} BC` : String(year);
}
