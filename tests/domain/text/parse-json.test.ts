import { describe, expect, test } from 'vitest';
import { deepestJson, parseJson } from '../../../src/domain/text/parse-json.ts';

const nested = (levels: number) => `${'['.repeat(levels)}${']'.repeat(levels)}`;

describe('JSON from outside', () => {
  test('is read as it is', () => {
    const text = '{"a":[1,"\\ud83d\\ude00","\\\\ud800"],"__proto__":{}}';
    expect(parseJson(text)).toEqual(JSON.parse(text));
    expect(parseJson(nested(deepestJson))).toEqual(JSON.parse(nested(deepestJson)));
  });

  test.each([
    ['no JSON', '{', /JSON/],
    ['a level too many', nested(deepestJson + 1), /more than 100 levels/],
    ['levels without number', nested(100_000), /more than 100 levels/],
    ['half a character', '["\\ud800"]', /half a surrogate pair/],
    ['half a character in a name', '{"a":{"\\udc00":1}}', /half a surrogate pair/],
  ])('%s is refused', (_what, text, message) => expect(() => parseJson(text)).toThrow(message));
});
