import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { type ImprintPlaceText, readImprintPlaces } from '../../src/domain/conventions/imprint-place-text.ts';
import { resolvePlaceName } from '../../src/domain/conventions/resolve-place.ts';
import { readUnstructuredImprint } from '../../src/intake/marcxml/unstructured-imprint.ts';
import { describeWithData } from '../support/outside-data.ts';

const resolved = ({ name, country }: ImprintPlaceText) => {
  const found = resolvePlaceName(name, country === undefined ? {} : { country });
  return 'place' in found ? found.place : undefined;
};

const share = (part: number, whole: number) => `${part} of ${whole} (${((100 * part) / whole).toFixed(1)} %)`;

type Found = [found: number, of: number];

interface Tally {
  readonly plain: Found;
  readonly structured: Found;
  none: number;
}

// British Library, records of nineteenth-century books (CC0): every 260 $a.
describeWithData('places of publication in real records', 'marcxml-19c', folder => {
  const texts = readdirSync(folder)
    .filter(name => name.endsWith('.xml'))
    .flatMap(name => placesOfPublication(readFileSync(join(folder, name), 'utf8')));

  test('at least 97 % of plain names and 93 % of all texts come to a town', () => {
    const tally: Tally = { plain: [0, 0], structured: [0, 0], none: 0 };
    const left = new Map<string, number>();
    for (const text of texts) {
      const imprint = readUnstructuredImprint(text);
      const places =
        imprint === undefined ? readImprintPlaces(text) : imprint.pairs.flatMap(({ place }) => place ?? []);
      if (places.length === 0) {
        tally.none++;
        continue;
      }
      // A country that only printed is said, but is no town.
      const found = places.every(place => place.role !== undefined || resolved(place) !== undefined);
      const kind = /\d|[&;:“].*\p{L}/u.test(text) ? tally.structured : tally.plain;
      kind[0] += found ? 1 : 0;
      kind[1]++;
      if (!found) left.set(text, (left.get(text) ?? 0) + 1);
    }
    const [plain, plainAll] = tally.plain;
    const [structured, structuredAll] = tally.structured;
    console.log(
      `plain names ${share(plain, plainAll)}; texts with names, dates or several places ${share(structured, structuredAll)}; no place ${tally.none}; not resolved: ${[...left].map(([text, count]) => `${text} (${count})`).join(' | ')}`,
    );
    expect(texts.length).toBe(plainAll + structuredAll + tally.none);
    expect(plain / plainAll).toBeGreaterThanOrEqual(0.97);
    expect((plain + structured) / (plainAll + structuredAll)).toBeGreaterThanOrEqual(0.93);
  });
});

// GeoNames (CC BY 4.0), a subset that was put together without these tables. ISO country beside each name.
const gazetteer = `London GB, Paris FR, Boston US, Edinburgh GB, Berlin DE, Madrid ES, Aberdeen GB, Leipzig DE, Budapest HU,
  Manchester GB, Stockholm SE, Oxford GB, Glasgow GB, Dublin IE, Philadelphia US, Amsterdam NL, Cambridge GB,
  Montpellier FR, Baltimore US, Stuttgart DE, Washington US, Hamburg DE, Aarau CH, Bogotá CO, Strasbourg FR, Exeter GB,
  Jena DE, Loughborough GB, Llandovery GB, Montevideo UY, Naples IT, Sevilla ES, Zürich CH, Melbourne AU, Kraków PL,
  Gorinchem NL, Manila PH, Keene US, Charleston US, Trieste IT, Belfast GB, Braunschweig DE, Buenos Aires AR,
  Schaffhausen CH, Concord US, Cincinnati US, Auckland NZ, Kolding DK, Schoonhoven NL, Franeker NL, Agra IN, Caracas VE,
  Sydney AU, Colombo LK, Örebro SE, Bergen NO, Constantine DZ, Montréal CA, Shanghai CN, Cape Town ZA, Poznań PL`;
const otherNames = [
  ['Londini', 'London', 'GB'],
  ['Parisiis', 'Paris', 'FR'],
  ['Lipsiæ', 'Leipzig', 'DE'],
  ['Lugduni Batavorum', 'Leiden', 'NL'],
  ['Hannoverae', 'Hannover', 'DE'],
  ['Bonnae', 'Bonn', 'DE'],
  ['Gottingæ', 'Göttingen', 'DE'],
  ['Ratisbonae', 'Regensburg', 'DE'],
  ['Oxonii', 'Oxford', 'GB'],
  ['Leyde', 'Leiden', 'NL'],
  ['Florentiae', 'Florence', 'IT'],
  ['Ἀθῆναι', 'Athens', 'GR'],
  ['Gand', 'Gent', 'BE'],
  ['Liouerd', 'Leeuwarden', 'NL'],
] as const;

describeWithData('coordinates of towns', 'places/gazetteer-subset.tsv', path => {
  const rows = readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .map(line => line.split('\t'));
  const same = gazetteer.split(',').map(entry => {
    const [, name, country] = /^\s*(.*) (\w\w)$/s.exec(entry)!;
    return [name!, name!, country!] as const;
  });

  test.each([...same, ...otherNames])(
    '%s is where the gazetteer has %s, %s, within 0.2 degrees',
    (said, name, country) => {
      const found = resolvePlaceName(said);
      const { lat, lon } = 'place' in found ? found.place.coordinates! : { lat: Number.NaN, lon: Number.NaN };
      const candidates = rows.filter(row => row[0] === name && row[3] === country);
      const distances = candidates.map(row => Math.max(Math.abs(Number(row[1]) - lat), Math.abs(Number(row[2]) - lon)));
      expect(candidates.length).toBeGreaterThan(0);
      expect(Math.min(...distances)).toBeLessThanOrEqual(0.2);
    },
  );
});

function placesOfPublication(xml: string): string[] {
  const fields = xml.matchAll(/<marc:datafield tag="26[04]"[^>]*>(.*?)<\/marc:datafield>/gs);
  return [...fields].flatMap(([, field]) =>
    [...field!.matchAll(/<marc:subfield code="a">(.*?)<\/marc:subfield>/gs)].map(([, text]) => unescaped(text!)),
  );
}

function unescaped(text: string): string {
  const characters = { lt: '<', gt: '>', quot: '"', apos: "'", amp: '&' } as const;
  return text.replace(/&(lt|gt|quot|apos|amp);/g, (_, name: keyof typeof characters) => characters[name]);
}
