import { Cite } from '@citation-js/core';
import '@citation-js/plugin-bibtex';
import '@citation-js/plugin-ris';
import { parse } from '@retorquere/bibtex-parser';
import type { CslItem, CslName } from '../../src/output/cite/csl-item.ts';

/** The fields a citation is found again by, as any reader gives them; empty where there is none. */
export interface Known {
  readonly title: string;
  readonly authors: readonly string[];
  readonly editors: readonly string[];
  readonly container: string;
  readonly publisher: string;
  readonly place: string;
  readonly year: string;
  readonly edition: string;
  readonly volume: string;
  readonly issue: string;
  readonly pages: string;
  readonly series: string;
  readonly note: boolean;
  readonly url: string;
}

/** Fields that one reader gives and the other does not. */
export interface KnownToParser extends Known {
  readonly type: string;
  readonly language: string;
  readonly volumes: string;
  readonly library: string;
}

/** Typographic variants that readers choose among. */
export function plain(text: string): string {
  return text.normalize('NFC').replace(/\s+/g, ' ').trim();
}

export function knownOf(item: Partial<CslItem>): Known {
  return {
    title: plain(item.title ?? ''),
    authors: namesOf(item.author),
    editors: namesOf(item.editor),
    container: plain(item['container-title'] ?? ''),
    publisher: plain(item.publisher ?? ''),
    place: plain(item['publisher-place'] ?? ''),
    year: yearOf(item),
    edition: plain(String(item.edition ?? '')),
    volume: String(item.volume ?? ''),
    issue: String(item.issue ?? ''),
    pages: String(item.page ?? '').replace(/--|–/g, '-'),
    series: plain(item['collection-title'] ?? ''),
    note: item.note !== undefined,
    url: item.URL ?? '',
  };
}

function namesOf(names: readonly CslName[] | undefined): readonly string[] {
  return (names ?? []).map(name =>
    plain([name.family ?? name.literal, name.suffix, name.given].filter(Boolean).join('|')),
  );
}

/** Year in words: `ca. 1764`, `1799?`, `1801–1803`, or the wording. */
function yearOf({ issued, custom }: Partial<CslItem>): string {
  if (issued?.['date-parts'] === undefined)
    return issued?.literal ?? (issued as { raw?: string } | undefined)?.raw ?? '';
  const years = issued['date-parts'].map(([year]) => (Number(year) === 0 ? '' : String(year))).join('–');
  if (issued.circa !== true) return years;
  const edtf = custom?.edtf ?? '~';
  return `${/[~%]/.test(edtf) ? 'ca. ' : ''}${years}${/[?%]/.test(edtf) ? '?' : ''}`;
}

/** BibTeX has no variable for most people, for kind, medium and size, nor for EDTF: they are in its note. */
export function inBibtex(item: CslItem): KnownToParser {
  const types: Readonly<Record<string, string>> = {
    book: 'book',
    chapter: 'incollection',
    'article-journal': 'article',
  };
  return {
    ...knownOf(item),
    note: hasNote(item) || item.translator !== undefined || [item.genre, item.medium, item.dimensions].some(Boolean),
    type: types[item.type] ?? 'misc',
    language: item.language ?? '',
    volumes: String(item['number-of-volumes'] ?? ''),
    library: item.archive ?? '',
  };
}

/** Whether there is anything to say that neither BibTeX nor RIS has a field for. */
export function hasNote(item: CslItem): boolean {
  const original = item['original-date'] ?? item['original-publisher'];
  const people = item.illustrator ?? item.compiler ?? item.contributor ?? item['container-author'];
  const edtf = item.custom.edtf !== undefined && !/^\d{4}(-\d\d){0,2}$/.test(item.custom.edtf);
  const responsibility = item.custom.responsibility !== undefined && !item.author && !item.editor;
  return item.note !== undefined || original !== undefined || people !== undefined || edtf || responsibility;
}

export function byBibtexParser(text: string): {
  readonly entries: readonly KnownToParser[];
  readonly errors: readonly unknown[];
} {
  const library = parse(text, { sentenceCase: false, caseProtection: false });
  const entries = library.entries.map(({ type, fields }) => {
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
      container: plain(fields['booktitle'] ?? fields['journal'] ?? ''),
      publisher: plain(publisher.join(' AND ')),
      place: plain(fields['address'] ?? ''),
      year: fields['year'] ?? '',
      edition: fields['edition'] ?? '',
      volume: fields['volume'] ?? '',
      issue: fields['number'] ?? '',
      pages: fields['pages'] ?? '',
      series: fields['series'] ?? '',
      note: fields['note'] !== undefined,
      url: fields['url'] ?? '',
      type,
      language: fields['language'] ?? '',
      volumes: fields['volumes'] ?? '',
      library: fields['library'] ?? '',
    };
  });
  return { entries, errors: library.errors };
}

export function byCitationJs(text: string): readonly Known[] {
  return new Cite(text, { forceType: '@bibtex/text' } as never).data.map(item => knownOf(item as unknown as CslItem));
}

/** Records of RIS as CSL-JSON. */
export function byRisReader(text: string): readonly Partial<CslItem>[] {
  return new Cite(text, { forceType: '@ris/file' } as never).data as unknown as readonly Partial<CslItem>[];
}
