import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { PlainRecords } from '../../../src/intake/marcxml/plain-record.ts';
import { type Chance, chances } from '../../hostile/chance.ts';
import { damaged } from '../../hostile/damaged.ts';
import { describeWithData } from '../../support/outside-data.ts';
import { runs, seedOfRun } from '../../support/runs.ts';
import { collection, leader, type ReadAll, readAll, recordXml } from './xml.ts';

const seed = seedOfRun();

afterEach(() => vi.restoreAllMocks());

/** What comes of a file that the XML parser reads alone. */
async function readByParser(input: string | Uint8Array, size?: number): Promise<ReadAll> {
  const unused = vi.spyOn(PlainRecords.prototype, 'isOfUse', 'get').mockReturnValue(false);
  const read = await readAll(input, size);
  unused.mockRestore();
  return read;
}

/**
 * The same comes of a file. Of what stands outside the root one fault is told, and the XML parser finds text there where
 * the piece ends that it was given: which fault it is, and where, hangs on how the file is cut.
 */
function expectSame(read: ReadAll, byParser: ReadAll): void {
  const isOutside = ({ broken }: ReadAll) => broken.some(one => one.broken.includes('outside of root'));
  const told = ({ records, broken }: ReadAll) => ({ records, broken: broken.map(({ after }) => after).sort() });
  if (isOutside(read) || isOutside(byParser)) expect(told(read)).toEqual(told(byParser));
  else expect(read).toEqual(byParser);
}

/** What comes of a file, and how many records of it the XML parser has not seen. */
async function readCounted(input: string | Uint8Array, size?: number): Promise<ReadAll & { readonly plain: number }> {
  const spy = vi.spyOn(PlainRecords.prototype, 'read');
  const read = await readAll(input, size);
  const plain = spy.mock.results.filter(({ value }) => value !== undefined).length;
  spy.mockRestore();
  return { ...read, plain };
}

const plainValues = [
  ...[
    '',
    ' ',
    'London :',
    '[179-?]',
    'a ] b',
    ']]',
    'Fables\n  of Æsop',
    'a\tb',
    'Ж. 字',
    'half\uFFFD',
    '\u0085',
    '>',
    'a\u2028b',
    '\u007F',
  ],
  ...['Ward &amp; Lock', '&quot;I&apos;m&quot;', '&lt;b&gt;', '&amp;amp;'],
];
/** What the XML parser reads, or finds fault with. */
const otherValues = [
  ...['Ward & Lock', 'AT&T;', '&#233;', '&#x1D509;', '&#0;', '&eacute;', ']]>', '𝔉', 'a\rb', 'a\r\nb', '\u0001'],
  ...['\uFFFE', '<![CDATA[<x>]]>', 'a<!-- b -->c', '<?p?>', '<i>a</i>', '<!--</record>-->', '<![CDATA[</record>]]>'],
];
const spaces = ['', '', '\n', ' ', '\r\n  ', '\t', '\r', '<!-- a -->', 'x', '&#32;', '<!-- </record> -->', '\n\n'];
const marks = ['a', 'b', '6', ' ', '>', "'", '=', '', 'ab', '&amp;', '&', '<', 'é', '\t', '"'];
const tags = ['100', '245', '260', 'x', '', '24a', '24é', '2"5', '1234'];

function anyElement(chance: Chance, prefix: string): string {
  const rarely = (usual: string, others: readonly string[]) => (chance.below(400) < 399 ? usual : chance.pick(others));
  const space = () => rarely(chance.pick(['', '\n', '  ']), spaces);
  const element = (name: string, attributes: string, content: string) =>
    `<${rarely(prefix, ['y:'])}${rarely(name, ['other', 'record'])}${rarely(attributes, [` ${attributes} `, attributes.replaceAll('"', "'"), `${attributes} x="1"`, attributes.slice(0, -2)])}>${content}</${rarely(prefix, ['y:', ''])}${rarely(name, ['other', 'record'])}${rarely('', [' '])}>`;
  const mark = () => rarely(chance.pick(['a', 'b', ' ', '1']), marks);
  const tag = rarely(chance.pick(['100', '245', '260', '880']), tags);
  const value = () => chance.pick(chance.percent(97) ? plainValues : otherValues);
  if (chance.percent(20)) return element('controlfield', ` tag="${rarely('008', tags)}"`, value());
  const [one, two] = chance.percent(97) ? ['ind1', 'ind2'] : ['ind2', 'ind1'];
  const subfields = Array.from(
    { length: chance.below(4) },
    () => element('subfield', ` code="${mark()}"`, value()) + space(),
  );
  return element('datafield', ` tag="${tag}" ${one}="${mark()}" ${two}="${mark()}"`, space() + subfields.join(''));
}

function anyFile(chance: Chance): string {
  const prefix = chance.pick(['', 'marc:', 'a.b-c:']);
  const space = () => (chance.percent(90) ? chance.pick(['', '\n', '\r\n ']) : chance.pick(spaces));
  const records = Array.from({ length: 1 + chance.below(9) }, (_, i) => {
    const elements = Array.from({ length: chance.below(6) }, () => anyElement(chance, prefix) + space());
    const [begun, end] = [chance.percent(95) ? '' : ' xmlns="x"', chance.percent(95) ? '' : ' '];
    return `${space()}<${prefix}record${begun}>${space()}<${prefix}leader>${leader}</${prefix}leader><${prefix}controlfield tag="001">${i}</${prefix}controlfield>${elements.join('')}</${prefix}record${end}>`;
  });
  const [begin, end] = chance.percent(90)
    ? ['<c>', '</c>']
    : chance.pick([
        ['', ''],
        ['<c><record>', '</record></c>'],
        ['<c>', ''],
        ['<c><record/><!-- ', ' --></c>'],
      ]);
  const declared = chance.pick(['', '', '<?xml version="1.0"?>', '<?xml version="1.0"?>', '<?xml version="1.1"?>']);
  const whole = `${declared}${begin}${records.join('')}${space()}${end}`;
  return chance.percent(97) ? whole : whole + whole;
}

describe('a record that is written plainly', () => {
  it('is read without the XML parser where another one has ended', async () => {
    const text = collection(recordXml(1), recordXml(2, 'Ward &amp; Lock [&quot;1790&quot;]'), recordXml(3));
    const { plain, ...read } = await readCounted(text);
    expect(plain).toBe(2);
    expect(read).toEqual(await readByParser(text));
    expect(read.records[1]).toEqual({
      ordinal: 2,
      line: 4,
      leader,
      control: [
        ['001', '2'],
        ['003', 'XX'],
      ],
      fields: [{ tag: '245', ind1: '1', ind2: '0', subfields: [['a', 'Ward & Lock ["1790"]']] }],
      faults: [],
    });
  });

  it('leaves lines and columns of what follows as they are', async () => {
    const broken = collection(`${recordXml(1)}${recordXml(2, 'of\ntwo lines')}${recordXml(3)}<record`, recordXml(4));
    const read = await readCounted(broken);
    expect(read.plain).toBe(2);
    expect(JSON.stringify(read)).toContain('line 5, column 8');
    expect({ ...read, plain: 0 }).toEqual({ ...(await readByParser(broken)), plain: 0 });
  });

  it('comes to the same as by the XML parser, whatever stands around and in it', async () => {
    let [plain, parsed] = [0, 0];
    await fc.assert(
      fc.asyncProperty(chances, async chance => {
        const whole = Buffer.from(anyFile(chance));
        const bytes = chance.percent(80) ? whole : damaged(whole, chance);
        const size = chance.pick([7, 50, 200, 1000, 100_000]);
        const { plain: some, ...read } = await readCounted(bytes, size);
        expectSame(read, await readByParser(bytes, size));
        plain += some;
        parsed += read.records.length - some;
      }),
      { seed, numRuns: runs(2000, 100_000) },
    );
    console.info(`Records written plainly or not (seed ${seed}): ${plain} were, ${parsed} were not.`);
    expect(plain).toBeGreaterThan(500);
    expect(parsed).toBeGreaterThan(500);
  }, 3_600_000);

  it('is a tag to the parser: any number of them is no stretch without one', async () => {
    const text = collection(...Array.from({ length: 450 }, (_, i) => recordXml(i, 'x'.repeat(50_000))));
    const { plain, broken } = await readCounted(text);
    expect(plain).toBe(449);
    expect(broken).toEqual([]);
  });

  it('is one of XML 1.0: a later version has more ends of lines', async () => {
    const text = collection(recordXml(1), recordXml(2, 'a\u0085b\u2028c'), recordXml(3)).replace('1.0', '1.1');
    const { plain, ...read } = await readCounted(text);
    expect(plain).toBe(0);
    expect(read.records[1]!.fields[0]!.subfields).toEqual([['a', 'a\nb\nc']]);
  });

  it.each([30, 32, 60_000])('may have a prefix, if that is short (%i characters)', async length => {
    const prefixed = recordXml(2).replace(/<(\/?)(?=\w)/g, `<$1${'a'.repeat(length)}.:`);
    const text = collection(recordXml(1), prefixed, prefixed.replaceAll('a.:', 'ab:'), recordXml(3));
    const { plain, ...read } = await readCounted(text);
    expect(plain).toBe(length === 30 ? 3 : 0);
    expect(read).toEqual(await readByParser(text));
    expect(read.records).toHaveLength(4);
  });

  it('ends as it began', async () => {
    const text = collection(recordXml(1), recordXml(2).replace('</record>', '</m:record>'), recordXml(3));
    expectSame(await readAll(text), await readByParser(text));
  });

  it('is too deep where another would be', async () => {
    for (const depth of [996, 997, 998, 999]) {
      const text = `${'<x>'.repeat(depth)}<record><leader>${leader}</leader></record>${recordXml(2)}`;
      expect(await readAll(text)).toEqual(await readByParser(text));
    }
  });

  it('waits for its end no longer than it may', async () => {
    const long = recordXml(2, 'x'.repeat(200_000));
    const { plain, ...read } = await readCounted(collection(recordXml(1), long, recordXml(3), recordXml(4)), 1000);
    expect(plain).toBe(2);
    expect(read.records.map(({ fields }) => fields[0]!.subfields[0]![1].length)).toEqual([7, 200_000, 7, 7]);
  });
});

// The British Library's sample records of nineteenth-century books, CC0.
describeWithData('records of nineteenth-century books', 'marcxml-19c', folder => {
  it.each(readdirSync(folder))('%s: all but the first are written plainly, and come to the same', async file => {
    const bytes = readFileSync(join(folder, file));
    const { plain, ...read } = await readCounted(bytes);
    expect(plain / (read.records.length - 1)).toBeGreaterThan(0.98);
    expect(read).toEqual(await readByParser(bytes));
  });
});
