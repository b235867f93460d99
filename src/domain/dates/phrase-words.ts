/**
 * Words of date phrases in English, French, German, Italian and Spanish, with the Latin months of old title pages and
 * the abbreviations of engravers' publication lines. Lower case, without the final dot.
 */

const months: readonly string[] = [
  'january jan jany janry janvier janv januar jänner gennaio genn gen enero ene januarii januarius ianuarii januar',
  'february feb feby febry febr février fevrier févr fevr februar feber febbraio febbr febrero februarii februarius',
  'march mar mars märz maerz marz marzo martii martius',
  'april apr apl apll avril avr aprile abril abr aprilis',
  'may mai maggio magg mag mayo maii maij maius maj',
  'june jun juin juni giugno giu junio junii junius iunii',
  'july jul juillet juil juli luglio lug julio julii julius iulii',
  'august aug augt augst août aout agosto ago augusti augustus',
  'september sep sept sepr septr septembre settembre sett set septiembre setiembre septembris 7ber 7bre 7br',
  'october oct octr octobre oktober okt ottobre ott octubre octobris 8ber 8bre 8br',
  'november nov novr novbr novembre noviembre novembris 9ber 9bre 9br',
  'december dec decr decbr décembre decembre déc dezember dez dicembre dic diciembre decembris xber xbre xbr 10ber 10bre',
];

const seasons: readonly string[] = [
  'spring printemps frühling frühjahr primavera',
  'summer été ete sommer estate verano',
  'autumn fall automne herbst autunno otoño',
  'winter hiver inverno invierno',
];

const republicanMonths: readonly string[] = [
  'vendémiaire vendemiaire',
  'brumaire',
  'frimaire',
  'nivôse nivose',
  'pluviôse pluviose',
  'ventôse ventose',
  'germinal',
  'floréal floreal',
  'prairial',
  'messidor',
  'thermidor fervidor',
  'fructidor',
];

/** Month 1 to 12 of a word, with or without a final dot. */
export function monthOfWord(word: string): number | undefined {
  return monthNumbers.get(bare(word));
}

/** EDTF season 21 to 24 of a word. */
export function seasonOfWord(word: string): number | undefined {
  const at = seasonNumbers.get(bare(word));
  return at === undefined ? undefined : at + 20;
}

/** Month 1 to 12 of the calendar of the French Republic. */
export function republicanMonthOfWord(word: string): number | undefined {
  return republicanNumbers.get(bare(word));
}

const monthNumbers = numbered(months);
const seasonNumbers = numbered(seasons);
const republicanNumbers = numbered(republicanMonths);

function numbered(lines: readonly string[]): ReadonlyMap<string, number> {
  return new Map(lines.flatMap((line, at) => line.split(' ').map(word => [word, at + 1] as const)));
}

function bare(word: string): string {
  return word.toLowerCase().replace(/\.$/, '');
}

/** Phrases that say that there is no date. */
export const undatedPhrases: ReadonlySet<string> = new Set([
  ...[
    'n.d',
    'nd',
    'n. d',
    's.a',
    's. a',
    's.d',
    's. d',
    'sd',
    'o.j',
    'o. j',
    's.f',
    's. f',
    's.n',
    'undated',
    'no date',
  ],
  ...['not dated', 'sine anno', 'ohne jahr', 'ohne jahresangabe', 'sans date', 'senza data', 'sin fecha', 'undatiert'],
  ...['date unknown', 'unknown date', 'unknown', 'date not known', 'date not identified', 'non daté', 'date inconnue'],
  ...['date of publication not identified', 'publication date not identified', 'date of production not identified'],
  ...['date of manufacture not identified', 'date of distribution not identified', 'date of creation not identified'],
]);
