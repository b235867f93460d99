import { PlatestemmaError } from '../../errors.ts';
import type { CitableSource } from './citable.ts';
import type { CslItem } from './csl-item.ts';

/**
 * A secondary source as the item of CSL-JSON that is recorded with it, under the id of its record, in the forms written
 * here: particles with their names, dates as numbers or words, other numbers as text. A source without one is a document
 * of its name.
 * @throws INPUT_INVALID if what is recorded is no item of CSL-JSON
 */
export function sourceToCsl({ id, title = '[source]', csl }: CitableSource): CslItem {
  if (csl === undefined) return { id, type: 'document', title, custom: { id } };
  const { type, title: own } = isObject(csl) ? csl : {};
  if (!isObject(csl) || typeof type !== 'string' || (own !== undefined && typeof own !== 'string')) {
    const came = JSON.stringify(csl).slice(0, 80);
    throw new PlatestemmaError('INPUT_INVALID', `expected CSL-JSON with a type and a title in "${id}", came ${came}`, {
      place: { key: id, field: 'csl' },
    });
  }
  const values = Object.entries(csl).map(([name, value]) => [name, plainValue(name, value)]);
  return { ...Object.fromEntries(values), id, type, title: own ?? title, custom: { id } };
}

function plainValue(name: string, value: unknown): unknown {
  if (Array.isArray(value)) return value.filter(isObject).map(plainName);
  if (isObject(value)) return 'date-parts' in value || 'raw' in value ? plainDate(value) : value;
  const counted = name === 'edition' || name === 'number-of-volumes';
  return typeof value === 'number' && !counted ? String(value) : value;
}

type Part = Readonly<Record<string, unknown>>;

function plainName({ 'non-dropping-particle': before, 'dropping-particle': after, ...name }: Part): Part {
  const joined = (...parts: readonly unknown[]) => parts.filter(part => typeof part === 'string').join(' ');
  return {
    ...name,
    ...(before === undefined ? {} : { family: joined(before, name['family']) }),
    ...(after === undefined ? {} : { given: joined(name['given'], after) }),
  };
}

function plainDate({ raw, ...date }: Part): Part {
  const parts = date['date-parts'];
  if (!Array.isArray(parts)) return { literal: raw, ...date };
  const circa = date['circa'] === undefined || date['circa'] === false ? {} : { circa: true };
  return { ...date, ...circa, 'date-parts': parts.map(part => (Array.isArray(part) ? part.map(Number) : [])) };
}

function isObject(value: unknown): value is Part {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
