import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readDatePhrase } from '../../src/domain/dates/phrase.ts';
import { describeWithData } from '../support/outside-data.ts';

/** Rows 1-200 are the commonest texts, 201-300 a draw from the others; the head of the file says how they were read. */
const readings = tsv(readFileSync(new URL('./imprint-readings.tsv', import.meta.url), 'utf8')).map(([text, edtf]) => ({
  text: text!,
  edtf: edtf!,
}));
const drawn = { commonest: 200, others: 100, seed: 18_331_864 };

// 781 texts of MARC 260 $c with their counts, from 19th-century records of the British Library (CC0).
describeWithData('imprint dates of library records', 'dates/imprint-dates-19c.tsv', path => {
  const counts = new Map(
    (path === '' ? [] : tsv(readFileSync(path, 'utf8'))).map(([text, count]) => [text!, Number(count)]),
  );

  test('the file is the one that was worked through', () => {
    expect([counts.size, weight([...counts.keys()])]).toEqual([781, 8055]);
  });

  test('at least 90 % of the occurrences are read', () => {
    const read = [...counts.keys()].filter(text => readingOf(text) !== 'none');
    const unread = [...counts.keys()].filter(text => readingOf(text) === 'none');
    console.log(
      `imprint dates: ${share(weight(read), weight([...counts.keys()]))} of occurrences read, ` +
        `${share(read.length, counts.size)} of texts; not read: ${unread.map(text => JSON.stringify(text)).join(', ')}`,
    );
    expect(weight(read) / weight([...counts.keys()])).toBeGreaterThanOrEqual(0.9);
  });

  test('the readings by hand are of the commonest texts and of a draw that can be repeated', () => {
    const [commonest, others] = [
      [...counts.keys()].slice(0, drawn.commonest),
      [...counts.keys()].slice(drawn.commonest),
    ];
    const draw = shuffled(others, drawn.seed).slice(0, drawn.others);
    expect(readings.map(reading => reading.text)).toEqual([...commonest, ...draw]);
  });

  test('at most 0.5 % of the occurrences are read otherwise than by hand', () => {
    const wrong = readings.filter(({ text, edtf }) => readingOf(text) !== edtf);
    const [amiss, all] = [weight(wrong.map(({ text }) => text)), weight(readings.map(({ text }) => text))];
    const list = wrong.map(({ text, edtf }) => `${text} is ${edtf}, not ${readingOf(text)}`).join('; ');
    console.log(`imprint dates: ${share(amiss, all)} of occurrences read otherwise than by hand ${list}`);
    expect(amiss / all).toBeLessThanOrEqual(0.005);
  });

  function weight(texts: readonly string[]): number {
    return texts.reduce((sum, text) => sum + (counts.get(text) ?? 0), 0);
  }
});

function readingOf(text: string): string {
  const reading = readDatePhrase(text, 'library');
  return 'edtf' in reading ? reading.edtf : 'none';
}

function tsv(content: string): readonly string[][] {
  const [, ...lines] = content.split('\n').filter(line => line !== '' && !line.startsWith('#'));
  return lines.map(line => line.split('\t'));
}

/** Fisher-Yates from the end, with mulberry32. */
function shuffled(texts: readonly string[], seed: number): readonly string[] {
  const order = [...texts];
  let state = seed;
  for (let at = order.length - 1; at > 0; at -= 1) {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    const to = Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * (at + 1));
    [order[at], order[to]] = [order[to]!, order[at]!];
  }
  return order;
}

function share(part: number, whole: number): string {
  return `${part} of ${whole} (${((100 * part) / whole).toFixed(2)} %)`;
}
