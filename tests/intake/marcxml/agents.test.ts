import { describe, expect, it } from 'vitest';
import { attributionsOf, bundleOf, rowsOf } from './bundles.ts';

const attributions = (...lines: readonly string[]): string[] => attributionsOf(bundleOf(...lines));
const text = 'Leader 00000cam a2200000 a 4500';

describe('attributions', () => {
  it('of a main entry without a relator are by the type of record', () => {
    expect(attributions(text, '100 1#$aSandburg, Carl,$d1878-1967.')).toEqual(['Sandburg, Carl / aut']);
    expect(attributions('Leader 00000ckm a2200000 a 4500', '100 1#$aHogarth, William.')).toEqual([
      'Hogarth, William / art',
    ]);
    expect(attributions('Leader 00000cem a2200000 a 4500', '110 2#$aOrdnance Survey.')).toEqual([
      'Ordnance Survey / ctg',
    ]);
    expect(attributions('Leader 00000ccm a2200000 a 4500', '100 1#$aHaydn, Joseph.')).toEqual(['Haydn, Joseph / cmp']);
  });

  it('of an added entry without a relator are contributions', () => {
    expect(attributions('700 1#$aCruikshank, George.')).toEqual(['Cruikshank, George / ctb']);
  });

  it('take the code from terms, abbreviations and $4, each role once', () => {
    expect(attributions('700 1#$aRand, Ted,$eill.')).toEqual(['Rand, Ted / ill (ill.)']);
    expect(attributions('700 1#$aLeech, John,$eillustrator,$eengraver,$4ill$4wde')).toEqual([
      'Leech, John / ill (illustrator)',
      'Leech, John / egr (engraver)',
      'Leech, John / wde',
    ]);
    expect(attributions('700 1#$aRichter, Ludwig$4http://id.loc.gov/vocabulary/relators/ill')).toEqual([
      'Richter, Ludwig / ill',
    ]);
    expect(attributions('711 2#$aExhibition$jissuing body.')).toEqual(['Exhibition / isb (issuing body.)']);
  });

  it('in unknown words are kept as another role, and reported', () => {
    const bundle = bundleOf('700 1#$aDay, W.$earist.');
    expect(attributionsOf(bundle)).toEqual(['Day, W. / oth (arist.)']);
    expect(bundle.remarks.map(({ message, place }) => `${place.field} ${message}`)).toEqual([
      '700$e expected a relator term of MARC, came "arist.": taken as another role',
    ]);
  });

  it('have one agent for one heading', () => {
    const bundle = bundleOf('100 1#$aBewick, Thomas.', '700 1#$aBEWICK, Thomas.$eengraver');
    expect(rowsOf(bundle, 'Agent')).toHaveLength(1);
    expect(attributionsOf(bundle)).toEqual(['Bewick, Thomas / aut', 'Bewick, Thomas / egr (engraver)']);
  });

  it('do not come from a heading with a title: that is a work', () => {
    const bundle = bundleOf('700 1#$aDumas, Alexandre,$d1802-1870.$tSingle Works. Pascal Bruno.');
    expect(attributionsOf(bundle)).toEqual([]);
    expect(rowsOf(bundle, 'Edition')[0]?.columns).toEqual({
      'MARC 700': 'Dumas, Alexandre, 1802-1870. Single Works. Pascal Bruno.',
    });
  });

  it('come from an uncontrolled name that says what it is, not from a catchword', () => {
    const bundle = bundleOf('720 ##$aA***, Major$emain entry', '720 1#$aB., C.', '720 ##$aENGLISH COOKERY BOOK');
    expect(attributionsOf(bundle)).toEqual(['A***, Major / aut (main entry)', 'B., C. / ctb']);
    expect(rowsOf(bundle, 'Edition')[0]?.columns).toEqual({ 'MARC 720': 'ENGLISH COOKERY BOOK' });
  });
});

describe('persons and firms', () => {
  const agent = (...lines: readonly string[]) => bundleOf(...lines).rows.find(({ row }) => row.kind === 'Agent');

  it('have their name as filed, dates, and a key of both', () => {
    expect(agent('100 1#$aBEWICK, Thomas,$d1753-1828.')).toEqual({
      row: {
        kind: 'Agent',
        id: '@agent-1',
        labels: [{ text: 'BEWICK, Thomas' }],
        form: 'PERSON',
        sortName: 'BEWICK, Thomas',
        dates: '1753-1828',
      },
      origin: { source: 'XX', key: 'agent:person:bewick thomas 1753 1828' },
    });
  });

  it('known by an authority number are shared by it', () => {
    expect(agent('100 1#$aGoethe, Johann Wolfgang von$0(DE-588)118540238')?.origin?.key).toBe(
      'agent:(DE-588)118540238',
    );
    expect(agent('100 1#$aGoethe$0https://d-nb.info/gnd/118540238')?.row).toMatchObject({
      sameAs: ['https://d-nb.info/gnd/118540238'],
    });
  });

  it.each([
    ['100 1#$aPRÉVOST, Jean,$cAvocat.', { labels: [{ text: 'PRÉVOST, Jean, Avocat' }], sortName: 'PRÉVOST, Jean' }],
    [
      '100 0#$aVictoria,$cQueen of Great Britain,$d1819-1901.',
      { labels: [{ text: 'Victoria, Queen of Great Britain' }] },
    ],
    ['100 0#$aJ. A.$q(John Abell),$d1791-1861.', { labels: [{ text: 'J. A. (John Abell)' }] }],
    ['100 1#$aA., A. S.', { labels: [{ text: 'A., A. S.' }], sortName: 'A., A. S.' }],
    [
      '110 2#$aUniversity of Aberdeen.$bLibrary.',
      { labels: [{ text: 'University of Aberdeen. Library' }], form: 'FIRM' },
    ],
    ['110 2#$aAckermann, Suardy & Co.', { labels: [{ text: 'Ackermann, Suardy & Co.' }], form: 'FIRM' }],
  ])('%s', (line, expected) => {
    expect(agent(line)?.row).toMatchObject(expected);
  });

  it('have their name in the other script beside the first', () => {
    const [row] = rowsOf(
      bundleOf(
        '008 850101s1883    ru            000 1 yid d',
        '100 0#$6880-01$aMendele Mokher Sefarim,$d1835-1917.',
        '880 0#$6100-01/(2/r$aמענדעלע מוכר ספרים,$d1835-1917.',
      ),
      'Agent',
    );
    expect(row?.labels).toEqual([
      { text: 'Mendele Mokher Sefarim' },
      { text: 'מענדעלע מוכר ספרים', language: 'yi-Hebr' },
    ]);
  });

  it('publishers and bodies of one name are one', () => {
    const bundle = bundleOf('110 2#$aAckermann, Suardy & Co.', '260 ##$aLondon :$bAckermann, Suardy, & Co.,$c1800.');
    expect(rowsOf(bundle, 'Agent').map(row => row.labels?.[0]?.text)).toEqual(['Ackermann, Suardy, & Co.']);
  });
});
