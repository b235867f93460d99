import { readFileSync } from 'node:fs';
import { Cite } from '@citation-js/core';
import '@citation-js/plugin-bibtex';
import { parse } from '@retorquere/bibtex-parser';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cite } from '../../src/output/cite/cite.ts';
import type { CslItem, CslName } from '../../src/output/cite/csl-item.ts';
import { toCsl } from '../../src/output/cite/to-csl.ts';
import { editions } from '../output/cite/editions.ts';
import { describeWithData } from '../support/outside-data.ts';

// What we write is read back by parsers that are not ours: @retorquere/bibtex-parser and @citation-js.

/** The fields a citation is found again by, as one reader or another gives them. */
interface Known {
  readonly title: string;
  readonly authors: readonly string[];
  readonly editors: readonly string[];
  readonly publisher: string;
  readonly place: string;
  readonly year: string;
  readonly edition: string;
  readonly volume: string;
  readonly series: string;
  readonly note: boolean;
  readonly url: string;
}

/** Typographic variants that readers of TeX choose among. */
const plain = (text: string) => text.normalize('NFC').replace(/\s+/g, ' ').trim();

const cslNames = (names: readonly CslName[] | undefined) =>
  (names ?? []).map(name => plain([name.family ?? name.literal, name.suffix, name.given].filter(Boolean).join('|')));

/** Year as BibTeX has it: `ca. 1764`, `1801–1803`, or the wording. */
function cslYear(date: CslItem['issued']): string {
  if (date?.['date-parts'] === undefined) return date?.literal ?? '';
  const years = date['date-parts'].map(([year]) => (Number(year) === 0 ? '' : String(year)));
  return `${date.circa ? 'ca. ' : ''}${years.join('–')}`;
}

function ofItem(item: CslItem): Known {
  return {
    title: plain(item.title),
    authors: cslNames(item.author),
    editors: cslNames(item.editor),
    publisher: plain(item.publisher ?? ''),
    place: plain(item['publisher-place'] ?? ''),
    year: cslYear(item.issued),
    edition: plain(String(item.edition ?? '')),
    volume: String(item.volume ?? ''),
    series: plain(item['collection-title'] ?? ''),
    note: item.note !== undefined,
    url: item.URL ?? '',
  };
}

type Read = Known & { readonly language?: string; readonly volumes?: string };

function byBibtexParser(text: string): { readonly entries: readonly Read[]; readonly errors: readonly unknown[] } {
  const library = parse(text, { sentenceCase: false, caseProtection: false });
  const entries = library.entries.map(({ fields }) => {
    const names = (list: typeof fields.author) =>
      (list ?? []).map(n =>
        plain(
          n.name ?? [[n.prefix, n.lastName].filter(Boolean).join(' '), n.suffix, n.firstName].filter(Boolean).join('|'),
        ),
      );
    const publisher = fields.publisher ?? (fields['howpublished'] === undefined ? [] : [fields['howpublished']]);
    return {
      title: plain(fields['title'] ?? ''),
      authors: names(fields.author),
      editors: names(fields.editor),
      publisher: plain(publisher.join(' AND ')),
      place: plain(fields['address'] ?? ''),
      year: fields['year'] ?? '',
      edition: fields['edition'] ?? '',
      volume: fields['volume'] ?? '',
      series: fields['series'] ?? '',
      note: fields['note'] !== undefined,
      url: fields['url'] ?? '',
      language: fields['language'] ?? '',
      volumes: fields['volumes'] ?? '',
    };
  });
  return { entries, errors: library.errors };
}

function byCitationJs(text: string): readonly Known[] {
  return new Cite(text, { forceType: '@bibtex/text' } as never).data.map(item => ofItem(item as unknown as CslItem));
}

/** BibTeX has no variable for a contributor: people other than authors and editors, and the EDTF, are in its note. */
function expected(item: CslItem): Known {
  const original = item['original-date'] !== undefined || item['original-publisher'] !== undefined;
  const people = item.illustrator ?? item.translator ?? item.compiler ?? item.contributor;
  const edtf = item.custom.edtf !== undefined && !/^\d{4}(-\d\d){0,2}$/.test(item.custom.edtf);
  const responsibility = item.custom.responsibility !== undefined && !item.author && !item.editor;
  const year = item.issued?.['date-parts']?.length === 1 && item.issued.circa !== true;
  return {
    ...ofItem(item),
    ...(year ? { year: String(item.issued?.['date-parts']?.[0]?.[0]) } : {}),
    note: item.note !== undefined || original || people !== undefined || edtf || responsibility,
  };
}

describe('BibTeX read back', () => {
  const text = cite(editions, { format: 'BIBTEX' }).text;
  const parser = byBibtexParser(text);
  const citationJs = byCitationJs(text);

  test('there are 25 editions, and each is an entry to both', () => {
    expect([editions.length, parser.errors, parser.entries.length, citationJs.length]).toEqual([25, [], 25, 25]);
  });

  test.each(editions.map((edition, i) => [edition.id, toCsl(edition), i] as const))('%s', (_, item, i) => {
    const wanted = expected(item);
    expect(parser.entries[i]).toEqual({
      ...wanted,
      language: item.language ?? '',
      volumes: String(item['number-of-volumes'] ?? ''),
    });
    expect(citationJs[i]).toEqual(wanted);
  });

  test('months and days', () => {
    const at = (id: string) =>
      new Cite(
        cite(
          editions.filter(e => e.id === id),
          { format: 'BIBTEX' },
        ).text,
        {
          forceType: '@bibtex/text',
        } as never,
      ).data[0]?.issued;
    expect(at('edition-corporate-author')).toEqual({ 'date-parts': [[1766, 3, 17]] });
    expect(at('edition-several-places')).toEqual({ 'date-parts': [[1827, 11]] });
  });
});

describe('CSL-JSON read back by @citation-js/core', () => {
  const read = new Cite(cite(editions, { format: 'CSL_JSON' }).text).data;

  test.each(editions.map((edition, i) => [edition.id, toCsl(edition), i] as const))('%s', (_, item, i) => {
    const { _graph, ...found } = read[i] as unknown as Record<string, unknown>;
    expect(found).toEqual(JSON.parse(JSON.stringify(item)));
  });
});

// British Library sample records (CC0), read here by a pattern and not by our intake.
describeWithData('titles and names of a library', 'marcxml-19c/19C_00001.xml', path => {
  const decode = (text: string) =>
    text.replace(
      /&(lt|gt|quot|apos|amp);/g,
      (_, name) => ({ lt: '<', gt: '>', quot: '"', apos: "'", amp: '&' })[name as 'lt'],
    );
  const subfields = (tag: string, record: string) => {
    const field = new RegExp(`tag="${tag}"[^>]*>([\\s\\S]*?)</(?:marc:)?datafield>`).exec(record)?.[1] ?? '';
    return [...field.matchAll(/code="a">([^<]*)</g)].map(match => decode(match[1]!));
  };

  test('come back from BibTeX as they were', () => {
    const records = readFileSync(path, 'utf8')
      .split(/<(?:marc:)?record[ >]/)
      .slice(1, 1001);
    const items = records.map((record, i) => {
      const name = subfields('100', record)[0];
      return {
        id: `edition-record-${i}`,
        title: subfields('245', record)[0] ?? 'untitled',
        agents: name === undefined ? [] : [{ name, sortName: name, kind: 'person' as const, role: 'aut' }],
      };
    });
    expect(items.filter(item => item.title !== 'untitled').length).toBeGreaterThan(900);
    const wanted = items.map(item => ofItem(toCsl(item)));
    const text = cite(items, { format: 'BIBTEX' }).text;
    const parser = byBibtexParser(text);
    expect(parser.errors).toEqual([]);
    expect(parser.entries.map(e => [e.title, e.authors])).toEqual(wanted.map(e => [e.title, e.authors]));
    expect(byCitationJs(text).map(e => [e.title, e.authors])).toEqual(wanted.map(e => [e.title, e.authors]));
  });
});

describe('any title and name', () => {
  const awkward = fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 40 }),
    fc.string({ unit: 'binary', maxLength: 40 }),
    fc
      .array(
        fc.constantFrom(
          '{',
          '}',
          '\\',
          '$',
          '%',
          '&',
          '#',
          '_',
          '~',
          '^',
          '"',
          "'",
          '`',
          '-',
          ',',
          ' and ',
          '@',
          '<',
          '>',
          '|',
          'é',
          'Ω',
          ' ',
          'a',
          'B',
          '\n',
          '?',
          '!',
          '=',
        ),
        { maxLength: 20 },
      )
      .map(parts => parts.join('')),
  );
  const seed = Number(process.env['FC_SEED'] ?? 20261125);

  test(`keeps braces balanced and comes back as it was (seed ${seed})`, () => {
    fc.assert(
      fc.property(awkward, awkward, (title, name) => {
        const item = {
          id: 'edition-x-y',
          title: `T${title}T`,
          agents: [{ name: `N${name}N`, kind: 'firm', role: 'aut' }],
        } as const;
        const text = cite([item], { format: 'BIBTEX' }).text;
        let depth = 0;
        for (const character of text) {
          if (character === '{') depth++;
          if (character === '}') depth--;
          expect(depth).toBeGreaterThanOrEqual(0);
        }
        expect(depth).toBe(0);
        const wanted = plain(oneLine(item.title));
        const read = byBibtexParser(text);
        expect(read.errors).toEqual([]);
        expect(read.entries.map(entry => entry.title)).toEqual([wanted]);
        expect(read.entries[0]?.authors).toEqual([plain(oneLine(item.agents[0].name))]);
        expect(byCitationJs(text).map(entry => entry.title)).toEqual([wanted]);
      }),
      { seed, numRuns: 300 },
    );
  });

  test(`does not upset a style (seed ${seed})`, () => {
    fc.assert(
      fc.property(awkward, awkward, (title, name) => {
        const item = {
          id: 'x',
          title: `T${title}T`,
          agents: [{ name: `N${name}N`, kind: 'person', role: 'aut' }],
        } as const;
        for (const style of ['chicago', 'mhra', 'iso690']) {
          expect(cite([item], { format: 'TEXT', style }).text).toMatch(/^[^\n]*T[^\n]*\n$/u);
        }
      }),
      { seed, numRuns: 60 },
    );
  });
});

/** BibTeX has one line of text: control characters and runs of spaces are one space, half characters U+FFFD. */
function oneLine(text: string): string {
  return text
    .toWellFormed()
    .replace(/[\s\u0000-\u001F\u007F-\u009F]+/g, ' ')
    .trim();
}
