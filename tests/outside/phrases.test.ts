import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { tryEdtf } from '../../src/domain/dates/edtf.ts';
import { readDatePhrase } from '../../src/domain/dates/phrase.ts';
import { describeWithData } from '../support/outside-data.ts';
import { phraseDifferences, phrasesRefused } from './phrase-differences.ts';

// 136 phrases of museum records with their EDTF readings, from ixc/python-edtf (MIT).
describeWithData('136 date phrases of museum records', 'dates/phrases-to-edtf.tsv', path => {
  const rows = path === '' ? [] : readRows(path);
  const read = rows.filter(row => row.ours !== undefined);
  const refused = rows.filter(row => row.ours === undefined);
  const rightlyRefused = refused.filter(row => row.file === '(none)');
  const differing = read.filter(row => row.ours !== row.file);

  test('the file is the one that was worked through', () => {
    expect(rows).toHaveLength(136);
  });

  /** Done: read, or refused where the file too gives no reading. */
  test('at least 90 % are done', () => {
    const done = read.length + rightlyRefused.length;
    console.log(
      `phrases: ${done} of ${rows.length} done (${percent(done / rows.length)}): ${read.length} read, ` +
        `${read.length - differing.length} as in the file and ${differing.length} otherwise, ` +
        `${rightlyRefused.length} rightly without a date; ${refused.length - rightlyRefused.length} refused`,
    );
    expect(done / rows.length).toBeGreaterThanOrEqual(0.9);
  });

  test('readings that differ from the file are the listed ones', () => {
    const listed = phraseDifferences.flatMap(difference => difference.rows);
    expect(differing.map(row => [row.phrase, row.file, row.ours]).sort()).toEqual([...listed].sort());
  });

  test('refused phrases are the listed ones', () => {
    const unread = refused.filter(row => row.file !== '(none)').map(row => row.phrase);
    expect(unread.sort()).toEqual(Object.keys(phrasesRefused).sort());
  });

  test('every reading is EDTF', () => {
    expect(read.filter(row => tryEdtf(row.ours!) === undefined)).toEqual([]);
  });
});

interface Row {
  readonly phrase: string;
  readonly file: string;
  readonly ours: string | undefined;
}

function readRows(path: string): readonly Row[] {
  const [, ...lines] = readFileSync(path, 'utf8').split('\n');
  return lines
    .filter(line => line !== '')
    .map(line => {
      const [phrase, file] = line.split('\t') as [string, string];
      const reading = readDatePhrase(phrase, 'museum');
      return { phrase, file, ours: 'edtf' in reading ? reading.edtf : undefined };
    });
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}
