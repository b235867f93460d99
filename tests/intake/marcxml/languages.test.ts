import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { languagesOf, languageTag } from '../../../src/intake/marcxml/languages.ts';
import { scriptLanguage } from '../../../src/intake/marcxml/scripts.ts';
import { describeWithData } from '../../support/outside-data.ts';
import { field, marc } from './marc-notation.ts';

describe('languages', () => {
  // ISO 639-2 and 639-1: https://www.loc.gov/standards/iso639-2/php/code_list.php
  it.each([
    ['eng', 'en'],
    ['ger', 'de'],
    ['fre', 'fr'],
    ['dut', 'nl'],
    ['wel', 'cy'],
    ['cze', 'cs'],
    ['chi', 'zh'],
    ['gre', 'el'],
    ['grc', 'grc'],
    ['scr', 'hr'],
    ['iri', 'ga'],
  ])('MARC %s is BCP 47 %s', (code, tag) => {
    expect(languageTag(code)).toBe(tag);
  });

  it.each([['und'], ['mul'], ['zxx'], ['|||'], ['   '], ['en'], ['']])('"%s" is none', code => {
    expect(languageTag(code)).toBeUndefined();
  });

  it('are those of field 041, else of 008/35-37', () => {
    const record = marc('008 850101s1834    enka          000 1 eng d');
    expect(languagesOf(record, [])).toEqual(['en']);
    expect(languagesOf(record, [field('041 0#$aheb$alat')])).toEqual(['he', 'la']);
    expect(languagesOf(record, [field('041 0#$aengfre')])).toEqual(['en', 'fr']);
    expect(languagesOf(record, [field('041 1#$ager$hheb')])).toEqual(['de']);
  });

  // Script codes of https://www.loc.gov/marc/bibliographic/ecbdcntf.html
  it('in another script are tagged by it', () => {
    expect(scriptLanguage(field('880 10$6245-01/(2/r$ax'), 'yi')).toBe('yi-Hebr');
    expect(scriptLanguage(field('880 10$6245-01/(N$ax'), undefined)).toBe('und-Cyrl');
    expect(scriptLanguage(field('880 10$6245-01$ax'), 'ru')).toBe('ru');
  });
});

describeWithData('language codes of the Library of Congress', 'marc-codes/languagecodes.tsv', path => {
  const codes = readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .slice(1)
    .map(row => row.slice(0, row.indexOf('\t')));

  it('all have a tag that is well-formed, save those for no or several languages', () => {
    const without = codes.filter(code => /^[a-z]{3}$/.test(code) && languageTag(code) === undefined);
    expect(without).toEqual(['mis', 'mul', 'und', 'zxx']);
    for (const code of codes) {
      const tag = languageTag(code);
      if (tag !== undefined) expect(Intl.getCanonicalLocales(tag)).toHaveLength(1);
    }
  });
});
