import { describe, expect, test } from 'vitest';
import { checkEncoding, textLines } from '../../../src/intake/table/table-text.ts';
import { all, once } from './tables.ts';

function linesOf(pieces: readonly (Uint8Array | string)[], encoding?: string) {
  return all(textLines(once(...pieces), encoding));
}

describe('lines of a text', () => {
  test('are the same wherever the pieces are cut', async () => {
    const bytes = Buffer.from('Tür\r\n\nœuvre\n');
    const whole = [
      { number: 1, text: 'Tür' },
      { number: 2, text: '' },
      { number: 3, text: 'œuvre' },
    ];
    for (let at = 0; at <= bytes.length; at++) {
      expect(await linesOf([bytes.subarray(0, at), bytes.subarray(at)])).toEqual(whole);
    }
    expect(await linesOf(['Tür\r', '\n\nœuv', 're'])).toEqual(whole);
  });

  test('are read in the encoding that is named, else as a byte order mark says, else in UTF-8', async () => {
    const line = [{ number: 1, text: 'Tür' }];
    expect(await linesOf([Buffer.from('Tür', 'latin1')], 'windows-1252')).toEqual(line);
    expect(await linesOf([Buffer.from('\uFEFFTür', 'utf16le')])).toEqual(line);
    expect(await linesOf([Buffer.from('\uFEFFTür', 'utf8')])).toEqual(line);
    expect(await linesOf([Buffer.from('Tür', 'utf8')])).toEqual(line);
    expect(await linesOf(['\uFEFFTür'])).toEqual(line);
  });

  test('that hold bytes of another encoding are faults of their own', async () => {
    expect(await linesOf([Buffer.from('a\nT\xfcr\nb', 'latin1')])).toEqual([
      { number: 1, text: 'a' },
      {
        number: 2,
        text: '',
        fault: 'expected text, came bytes that are none in this encoding, or U+FFFD where a character was lost before',
      },
      { number: 3, text: 'b' },
    ]);
  });

  test('that are too long are faults of their own, and are not held', async () => {
    const long = Array.from({ length: 9 }, () => 'x'.repeat(500_000));
    expect(await linesOf(['a\n', ...long, '\nb'])).toEqual([
      { number: 1, text: 'a' },
      { number: 2, text: '', fault: 'expected a line of at most 4,000,000 characters, came one of 4,500,000' },
      { number: 3, text: 'b' },
    ]);
  });
});

test('an encoding that nobody knows is refused', () => {
  expect(() => checkEncoding('latin-9000')).toThrow(
    'expected an encoding such as utf-8 or windows-1252, came "latin-9000"',
  );
});
