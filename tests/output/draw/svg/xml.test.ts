import { describe, expect, test } from 'vitest';
import { n, svgText, xml } from '../../../../src/output/draw/svg/xml.ts';

describe('a text in XML', () => {
  test.each([
    ['Plates <A & B> "first", \'second\'', 'Plates &lt;A &amp; B&gt; &quot;first&quot;, &#39;second&#39;'],
    ['a\u0000b\u0007c\u001fd', 'abcd'],
    ['\ud800x\udc00', 'x'],
    ['芥子園 \u{1f3fa}', '芥子園 \u{1f3fa}'],
    ['</text><script>alert(1)</script>', '&lt;/text&gt;&lt;script&gt;alert(1)&lt;/script&gt;'],
  ])('%j', (text, escaped) => expect(xml(text)).toBe(escaped));
});

test.each([
  [12, '12'],
  [12.04, '12'],
  [-0.04, '0'],
  [1 / 3, '0.3'],
])('a coordinate %d is written %s', (value, text) => expect(n(value)).toBe(text));

test('a text has its look', () => {
  expect(svgText(1, 2.55, 'a<b', { size: 10, italic: true, anchor: 'end', fill: '#000', halo: '#fff' })).toBe(
    '<text x="1" y="2.6" font-size="10" fill="#000" font-style="italic" text-anchor="end" stroke="#fff" stroke-width="3" stroke-linejoin="round" paint-order="stroke">a&lt;b</text>',
  );
});
