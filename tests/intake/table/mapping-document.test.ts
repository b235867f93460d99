import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import type { AnyRow } from '../../../src/domain/model/row.ts';
import type { Bundle } from '../../../src/intake/intention.ts';
import { readMapping } from '../../../src/intake/table/read-mapping.ts';
import { readings } from '../../../src/intake/table/table-mapping.ts';
import { intentionsOf } from './tables.ts';

const document = readFileSync(resolve(import.meta.dirname, '../../../schema/table-mapping.md'), 'utf8');

/** The first block of a language in the document. */
function block(language: string): string {
  return new RegExp(`\`\`\`${language}\n(.*?)\n\`\`\``, 's').exec(document)?.[1] ?? '';
}

/** Names that the first column of any table of the document explains. */
const explained = new Set(
  [...document.matchAll(/^\| (`[^|]+`) \|/gm)].flatMap(([, names]) =>
    [...names!.matchAll(/`(\w+)`/g)].map(([, name]) => name),
  ),
);

test('the example comes to what the document says', async () => {
  const intentions = await intentionsOf(readMapping(block('json')), block('csv'));
  const lines = intentions.flatMap(intention => (intention.outcome === 'taken' ? shown(intention) : []));
  expect(lines.join('\n')).toBe(block('text'));
});

test('every name of the format is explained', () => {
  const schema = readFileSync(resolve(import.meta.dirname, '../../../schema/table-mapping.schema.json'), 'utf8');
  const names = propertyNames(JSON.parse(schema));
  expect(names.size).toBeGreaterThan(30);
  const inProse = new Set([...document.matchAll(/`(\w+)`/g)].map(([, name]) => name));
  expect([...names].filter(name => !explained.has(name) && !inProse.has(name))).toEqual(['$schema']);
  for (const reading of readings) expect(document).toContain(`\`${reading}\``);
});

function propertyNames(schema: unknown): Set<string> {
  if (typeof schema !== 'object' || schema === null) return new Set();
  const own = Object.keys((schema as { properties?: object }).properties ?? {});
  return new Set([...own, ...Object.values(schema).flatMap(part => [...propertyNames(part)])]);
}

function shown({ origin, rows }: Bundle): string[] {
  const lines = rows.flatMap(({ row }) =>
    row.kind === 'Reference' ? [] : [`  ${'evidence' in row ? claim(row) : record(row)}`],
  );
  return [origin.key, ...lines];
}

function record(row: AnyRow): string {
  const { labels, caption, title, columns } = row as {
    labels?: readonly { text: string }[];
    caption?: string;
    title?: string;
    columns?: object;
  };
  const kept = Object.entries(columns ?? {}).map(([name, text]) => `${name}: ${text}`);
  const name = labels?.[0]?.text ?? caption ?? title;
  return `${row.kind} "${name}"${kept.length === 0 ? '' : ` (${kept.join(', ')})`}`;
}

function claim(row: AnyRow): string {
  const { role, event, presence, date, page, evidence } = row as unknown as Record<string, string> & {
    evidence: readonly { locator: string }[];
  };
  const said = [role, event, presence, date, page].filter(each => each !== undefined);
  return `${row.kind}: ${[...said, `said in "${evidence[0]!.locator}"`].join(', ')}`;
}
