import { describe, expect, test } from 'vitest';
import { cite } from '../../../src/output/cite/cite.ts';
import { edition } from './editions.ts';

const own = (body: string, info = '<title>Card of the print room</title>') =>
  `\uFEFF<?xml version="1.0" encoding="utf-8"?>
  <!-- ours -->
  <style xmlns="http://purl.org/net/xbiblio/csl" class="note" version="1.0" default-locale="de-DE">
    <info>${info}</info>${body}
  </style>`;
const card = own(`<citation><layout>
    <group delimiter=" &amp; ">
      <text variable="title" prefix="&lt;" suffix="&gt;"/>
      <text term="edition"/>
      <date variable="issued"><date-part name="year"/></date>
    </group>
  </layout></citation>`);
const text = (style: string, locale?: string) =>
  cite([edition('german-nouns')], { format: 'TEXT', style, ...(locale === undefined ? {} : { locale }) });

describe('a style of one’s own', () => {
  test('is used, in its own locale where none is asked for', () => {
    expect(text(card)).toEqual({
      text: '<Der Hase im Klee & andere Fabeln für Kinder> & Auflage & [1764?]\n',
      items: [
        {
          id: 'edition-german-nouns',
          text: '<Der Hase im Klee & andere Fabeln für Kinder> & Auflage & [1764?]',
        },
      ],
      style: 'Card of the print room',
      locale: 'de-DE',
    });
    expect(text(card, 'fr').items[0]?.text).toContain('& édition &');
  });

  test.each([
    ['cut off', card.slice(0, -40), /^style: expected a well-formed CSL style, came/],
    ['some other XML', '<html/>', /expected a CSL style, came an XML file of <html>/],
    ['without a citation', own(''), /expected a style with a <citation>/],
    [
      'dependent',
      own('<citation/>', '<link rel="independent-parent" href="http://x.org/apa"/>'),
      /expected an independent style, came one that depends on http:\/\/x.org\/apa/,
    ],
    [
      'calling itself without end',
      own('<macro name="a"><text macro="a"/></macro><citation><layout><text macro="a"/></layout></citation>'),
      /cannot be used: .*infinite loop/,
    ],
    [
      'whose macros double thirty times',
      own(
        `${Array.from({ length: 30 }, (_, i) => `<macro name="m${i}"><text macro="m${i + 1}"/><text macro="m${i + 1}"/></macro>`).join('')}
        <macro name="m30"><text value="x"/></macro><citation><layout><text macro="m0"/></layout></citation>`,
      ),
      /at most 100000 elements with its macros in place, came more/,
    ],
    ['of endless depth', `<style><citation>${'<a>'.repeat(5000)}`, /elements at most 200 deep/],
    ['with an entity bomb', `<!DOCTYPE s [<!ENTITY a "aaaa">]><style><info>&a;</info></style>`, /well-formed/],
  ])('%s is refused', (_, xml, message) => {
    expect(() => text(xml)).toThrow(
      expect.objectContaining({ code: 'INPUT_INVALID', message: expect.stringMatching(message) }),
    );
  });
});

describe('a name of a style', () => {
  test.each([
    'chicago',
    'Chicago',
    'chicago-fullnote-bibliography',
    'http://www.zotero.org/styles/chicago-fullnote-bibliography',
  ])('%s is known', name => {
    expect(text(name).style).toBe('chicago');
  });

  test.each([
    [
      'chicgo',
      'style: expected the name of a style or the text of a CSL file, came "chicgo"; did you mean chicago or chicago-author-date?',
    ],
    ['mhar', 'style: expected the name of a style or the text of a CSL file, came "mhar"; did you mean mhra?'],
    [
      'turabian',
      'style: expected the name of a style or the text of a CSL file, came "turabian"; known are chicago, chicago-author-date, mhra, iso690, apa, mla',
    ],
    ['iso-690', 'style: expected the name of a style or the text of a CSL file, came "iso-690"; did you mean iso690?'],
  ])('%s is not, and near names are offered', (name, message) => {
    expect(() => text(name)).toThrow(expect.objectContaining({ code: 'INPUT_INVALID', message }));
  });
});

describe('a locale', () => {
  test('of a language stands for its first', () => {
    expect(['de', 'de-AT', 'fr_FR', 'en', 'en-GB'].map(locale => text('chicago', locale).locale)).toEqual([
      'de-DE',
      'de-DE',
      'fr-FR',
      'en-US',
      'en-GB',
    ]);
    expect(text('mhra').locale).toBe('en-GB');
    expect(text('chicago').locale).toBe('en-US');
  });

  test('that is not bundled is refused', () => {
    expect(() => text('chicago', 'pl')).toThrow(
      expect.objectContaining({
        code: 'INPUT_INVALID',
        message: 'locale: expected one of en-US, en-GB, de-DE, fr-FR, it-IT, es-ES, nl-NL, came "pl"',
      }),
    );
  });
});
