import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readDatePhrase } from '../../src/domain/dates/phrase.ts';
import type { CitableDate, CitablePlate } from '../../src/output/cite/citable.ts';
import { cite } from '../../src/output/cite/cite.ts';
import { toCsl } from '../../src/output/cite/to-csl.ts';
import { describeWithData } from '../support/outside-data.ts';
import { byBibtexParser, byCitationJs, byRisReader, knownOf } from '../support/read-citations.ts';

// Real plates and prints, cited and read back by readers that are not ours. Sources in the README of the material.

type Fields = Readonly<Record<string, string>>;

function readTable(path: string): readonly Fields[] {
  const [header = '', ...lines] = path === '' ? [] : readFileSync(path, 'utf8').split('\n');
  const names = header.split('\t');
  return lines
    .filter(line => line !== '')
    .map(line => Object.fromEntries(line.split('\t').map((value, i) => [names[i] ?? '', value.trim()])));
}

function dateOf(words: string): CitableDate | undefined {
  const reading = readDatePhrase(words, 'museum');
  return 'edtf' in reading ? { edtf: reading.edtf, asWritten: words } : undefined;
}

function person(sortName: string, role: string) {
  return sortName === '' ? [] : [{ name: sortName, sortName, kind: 'person' as const, role }];
}

/** Title, people, container, place in it and year, as written and as three readers have them. */
function inAll(plates: readonly CitablePlate[]) {
  const pick = ({ title, authors, container, year, volume, pages, place }: ReturnType<typeof knownOf>) => ({
    ...{ title, authors, container, volume, pages, place },
    year: year.replace(/^(\d\d)(\d\d)–(\d\d)$/, '$1$2–$1$3'),
  });
  const bibtex = cite(plates, { format: 'BIBTEX' }).text;
  const parsed = byBibtexParser(bibtex);
  expect(parsed.errors).toEqual([]);
  return {
    written: plates.map(plate => pick(knownOf(toCsl(plate)))),
    read: [parsed.entries, byCitationJs(bibtex), byRisReader(cite(plates, { format: 'RIS' }).text).map(knownOf)].map(
      list => list.map(pick),
    ),
  };
}

describeWithData('plates of a year in 19th-century books', 'books-19c/1832_plates.tsv', path => {
  const rows = readTable(path);
  const plates = rows.map(
    (row, i): CitablePlate => ({
      what: 'plate',
      id: `plate-of-1832-${i}`,
      form: 'PLATE',
      locator: {
        page: String(Number(row['page'])),
        number: row['image_idx']!,
        ...(Number(row['volume']) > 0 ? { volume: String(Number(row['volume'])) } : {}),
      },
      edition: {
        id: `edition-of-1832-${row['book_identifier']}`,
        title: row['title']!,
        agents: person(row['first_author']!, 'aut'),
        imprints: [{ place: row['pubplace']!, ...(row['publisher'] === '' ? {} : { publisher: row['publisher']! }) }],
        date: { edtf: row['date']! },
      },
    }),
  );

  test('come back with volume, page and number, and the book they are in', () => {
    expect(plates.length).toBe(453);
    const { written, read } = inAll(plates);
    expect(written.filter(({ pages }) => /^plate \d+, facing p\. \d+$/.test(pages)).length).toBe(453);
    for (const list of read) expect(list).toEqual(written);
  });
});

describeWithData('prints after pictures in two museums', 'prints-after/prints-after.tsv', path => {
  const rows = readTable(path)
    .filter(row => row['title'] !== '')
    .slice(0, 1500);
  const plates = rows.map((row, i): CitablePlate => {
    const date = dateOf(row['date_text'] ?? '');
    return {
      ...{ what: 'plate', id: `plate-of-museum-${i}`, title: row['title']!, form: 'SINGLE_SHEET_PRINT' },
      agents: person(row['printmaker'] ?? '', 'egr'),
      technique: row['medium'] ?? '',
      after: [{ title: row['after_what'] ?? '', agents: person(row['after_artist'] ?? '', 'art') }],
      ...(date === undefined ? {} : { date }),
    };
  });

  test('come back with title, engraver and a date that is as sure as it was', () => {
    expect(plates.length).toBe(1500);
    const { written, read } = inAll(plates);
    const years = new Map(written.map(({ year }, i) => [plates[i]!.id, year]));
    expect(
      [...years.values()].filter(year => /^(?:ca\. )?\d{4}(?:–\d{4})?\??$|^not |^\d{4}s$/.test(year)).length,
    ).toBeGreaterThan(1300);
    expect(read[0]).toEqual(written);
    expect(read[1]).toEqual(written);
    expect(read[2]).toEqual(written);
  });
});
