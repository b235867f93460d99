import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cite } from '../../src/output/cite/cite.ts';
import type { CslItem } from '../../src/output/cite/csl-item.ts';
import { toCsl } from '../../src/output/cite/to-csl.ts';
import { toRis } from '../../src/output/cite/to-ris.ts';
import { citables } from '../output/cite/citables.ts';
import { editions } from '../output/cite/editions.ts';
import { describeWithData } from '../support/outside-data.ts';
import { byRisReader, hasNote, type Known, knownOf, plain } from '../support/read-citations.ts';

// What we write is read back by a reader that is not ours, @citation-js/plugin-ris, and held against its own examples.

const everything = [...editions, ...citables];

/** What a reader of RIS can give of an item: some fields are not of every type. */
interface KnownToRis extends Known {
  readonly translators: readonly string[];
  readonly type: string;
  readonly id: string;
  readonly language: string;
  readonly made: string;
  readonly size: string;
  readonly copy: string;
  readonly numbers: readonly (string | undefined)[];
  readonly date: readonly number[] | undefined;
}

function inRis(item: CslItem): KnownToRis {
  const { type } = item;
  const has = (...types: readonly string[]) => types.includes(type);
  const part = has('chapter');
  const whole = [...(item.author ?? []), ...(item.editor ?? [])].some(name => name.literal?.includes(',') === true);
  const made = item.medium ?? item.genre;
  const known = knownOf(item);
  return {
    ...known,
    authors: known.authors.map(withoutComma),
    editors: has('book', 'chapter') ? known.editors.map(withoutComma) : [],
    translators: knownOf({ author: item.translator ?? [] }).authors,
    publisher: has('article-journal') ? '' : known.publisher,
    place: has('article-journal') ? '' : known.place,
    year: known.year.replace(/^(\d\d)(\d\d)–(\d\d)$/, '$1$2–$1$3'),
    note: hasNote(item) || whole || (part && item.genre !== undefined),
    type: { collection: 'document' }[type] ?? type,
    id: item.id,
    language: item.language ?? '',
    made: part ? '' : (made ?? ''),
    size: item.dimensions ?? '',
    copy: item.archive ?? '',
    numbers: [item.ISBN, item.ISSN, item.DOI].filter(Boolean),
    date: fullDate(item),
  };
}

/** RIS knows a person by the comma: names that stay whole have none. */
function withoutComma(name: string): string {
  return plain(name.replaceAll(',', ''));
}

function fullDate({ issued }: Partial<CslItem>): readonly number[] | undefined {
  const [only, second] = issued?.['date-parts'] ?? [];
  return issued?.circa === true || second !== undefined || only === undefined || only.length < 2 ? undefined : only;
}

function found(item: Partial<CslItem> & { readonly 'call-number'?: string }): KnownToRis {
  return {
    ...knownOf(item),
    translators: knownOf({ author: item.translator ?? [] }).authors,
    type: item.type ?? '',
    id: item.id ?? '',
    language: item.language ?? '',
    made: item.genre ?? '',
    size: item.dimensions ?? '',
    copy: item['call-number'] ?? '',
    numbers: [item.ISBN, item.ISSN, item.DOI].filter(Boolean),
    date: fullDate(item),
  };
}

describe('RIS read back', () => {
  const read = byRisReader(cite(everything, { format: 'RIS' }).text);

  test('there are 25 editions and 15 others, and each is a record', () => {
    expect([everything.length, read.length]).toEqual([40, 40]);
  });

  test.each(everything.map((each, i) => [each.id, toCsl(each), i] as const))('%s', (_, item, i) => {
    expect(found(read[i]!)).toEqual(inRis(item));
  });
});

describe('any title and name', () => {
  const seed = Number(process.env['FC_SEED'] ?? 20261126);
  const text = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 40 }),
    fc.string({ unit: 'binary', maxLength: 40 }),
    fc
      .array(fc.constantFrom('TY  - BOOK', 'ER  - ', '\r\n', '\n', '  - ', 'AU', ', ', 'a', '/'), { maxLength: 12 })
      .map(parts => parts.join('')),
  );

  test(`is one record with the same title and name (seed ${seed})`, () => {
    fc.assert(
      fc.property(text, text, text, (title, name, lettering) => {
        const item = {
          what: 'plate',
          id: 'plate-x-y',
          title: `T${title}T`,
          lettering: `L${lettering}`,
          agents: [{ name: `N${name}N`, kind: 'firm', role: 'egr' }],
        } as const;
        const written = cite([item], { format: 'RIS' }).text;
        const read = byRisReader(written);
        const line = (words: string) => plain(words.toWellFormed().replace(/[\s\u0000-\u001F\u007F-\u009F]+/g, ' '));
        expect(read.map(each => plain(each.title ?? ''))).toEqual([line(item.title)]);
        expect(knownOf(read[0]!).authors).toEqual([line(withoutComma(item.agents[0].name.replaceAll(',', '')))]);
        expect(written.split('\r\n').filter(each => !/^[A-Z][A-Z0-9] {2}- /.test(each))).toEqual(['']);
      }),
      { seed, numRuns: 300 },
    );
  });
});

interface Case {
  readonly kind: string;
  readonly name: string;
  readonly input: unknown;
  readonly expected: readonly Partial<CslItem>[];
}

// The examples of citation-js (packages/plugin-ris/test/input.js, MIT): a record of RIS and what it says in CSL-JSON.
describeWithData('examples of another project', 'ris/ris-to-csl.json', path => {
  const cases = path === '' ? [] : (JSON.parse(readFileSync(path, 'utf8')) as readonly Case[]);
  const items = cases.flatMap(({ name, expected }) => expected.map(csl => [name, sourceOf(csl)] as const));

  test('are those that were worked through', () => {
    expect([cases.length, items.length]).toEqual([17, 18]);
  });

  test.each(items)('what %s says in CSL-JSON is written so that it is read alike', (_, item) => {
    const [read] = byRisReader(toRis([item]));
    const kept = (of: Partial<CslItem>) => ({
      ...knownOf(of),
      type: of.type,
      DOI: of.DOI,
    });
    expect(kept(read!)).toEqual({ ...kept(item), note: item.note !== undefined, ...notInItsType(item) });
  });

  test('a record as fields has the tags that we give it, but for the abstract', () => {
    const given = cases.filter(each => each.kind === '@ris/record').map(each => each.input as Record<string, unknown>);
    expect(given).toHaveLength(2);
    for (const [i, { AB: _, JO, DO, ...fields }] of given.entries()) {
      const written = tagsOf(toRis([sourceOf(cases[i]!.expected[0]!)]));
      expect(written).toEqual({ ...fields, T2: JO, DO: String(DO).replace(/^doi: /, ''), DA: `${fields['DA']}/` });
    }
  });
});

function sourceOf(csl: Partial<CslItem>): CslItem {
  return toCsl({ what: 'source', id: csl.id ?? 'x', title: '', csl });
}

/** Software and data are generic records here, where the reader takes a date in words for a date. */
function notInItsType(item: CslItem): Partial<Known> & { readonly type?: string } {
  if (item.type !== 'software' && item.type !== 'dataset') return {};
  return { type: 'document', ...(item.issued?.literal === '2023-10-24' ? { year: '2023' } : {}) };
}

function tagsOf(text: string): Readonly<Record<string, unknown>> {
  const tags: Record<string, unknown> = {};
  for (const line of text.split('\r\n')) {
    const [, tag = '', value] = /^([A-Z][A-Z0-9]) {2}- (.+)$/.exec(line) ?? [];
    if (value === undefined) continue;
    const before = tags[tag];
    tags[tag] = before === undefined ? value : [before, value].flat();
  }
  return tags;
}
