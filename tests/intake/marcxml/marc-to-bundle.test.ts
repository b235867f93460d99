import { describe, expect, it } from 'vitest';
import type { AnyRecord } from '../../../src/domain/model/row.ts';
import { marcToBundle } from '../../../src/intake/marcxml/marc-to-bundle.ts';
import { attributionsOf, bundleOf, datingsOf, imprintsOf, rowsOf } from './bundles.ts';
import { marc } from './marc-notation.ts';
import { sandburg } from './sandburg.ts';

describe('the sample record of the Library of Congress', () => {
  const bundle = bundleOf(...sandburg);

  it('is one edition', () => {
    expect(bundle.origin).toEqual({ source: 'DLC', key: '92005291' });
    expect(bundle.rows[0]).toEqual({
      origin: { source: 'DLC', key: '92005291' },
      row: {
        kind: 'Edition',
        id: '@edition',
        work: '@work',
        title: 'Arithmetic',
        responsibility: 'Carl Sandburg ; illustrated as an anamorphic adventure by Ted Rand.',
        statement: '1st ed.',
        imprint: 'San Diego : Harcourt Brace Jovanovich, c1993.',
        extent: '1 v. (unpaged)',
        illustration: 'ill. (some col.)',
        illustrated: true,
        format: '26 cm.',
        languages: ['en'],
        identifiers: [
          { scheme: 'LCCN', value: '92005291' },
          { scheme: 'ISBN', value: '0152038655' },
        ],
        notes: ['One Mylar sheet included in pocket.'],
        columns: {
          'MARC 050': 'PS3537.A618 A88 1993',
          'MARC 650': "Arithmetic -- Juvenile poetry. | Children's poetry, American.",
        },
      },
    });
  });

  it('of one work, by an author and an illustrator', () => {
    expect(rowsOf(bundle, 'Work')).toEqual([
      { kind: 'Work', id: '@work', labels: [{ text: 'Arithmetic' }], form: 'BOOK' },
    ]);
    expect(attributionsOf(bundle)).toEqual(['Sandburg, Carl / aut', 'Rand, Ted / ill (ill.)']);
  });

  it('published in San Diego, California, by a date of copyright', () => {
    expect(imprintsOf(bundle)).toEqual(['San Diego / Harcourt Brace Jovanovich / PUBLISHER']);
    expect(rowsOf(bundle, 'Place')[0]?.country).toBe('cau');
    expect(datingsOf(bundle)).toEqual(['1993 COPYRIGHT HELD']);
  });

  it('rests on the catalogue, each claim on its field', () => {
    expect(rowsOf(bundle, 'Reference')).toEqual([
      {
        kind: 'Reference',
        id: '@catalogue',
        labels: [{ text: 'Catalogue records of DLC', language: 'en' }],
        csl: { type: 'dataset', title: 'Catalogue records of DLC' },
      },
    ]);
    const evidence = bundle.rows.flatMap(({ row }) => ('evidence' in row ? (row.evidence ?? []) : []));
    expect(evidence.map(({ reference, locator }) => `${reference} ${locator}`)).toEqual([
      '@catalogue 92005291 260$a$b',
      '@catalogue 92005291 260$c',
      '@catalogue 92005291 100$a',
      '@catalogue 92005291 700$a$e',
    ]);
  });

  it('has nothing to remark on, and no links', () => {
    expect(bundle.remarks).toEqual([]);
    expect(bundle.links).toEqual([]);
  });
});

describe('works', () => {
  const workKey = (...lines: readonly string[]): string | undefined =>
    bundleOf(...lines).rows.find(({ row }) => row.kind === 'Work')?.origin?.key;

  it('are shared by editions of one author and title, brackets and "etc." aside', () => {
    const first = workKey('100 1#$aABBOTT, Jacob.', '245 10$aHistory of Xerxes the Great, etc.');
    const second = workKey(
      '100 1#$aAbbott, Jacob.',
      '245 10$a[History of Xerxes the Great.]',
      '250 ##$a[Another edition.]',
    );
    expect(first).toBe('work:abbott iacob|history of xerxes the great');
    expect(second).toBe(first);
  });

  it('are not shared by authors of one title', () => {
    expect(workKey('100 1#$aA., B.', '245 10$aPoems.')).not.toBe(workKey('100 1#$aC., D.', '245 10$aPoems.'));
  });
});

describe('a record is refused', () => {
  const refusal = (record: Parameters<typeof marcToBundle>[0], source?: string) => {
    const intention = marcToBundle(record, { file: 'x.xml', ...(source === undefined ? {} : { source }) });
    return intention.outcome === 'refused' ? intention.problem : undefined;
  };
  const title = '245 00$aT.';

  it('without a control number', () => {
    expect(refusal(marc('001   ', title))).toEqual({
      code: 'INPUT_INVALID',
      message: 'expected a control number (field 001), came none',
      place: { file: 'x.xml', record: 1, field: '001' },
    });
  });

  it('without a source, unless one is given', () => {
    const record = marc('003  ', title);
    expect(refusal(record)).toMatchObject({ place: { file: 'x.xml', record: 1, key: '17', field: '003' } });
    expect(refusal(record, 'DE-1')).toBeUndefined();
  });

  it('without a title, of another format, deleted or malformed', () => {
    expect(refusal(marc('260 ##$aLondon'))?.place.field).toBe('245');
    expect(refusal(marc('Leader 00000nz  a2200000 a 4500', title))?.message).toBe(
      'expected a bibliographic record, came one of authority (leader/06 "z")',
    );
    expect(refusal(marc('Leader 00000dam a2200000 a 4500', title))?.message).toContain('deleted');
    expect(refusal({ ...marc(title), malformed: 'the XML is not well-formed' })?.message).toBe(
      'the XML is not well-formed',
    );
  });
});

describe('the digest of a record', () => {
  it('changes with any field, but not with the time stamp', () => {
    const digest = (...lines: readonly string[]): string => bundleOf(...lines).digest;
    expect(digest('005 19930521155141.9')).toBe(digest('005 20200101000000.0'));
    expect(digest('500 ##$aA')).not.toBe(digest('500 ##$aB'));
    expect(digest('500 ##$aA$bB')).not.toBe(digest('500 ##$aA', '500 ##$bB'));
    expect(digest()).toMatch(/^[0-9a-f]{32}$/);
  });
});

describe('faults of a record that is taken', () => {
  it('are remarks', () => {
    const intention = marcToBundle({
      ...marc('245 00$aT.'),
      faults: ['expected a tag of three characters, came "42"'],
    });
    expect(intention.outcome === 'taken' && intention.remarks).toEqual([
      {
        code: 'INPUT_INVALID',
        message: 'expected a tag of three characters, came "42"',
        place: { record: 1, key: '17' },
      },
    ]);
  });

  it('do not reach names: every row of a bundle that is named is there, once', () => {
    const bundle = bundleOf(...sandburg);
    const ids = bundle.rows.map(({ row }) => row.id);
    expect(new Set(ids).size).toBe(ids.length);
    const linked = bundle.rows.flatMap(({ row }) => Object.values(row as unknown as AnyRecord).filter(isName));
    expect(linked.filter(name => !ids.includes(name))).toEqual([]);
  });
});

function isName(value: unknown): value is string {
  return typeof value === 'string' && value.startsWith('@');
}
