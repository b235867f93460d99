import { readFileSync } from 'node:fs';
import { Cite } from '@citation-js/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cite } from '../../src/output/cite/cite.ts';
import { toCsl } from '../../src/output/cite/to-csl.ts';
import { citables } from '../output/cite/citables.ts';
import { editions } from '../output/cite/editions.ts';
import { describeWithData } from '../support/outside-data.ts';
import {
  byBibtexParser,
  byCitationJs,
  inBibtex,
  type Known,
  type KnownToParser,
  knownOf,
  plain,
} from '../support/read-citations.ts';

// What we write is read back by parsers that are not ours: @retorquere/bibtex-parser and @citation-js.

const everything = [...editions, ...citables];

describe('BibTeX read back', () => {
  const text = cite(everything, { format: 'BIBTEX' }).text;
  const parser = byBibtexParser(text);
  const citationJs = byCitationJs(text);

  test('there are 25 editions and 15 others, and each is an entry to both', () => {
    expect([everything.length, parser.errors, parser.entries.length, citationJs.length]).toEqual([40, [], 40, 40]);
  });

  test.each(everything.map((edition, i) => [edition.id, toCsl(edition), i] as const))('%s', (_, item, i) => {
    const wanted = inBibtex(item);
    expect(parser.entries[i]).toEqual(wanted);
    expect(citationJs[i]).toEqual(toCitationJs(wanted));
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

/** It does not give these. */
function toCitationJs({ type: _, language: _l, volumes: _v, library: _i, ...known }: KnownToParser): Known {
  return known;
}

describe('CSL-JSON read back by @citation-js/core', () => {
  const read = new Cite(cite(everything, { format: 'CSL_JSON' }).text).data;

  test.each(everything.map((edition, i) => [edition.id, toCsl(edition), i] as const))('%s', (_, item, i) => {
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
    const wanted = items.map(item => knownOf(toCsl(item)));
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
