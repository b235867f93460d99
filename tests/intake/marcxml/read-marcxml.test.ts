import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { collection, leader, numbers, readAll, recordXml } from './xml.ts';

describe('a MARCXML file', () => {
  it('is read as it stands', async () => {
    expect(
      await readAll(collection(recordXml(1, 'Tables &amp; chairs<!-- a comment --> of <![CDATA[<oak>]]>'))),
    ).toEqual({
      records: [
        {
          ordinal: 1,
          line: 3,
          leader,
          control: [
            ['001', '1'],
            ['003', 'XX'],
          ],
          fields: [{ tag: '245', ind1: '1', ind2: '0', subfields: [['a', 'Tables & chairs of <oak>']] }],
          faults: [],
        },
      ],
      broken: [],
    });
  });

  it('may use any prefix, and a record may stand alone', async () => {
    const prefixed = recordXml(1).replace(/<(\/?)(?=\w)/g, '<$1marc:');
    expect(numbers(await readAll(prefixed))).toEqual(['1']);
  });

  it('is the same in pieces of any size', async () => {
    const text = collection(recordXml(1, 'Æsop — ‘Fables’ 𝔉'), recordXml(2));
    const whole = await readAll(text);
    for (const size of [1, 2, 3, 7, 64]) expect(await readAll(text, size)).toEqual(whole);
  });

  it('may wrap its records in elements of that name', async () => {
    const sru = `<searchRetrieveResponse><records>${[1, 2].map(n => `<record><recordSchema>marcxml</recordSchema><recordData>${recordXml(n)}</recordData></record>`).join('')}</records></searchRetrieveResponse>`;
    expect(numbers(await readAll(sru))).toEqual(['1', '2']);
    const oai = `<OAI-PMH><ListRecords><record><header status="deleted"><identifier>x</identifier></header></record><record><header/><metadata><collection>${recordXml(3)}</collection></metadata></record></ListRecords></OAI-PMH>`;
    expect(numbers(await readAll(oai))).toEqual(['3']);
  });

  it('may be several files one after the other: every record is read, the seam is told once', async () => {
    const read = await readAll(collection(recordXml(1)) + collection(recordXml(2)) + collection(recordXml(3)));
    expect(numbers(read)).toEqual(['1', '2', '3']);
    expect(read.broken.map(({ after }) => after)).toEqual([1]);
  });

  it('may be in UTF-16 or Latin-1', async () => {
    const text = collection(recordXml(1, 'Œuvres')).replace('UTF-8', 'UTF-16');
    const utf16 = new Uint8Array(Buffer.from(`\uFEFF${text}`, 'utf16le'));
    expect((await readAll(utf16)).records[0]?.fields[0]?.subfields[0]?.[1]).toBe('Œuvres');
    const latin1 = new Uint8Array(
      Buffer.from(collection(recordXml(1, 'Élan')).replace('UTF-8', 'ISO-8859-1'), 'latin1'),
    );
    expect((await readAll(latin1)).records[0]?.fields[0]?.subfields[0]?.[1]).toBe('Élan');
  });

  it('in an encoding that is not known is refused', async () => {
    await expect(readAll(collection().replace('UTF-8', 'EBCDIC-X'))).rejects.toMatchObject({ code: 'SOURCE_REFUSED' });
  });
});

describe('a fault', () => {
  it('of bytes that are no UTF-8 is reported with its record, which is read all the same', async () => {
    const bytes = new TextEncoder().encode(collection(recordXml(1, 'caf~'), recordXml(2)));
    bytes[bytes.indexOf('~'.charCodeAt(0))] = 0xe9;
    const { records } = await readAll(bytes);
    expect(records.map(record => record.faults)).toEqual([
      ['it holds U+FFFD: bytes that are not text of the encoding, or characters that were lost before'],
      [],
    ]);
  });

  it('of the XML within a record makes that record malformed, and no other', async () => {
    const bad = recordXml(2).replace('code="a"', 'code="\u0001"');
    const read = await readAll(collection(recordXml(1), bad, recordXml(3)));
    expect(numbers(read)).toEqual(['1', '2*', '3']);
    expect(read.records[1]?.malformed).toMatch(
      /^the XML is not well-formed at line 4, column \d+: disallowed character$/,
    );
    expect(read.broken).toEqual([]);
  });

  it.each([
    ['an end tag that is missing', recordXml(2).replace('</subfield>', '')],
    ['an end tag of the record that is missing', recordXml(2).replace('</record>', '')],
    ['an entity that is not declared', recordXml(2, 'caf&eacute;')],
    ['an attribute without quotes', recordXml(2).replace('"245"', '245')],
    ['a bare ampersand', recordXml(2, 'Ward & Lock')],
  ])('by %s loses one record', async (_, bad) => {
    expect(numbers(await readAll(collection(recordXml(1), bad, recordXml(3))))).toEqual(['1', '2*', '3']);
  });

  it('by an end tag that nothing opened keeps the records after it', async () => {
    const read = await readAll(collection(recordXml(1), recordXml(2, 'x</b>y'), recordXml(3)));
    expect(numbers(read)).toEqual(['1', '2*', '3']);
  });

  it('of a file cut short is told once: as the record that is cut, or for the file', async () => {
    const text = collection(recordXml(1), recordXml(2));
    const within = await readAll(text.slice(0, text.lastIndexOf('Title 2')));
    expect(numbers(within)).toEqual(['1', '2*']);
    expect(within.broken).toEqual([]);
    const between = await readAll(text.slice(0, text.indexOf('</collection>')));
    expect(numbers(between)).toEqual(['1', '2']);
    expect(between.broken).toHaveLength(1);
  });

  it('of indicators, codes, tags and leader is noted, and nothing is lost', async () => {
    const xml = `<record><leader>short</leader><controlfield tag="001">1</controlfield><datafield tag="42" ind1="1"><subfield code="ab">x</subfield><subfield>y</subfield></datafield></record>`;
    const { records } = await readAll(xml);
    expect(records[0]?.fields).toEqual([
      {
        tag: '42',
        ind1: '1',
        ind2: ' ',
        subfields: [
          ['a', 'x'],
          [' ', 'y'],
        ],
      },
    ]);
    expect(records[0]?.faults).toEqual([
      'expected a leader of 24 characters, came 5: "short"',
      'expected a tag of three characters, came "42"',
      'field 42: expected two indicators of one character each, came "1" and ""',
      'field 42: expected a subfield code of one character, came "ab"',
      'field 42: expected a subfield code of one character, came ""',
    ]);
  });

  it.each([
    ['', 'expected MARC records, found none'],
    ['<html><body>Not found</body></html>', 'expected MARC records, found none'],
    [
      '01142cam  2200301 a 4500',
      'expected XML, which begins with "<", came "01142cam  2200301 a 4500"; the rest is not read',
    ],
  ])('of a file that is no MARCXML is told once: "%s"', async (text, broken) => {
    const read = await readAll(text);
    expect(read.records).toEqual([]);
    expect(read.broken.map(one => one.broken)).toHaveLength(1);
    if (text !== '') expect(read.broken[0]?.broken).toBe(broken);
  });
});

describe('a hostile file', () => {
  it('with nested entities expands none of them', async () => {
    const entities = Array.from({ length: 9 }, (_, i) => `<!ENTITY e${i + 1} "${`&e${i};`.repeat(10)}">`).join('');
    const bomb = `<?xml version="1.0"?><!DOCTYPE c [<!ENTITY e0 "ha">${entities}]><collection>${recordXml(1, '&e9;')}${recordXml(2)}</collection>`;
    const read = await readAll(bomb);
    expect(numbers(read)).toEqual(['1*', '2']);
    expect(read.records[0]?.fields[0]?.subfields[0]?.[1]).toBe('&e9;');
  });

  it('with an external entity reads nothing outside', async () => {
    const xxe = `<?xml version="1.0"?><!DOCTYPE c [<!ENTITY x SYSTEM "file:///etc/passwd">]><collection>${recordXml(1, '&x;')}</collection>`;
    expect((await readAll(xxe)).records[0]?.fields[0]?.subfields[0]?.[1]).toBe('&x;');
  });

  it('with a record of a million characters too many loses that record', async () => {
    const huge = recordXml(2, 'x'.repeat(1_000_001));
    expect(numbers(await readAll(collection(recordXml(1), huge, recordXml(3))))).toEqual(['1', '2*', '3']);
  });

  it('of one text without end is given up', async () => {
    const endless = async function* (): AsyncGenerator<string> {
      yield '<collection>';
      yield recordXml(1);
      for (let i = 0; i < 1000; i++) yield 'x'.repeat(100_000);
    };
    const { readMarcxml } = await import('../../../src/intake/marcxml/read-marcxml.ts');
    const read = [];
    for await (const some of readMarcxml(endless()))
      read.push(...some.map(one => ('broken' in one ? one.broken : one.ordinal)));
    expect(read).toEqual([1, 'more than 20000000 characters without a tag; the rest is not read']);
  });

  it('of elements within elements is given up', async () => {
    const read = await readAll(`<collection>${recordXml(1)}${'<a>'.repeat(200_000)}`);
    expect(numbers(read)).toEqual(['1']);
    expect(read.broken.map(one => one.broken)).toEqual([
      'elements are nested more than 1000 deep; the rest is not read',
    ]);
  });

  it('of errors alone is given up', async () => {
    const read = await readAll(`<collection>${'&x;'.repeat(100_000)}${recordXml(1)}`);
    expect(read.broken.at(-1)?.broken).toContain('more than 1000 errors in a row');
  });

  it('of any bytes ends, in order, with every record counted', async () => {
    const seed = 20_261_125;
    const piece = fc.oneof(
      fc.constantFrom(
        '<record>',
        '</record>',
        '<leader>',
        '</leader>',
        '<datafield tag="245" ind1="1" ind2="0">',
        '</datafield>',
      ),
      fc.constantFrom(
        '<subfield code="a">',
        '</subfield>',
        '<controlfield tag="001">',
        '</controlfield>',
        '<!--',
        '-->',
        '&',
        ']]>',
      ),
      fc.constantFrom(recordXml(7), '<collection>', '</collection>', '<?xml', '<!DOCTYPE x [', '<![CDATA['),
      fc.string(),
      fc.string({ unit: 'binary' }),
    );
    await fc.assert(
      fc.asyncProperty(fc.array(piece, { maxLength: 40 }), fc.integer({ min: 1, max: 50 }), async (pieces, size) => {
        const read = await readAll(`<c>${pieces.join('')}`, size);
        expect(read.records.map(record => record.ordinal)).toEqual(read.records.map((_, i) => i + 1));
      }),
      { seed, numRuns: 300 },
    );
  });
});
