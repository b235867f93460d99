import { createReadStream, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { tryEdtf } from '../../../src/domain/dates/edtf.ts';
import type { Bundle, Intention } from '../../../src/intake/intention.ts';
import { marcxmlIntentions } from '../../../src/intake/marcxml/marcxml-intentions.ts';
import { describeWithData } from '../../support/outside-data.ts';
import { readAll } from './xml.ts';

// Test files of four MARC libraries in other languages; INDEX.tsv has the number of records a lenient reader finds.
describeWithData('test files of other MARC libraries', 'marc21/INDEX.tsv', index => {
  const rows = readFileSync(index, 'utf8').trim().split('\n').slice(1);
  const files = rows.map(row => row.split('\t')).filter(([, file]) => file!.endsWith('.xml'));

  /** Where a reader of XML alone gives up, and this one does not: a wrong encoding declared; one bad record of three. */
  const moreThanIndexed: Readonly<Record<string, number>> = {
    'alma-bibs-api-invalid.xml': 1,
    'three-records-second-bad.xml': 3,
  };

  it.each(files)('%s %s has as many records as are counted there', async (source, file, count) => {
    const { records, broken } = await readAll(readFileSync(join(index, '..', source!, file!)));
    expect(records.length).toBe(moreThanIndexed[file!] ?? Number(count));
    expect(broken).toEqual([]);
    expect(records.filter(record => record.malformed !== undefined).map(record => record.ordinal)).toEqual(
      file === 'three-records-second-bad.xml' ? [2] : [],
    );
  });

  it('are all there', () => {
    expect(files.length).toBe(24);
  });
});

// The British Library's sample records of nineteenth-century books, CC0.
describeWithData('six thousand records of nineteenth-century books', 'marcxml-19c', folder => {
  it('are each accounted for, and taken', async () => {
    const files = readdirSync(folder).sort();
    const intentions: Intention[] = [];
    let records = 0;
    for (const file of files) {
      const path = join(folder, file);
      records += readFileSync(path, 'utf8').split('<marc:record>').length - 1;
      for await (const intention of marcxmlIntentions(createReadStream(path), { file })) intentions.push(intention);
    }
    const taken = intentions.filter(one => one.outcome === 'taken');
    expect(intentions.length).toBe(records);
    expect(taken.length / records).toBeGreaterThanOrEqual(0.995);
    const tally = tallied(taken);
    console.log(`${records} records: ${JSON.stringify(tally)}`);
    expect(tally.placesResolved / tally.places).toBeGreaterThan(0.95);
    expect(tally.datesRead / tally.dates).toBeGreaterThan(0.9);
    expect(tally.badDates).toEqual([]);
  });
});

function tallied(bundles: readonly Bundle[]) {
  const rows = bundles.flatMap(bundle => bundle.rows.map(({ row }) => row));
  const places = rows.filter(row => row.kind === 'Place');
  const datings = rows.filter(row => row.kind === 'Dating');
  const dates = datings.flatMap(dating => dating.date ?? []);
  return {
    places: places.length,
    placesResolved: places.filter(place => place.latitude !== undefined).length,
    imprints: rows.filter(row => row.kind === 'Imprint').length,
    dates: datings.length,
    datesRead: dates.length,
    badDates: dates.filter(date => tryEdtf(date) === undefined),
    attributions: rows.filter(row => row.kind === 'Attribution').length,
    illustrated: rows.filter(row => row.kind === 'Edition' && row.illustrated === true).length,
    works: new Set(
      bundles.flatMap(b => b.rows.flatMap(({ row, origin }) => (row.kind === 'Work' ? [origin?.key] : []))),
    ).size,
    links: bundles.reduce((sum, bundle) => sum + bundle.links.length, 0),
    remarks: bundles.reduce((sum, bundle) => sum + bundle.remarks.length, 0),
  };
}
