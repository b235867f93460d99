/** A row of prints-after.tsv by the cells that identify it, and what its lineage must show. */
export interface PrintCase {
  readonly row: {
    readonly museum: 'Tate' | 'IMA';
    readonly id: string;
    readonly title: string;
    readonly date_text: string;
    readonly printmaker: string;
    readonly after_artist: string;
    readonly published_in: string;
  };
  /** Who made the picture that was followed. */
  readonly artists: readonly string[];
  readonly caption: string;
  /** Who made the print, with MARC relator code. */
  readonly printmakers: readonly (readonly [name: string, role: string])[];
  /** Title of the publication that the print is in; absent: the row names none, or it is a single sheet. */
  readonly publication?: string;
  /** Who published the print, where the row says so. */
  readonly publisher?: string;
  /** EDTF dates that the row gives; absent: none that can be read. */
  readonly published?: string;
  readonly made?: string;
  /** Last day on which the print can have been made: the last of its publication, or of its making if that is given. */
  readonly madeBy?: string;
  /** Key of the plate for printing that survives. */
  readonly matrix?: string;
}

/**
 * Twenty prints picked from the rows by eye: in a book, in an annual, in a series, by themselves; dated to a day, a year,
 * about a year, with making and publication apart, before the year of the annual, and not at all; by one engraver, by two,
 * by an engraver in doubt; after one artist and after two; with a publisher; with the plate for printing. No row says whether
 * a print is in reverse of what it follows.
 */
export const twentyPrints: readonly PrintCase[] = [
  {
    row: {
      museum: 'Tate',
      id: 'T05084',
      title: 'Alnwick Castle, Northumberland, engraved by J.T. Willmore',
      date_text: '1830',
      printmaker: 'J.T. Willmore',
      after_artist: 'Joseph Mallord William Turner',
      published_in: 'Picturesque Views in England and Wales',
    },
    artists: ['Joseph Mallord William Turner'],
    caption: 'Alnwick Castle, Northumberland',
    printmakers: [['J.T. Willmore', 'egr']],
    publication: 'Picturesque Views in England and Wales',
    published: '1830',
    madeBy: '1830-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T06160',
      title: 'Vesuvius, engraved by T. Jeavons',
      date_text: 'published 1830',
      printmaker: 'T. Jeavons',
      after_artist: 'Joseph Mallord William Turner',
      published_in: '',
    },
    artists: ['Joseph Mallord William Turner'],
    caption: 'Vesuvius',
    printmakers: [['T. Jeavons', 'egr']],
    published: '1830',
    madeBy: '1830-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T05655',
      title: 'The Needles, engraved by G. Bradshaw',
      date_text: '1836',
      printmaker: 'G. Bradshaw',
      after_artist: 'Clarkson Frederick Stanfield',
      published_in: "Stanfield's Coast Scenery",
    },
    artists: ['Clarkson Frederick Stanfield'],
    caption: 'The Needles',
    printmakers: [['G. Bradshaw', 'egr']],
    publication: "Stanfield's Coast Scenery",
    published: '1836',
    madeBy: '1836-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T06631',
      title: 'The Expulsion from Paradise, engraved by E. Goodall',
      date_text: 'published 1835',
      printmaker: 'E. Goodall',
      after_artist: 'Joseph Mallord William Turner',
      published_in: "Milton's 'Poetical Works'",
    },
    artists: ['Joseph Mallord William Turner'],
    caption: 'The Expulsion from Paradise',
    printmakers: [['E. Goodall', 'egr']],
    publication: "Milton's 'Poetical Works'",
    published: '1835',
    madeBy: '1835-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T06588',
      title: 'Wat Tyler and the Tax-Gatherer (after Henry Fuseli)',
      date_text: '1797, published 1798',
      printmaker: 'William Blake',
      after_artist: 'Henry Fuseli',
      published_in: "Charles Allen, 'History of England'",
    },
    artists: ['Henry Fuseli'],
    caption: 'Wat Tyler and the Tax-Gatherer (after Henry Fuseli)',
    printmakers: [['William Blake', 'prm']],
    publication: "Charles Allen, 'History of England'",
    published: '1798',
    made: '1797',
    madeBy: '1797-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'N02719',
      title: 'Cattle and Tree, engraved by Thomas Rowlandson',
      date_text: 'date not known',
      printmaker: 'Thomas Rowlandson',
      after_artist: 'Thomas Gainsborough',
      published_in: '',
    },
    artists: ['Thomas Gainsborough'],
    caption: 'Cattle and Tree',
    printmakers: [['Thomas Rowlandson', 'egr']],
  },
  {
    row: {
      museum: 'Tate',
      id: 'T01796',
      title: 'Four Prints of an Election, plate 2: Canvassing for Votes, engraved by Charles Grignion',
      date_text: '1757, published 1758',
      printmaker: 'Charles Grignion',
      after_artist: 'William Hogarth',
      published_in: '',
    },
    artists: ['William Hogarth'],
    caption: 'Four Prints of an Election, plate 2: Canvassing for Votes',
    printmakers: [['Charles Grignion', 'egr']],
    published: '1758',
    made: '1757',
    madeBy: '1757-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T04781',
      title: 'Camp Hill, Hastings, engraved by Edward Goodall',
      date_text: 'c.1836',
      printmaker: 'Edward Goodall',
      after_artist: 'Joseph Mallord William Turner',
      published_in: "Campbell's Poetical Works",
    },
    artists: ['Joseph Mallord William Turner'],
    caption: 'Camp Hill, Hastings',
    printmakers: [['Edward Goodall', 'egr']],
    publication: "Campbell's Poetical Works",
    published: '1836~',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T05954',
      title: 'Pope’s Villa, engraved by Pye and Heath',
      date_text: 'published 1811',
      printmaker: 'Pye and Heath',
      after_artist: 'Joseph Mallord William Turner',
      published_in: '',
    },
    artists: ['Joseph Mallord William Turner'],
    caption: 'Pope’s Villa',
    printmakers: [
      ['Pye', 'egr'],
      ['Heath', 'egr'],
    ],
    published: '1811',
    madeBy: '1811-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T05946',
      title: 'Donnington Castle, engraved by W. and L. Byrne',
      date_text: 'published 1805',
      printmaker: 'W. and L. Byrne',
      after_artist: 'Joseph Mallord William Turner',
      published_in: 'Byrnes Brittania Depicta 1803-1810 Prints',
    },
    artists: ['Joseph Mallord William Turner'],
    caption: 'Donnington Castle',
    printmakers: [
      ['W. Byrne', 'egr'],
      ['L. Byrne', 'egr'],
    ],
    publication: 'Byrnes Brittania Depicta 1803-1810 Prints',
    published: '1805',
    madeBy: '1805-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T04619',
      title: 'Nantes, engraved by J.T. Willmore',
      date_text: '1830',
      printmaker: 'J.T. Willmore',
      after_artist: 'Joseph Mallord William Turner',
      published_in: 'The Keepsake',
    },
    artists: ['Joseph Mallord William Turner'],
    caption: 'Nantes',
    printmakers: [['J.T. Willmore', 'egr']],
    publication: 'The Keepsake',
    published: '1830',
    madeBy: '1830-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T04706',
      title: 'Château de la Mailleraie, engraved by Robert Brandard',
      date_text: 'published 1833',
      printmaker: 'Robert Brandard',
      after_artist: 'Joseph Mallord William Turner',
      published_in: "Turner's Annual Tour, 1834: Wanderings by the Seine",
    },
    artists: ['Joseph Mallord William Turner'],
    caption: 'Château de la Mailleraie',
    printmakers: [['Robert Brandard', 'egr']],
    publication: "Turner's Annual Tour, 1834: Wanderings by the Seine",
    published: '1833',
    madeBy: '1833-12-31',
  },
  {
    row: {
      museum: 'Tate',
      id: 'T07043',
      title: 'The Pilgrimage to Canterbury, engraved by ?Leopold Beyer',
      date_text: 'c.1830',
      printmaker: '?Leopold Beyer',
      after_artist: 'Thomas Stothard',
      published_in: '',
    },
    artists: ['Thomas Stothard'],
    caption: 'The Pilgrimage to Canterbury',
    printmakers: [['Leopold Beyer', 'egr']],
    published: '1830~',
  },
  {
    row: {
      museum: 'IMA',
      id: 'IMA 80.889.66',
      title: 'Hythe',
      date_text: '1814',
      printmaker: 'Cooke, William Bernard',
      after_artist: 'Clennell, Luke',
      published_in: '',
    },
    artists: ['Clennell, Luke'],
    caption: 'Hythe',
    printmakers: [['Cooke, William Bernard', 'egr']],
    published: '1814',
    madeBy: '1814-12-31',
  },
  {
    row: {
      museum: 'IMA',
      id: 'IMA 80.809.2',
      title: 'Benham',
      date_text: '9/1/1801',
      printmaker: 'Walker, John; Greig, John',
      after_artist: 'Nixon, John',
      published_in: '',
    },
    artists: ['Nixon, John'],
    caption: 'Benham',
    printmakers: [
      ['Walker, John', 'egr'],
      ['Greig, John', 'egr'],
    ],
    published: '1801-09-01',
    madeBy: '1801-09-01',
  },
  {
    row: {
      museum: 'IMA',
      id: 'IMA 16.1128',
      title: 'Noon',
      date_text: '1830',
      printmaker: 'Lucas, David',
      after_artist: 'John Constable',
      published_in: '',
    },
    artists: ['John Constable'],
    caption: 'Noon',
    printmakers: [['Lucas, David', 'egr']],
    published: '1830',
    madeBy: '1830-12-31',
    matrix: 'T06503',
  },
  {
    row: {
      museum: 'IMA',
      id: 'IMA 73.2.113',
      title: 'Library Bookcase',
      date_text: '1753',
      printmaker: 'Müller, Johann Sebastian',
      after_artist: 'Chippendale, Thomas',
      published_in: 'publisher: Chippendale, Thomas',
    },
    artists: ['Chippendale, Thomas'],
    caption: 'Library Bookcase',
    printmakers: [['Müller, Johann Sebastian', 'egr']],
    publisher: 'Chippendale, Thomas',
    published: '1753',
    madeBy: '1753-12-31',
  },
  {
    row: {
      museum: 'IMA',
      id: 'IMA 29.61',
      title: 'Mercury',
      date_text: '1585',
      printmaker: 'Sadeler, Jan, I',
      after_artist: 'Vos, Maarten de',
      published_in: 'publisher: Sadeler, Jan, I',
    },
    artists: ['Vos, Maarten de'],
    caption: 'Mercury',
    printmakers: [['Sadeler, Jan, I', 'egr']],
    publisher: 'Sadeler, Jan, I',
    published: '1585',
    madeBy: '1585-12-31',
  },
  {
    row: {
      museum: 'IMA',
      id: 'IMA 80.890.74',
      title: "St. Margaret's Church at Cliffe",
      date_text: '',
      printmaker: 'Cooke, George',
      after_artist: 'Blore, Edward',
      published_in: '',
    },
    artists: ['Blore, Edward'],
    caption: "St. Margaret's Church at Cliffe",
    printmakers: [['Cooke, George', 'egr']],
  },
  {
    row: {
      museum: 'IMA',
      id: 'IMA 80.926',
      title: 'La Riccia',
      date_text: '1819',
      printmaker: 'Middiman, Samuel',
      after_artist: 'Joseph Mallord William Turner; Pye, John',
      published_in: '',
    },
    artists: ['Joseph Mallord William Turner', 'Pye, John'],
    caption: 'La Riccia',
    printmakers: [['Middiman, Samuel', 'egr']],
    published: '1819',
    madeBy: '1819-12-31',
  },
];
