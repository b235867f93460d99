import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demoFiles } from '../support/demo-store.ts';
import { jsonOf, runCli } from '../support/run-cli.ts';
import { temporaryStore } from '../support/temporary-store.ts';

const marcxml = (title: string): string => `<?xml version="1.0"?>
<collection xmlns="http://www.loc.gov/MARC21/slim"><record><leader>00385cam a22001453  4500</leader>
<controlfield tag="001">7</controlfield><controlfield tag="003">X</controlfield>
<datafield tag="245" ind1="1" ind2="0"><subfield code="a">${title}</subfield></datafield>
<datafield tag="260" ind1=" " ind2=" "><subfield code="a">Delft :</subfield><subfield code="c">1764.</subfield></datafield>
</record></collection>`;

/** A store that is not there yet, and a file with the text beside it. */
function given(text: string, name = 'given'): { readonly store: readonly string[]; readonly file: string } {
  const path = temporaryStore();
  const file = join(dirname(path), name);
  writeFileSync(file, text);
  return { store: ['--store', path], file };
}

describe('intake', () => {
  test('takes library records, and knows them when they come again', async () => {
    const { store, file } = given(marcxml('Views of the harbour'));
    expect((await runCli(['intake', 'marcxml', file, ...store])).out).toMatch(
      /^1 record read in .* s \(.* a second\)\n {2}1 taken, 0 known already, 0 edited, 0 differing, 0 refused\n$/,
    );
    expect(await jsonOf(['intake', 'marcxml', file, ...store])).toMatchObject({ records: 1, taken: 0, known: 1 });
    expect(await jsonOf(['ask', 'reach', '--place-name', 'Leiden', '--by', '1767', ...store])).toMatchObject({
      counts: { inEveryCase: 1 },
    });
  });

  test('reads standard input, with the source that the records do not name', async () => {
    const { store } = given('');
    const text = marcxml('Views').replace('<controlfield tag="003">X</controlfield>', '');
    const { code, out } = await runCli(['intake', 'marcxml', '-', '--source', 'DE-1', ...store], text);
    expect([code, out.includes('1 taken')]).toEqual([0, true]);
    expect((await runCli(['export', ...store])).out).toContain('"origins":[{"source":"DE-1","key":"7"}]');
  });

  test('takes a table by its mapping file, and knows it when it comes again', async () => {
    const { store, file } = given('no\ttitle\tyear\n1\tViews of the harbour\t1764\n2\tThe same, enlarged\tc. 1770\n');
    const map = join(dirname(file), 'map.json');
    const columns = ['no', 'title', 'year'];
    const records = { print: { kind: 'Plate', key: 'no', fields: { caption: 'title' } } };
    const table = { form: 'delimited', delimiter: '\t' };
    const reference = { title: 'List of prints' };
    writeFileSync(map, JSON.stringify({ table, columns, source: 'X', reference, row: 'print', records }));
    expect((await runCli(['intake', 'table', file, '--map', map, ...store])).out).toContain('2 taken, 0 known');
    expect(await jsonOf(['intake', 'table', file, '--map', map, ...store])).toMatchObject({ records: 2, known: 2 });
  });

  test('works everything out and writes nothing when it is dry', async () => {
    const { store, file } = given(marcxml('Views'));
    expect((await runCli(['intake', 'marcxml', file, '--dry-run', ...store])).out).toContain('; nothing was written\n');
    expect(await jsonOf(['check', ...store])).toMatchObject({ facts: { records: 0, claims: 0 }, changeSets: 0 });
  });

  test('takes what can be taken, names each refused line with its reason, and ends with 1', async () => {
    const { store, file } = given(
      [
        '{"id":"work-good-one","kind":"Work","labels":[{"text":"Good"}]}',
        '{"id":"work-bad-one","kind":"Work","labls":[{"text":"Bad"}]}',
        '{"id":"edition-bad-two","kind":"Edition","work":"work-no-such","title":"x"}',
        'not json',
      ].join('\n'),
      'bad.jsonl',
    );
    const { code, out, err } = await runCli(['intake', 'graph', file, ...store]);
    expect([code, err]).toEqual([1, '']);
    expect(out.split('\n').slice(1)).toEqual([
      '  1 taken, 0 known already, 0 edited, 0 differing, 3 refused',
      'Not taken:',
      `  INPUT_INVALID ${file}, record 2, "work-bad-one", field labls: there is no such field (did you mean "labels"?)`,
      expect.stringContaining(`  INPUT_INVALID ${file}, record 4: expected one JSON object, came "not json"`),
      `  NOT_FOUND ${file}, record 3, "edition-bad-two": edition-bad-two names "work-no-such", which is neither in the file nor in the store`,
      '',
    ]);
  });

  test('puts file, record, key, field, code and message of a problem side by side in JSON', async () => {
    const { store, file } = given('{"id":"work-bad-one","kind":"Work","labls":[]}\n', 'bad.jsonl');
    const report = join(dirname(file), 'report.json');
    const { code, out } = await runCli(['intake', 'graph', file, '--json', '--report', report, ...store]);
    const problem = { file, record: 1, key: 'work-bad-one', field: 'labls', code: 'INPUT_INVALID' };
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({ records: 1, taken: 0, refused: 1, problems: [problem] });
    expect(JSON.parse(readFileSync(report, 'utf8'))).toEqual(JSON.parse(out));
  });

  test.each([
    ['text', 'hello', 'expected XML, which begins with "<"'],
    ['nothing', '', 'the XML is not well-formed'],
    ['a record that is cut off', marcxml('Views').slice(0, 300), 'the input ends'],
  ])('refuses %s as MARCXML', async (_what, text, reason) => {
    const { store, file } = given(text);
    const { code, out } = await runCli(['intake', 'marcxml', file, ...store]);
    expect([code, out.includes('0 taken'), out.includes('1 refused'), out.includes(reason)]).toEqual([
      1,
      true,
      true,
      true,
    ]);
  });

  test('refuses a folder as a file', async () => {
    const { store, file } = given('');
    const folder = dirname(file);
    expect(await runCli(['intake', 'marcxml', folder, ...store])).toEqual({
      code: 1,
      out: '',
      err: `SOURCE_REFUSED: expected a file that can be read, came "${folder}": it is a folder\n`,
    });
  });

  test('refuses a file that is not there', async () => {
    const { store } = given('');
    const { code, err } = await runCli(['intake', 'marcxml', '/no/such.xml', ...store]);
    expect([code, err.startsWith('SOURCE_REFUSED: expected a file that can be read, came "/no/such.xml"')]).toEqual([
      1,
      true,
    ]);
  });
});

test('what is exported, taken into another store and exported again is the same to the byte', async () => {
  const [one, two] = [given(''), given('')];
  await runCli(['intake', 'graph', ...demoFiles, ...one.store]);
  const out = join(dirname(one.file), 'out.jsonl');
  expect(await runCli(['export', '-o', out, ...one.store])).toEqual({ code: 0, out: '', err: '' });
  const first = readFileSync(out, 'utf8');
  expect(first.split('\n')).toHaveLength(162);
  await runCli(['intake', 'graph', out, ...two.store]);
  expect((await runCli(['export', ...two.store])).out).toBe(first);
  const sums = await Promise.all([one, two].map(({ store }) => jsonOf(['check', ...store])));
  expect((sums[1] as { checksum: string }).checksum).toBe((sums[0] as { checksum: string }).checksum);
});

test('check prints what there is and the checksum', async () => {
  const { store } = given('');
  await runCli(['intake', 'graph', ...demoFiles, ...store]);
  expect((await runCli(['check', ...store])).out).toMatch(
    /^70 records and 91 claims in .* MB .*, 5 change sets\nchecksum 161-[0-9a-f]{32}\nEverything agrees\.\n$/,
  );
});
