/** Terms of the Library of Congress for the relators of illustrated publishing. https://www.loc.gov/marc/relators/ */
const terms: Readonly<Record<string, string>> = {
  acp: 'Art copyist',
  ant: 'Bibliographic antecedent',
  art: 'Artist',
  asn: 'Associated name',
  att: 'Attributed name',
  bjd: 'Bookjacket designer',
  bkd: 'Book designer',
  bkp: 'Book producer',
  bnd: 'Binder',
  bsl: 'Bookseller',
  clr: 'Colorist',
  clt: 'Collotyper',
  cov: 'Cover designer',
  dln: 'Delineator',
  drm: 'Draftsman',
  dsr: 'Designer',
  dst: 'Distributor',
  dte: 'Dedicatee',
  egr: 'Engraver',
  etr: 'Etcher',
  isb: 'Issuing body',
  ltg: 'Lithographer',
  mfr: 'Manufacturer',
  mte: 'Metal-engraver',
  plt: 'Platemaker',
  pop: 'Printer of plates',
  prm: 'Printmaker',
  prt: 'Printer',
  pbl: 'Publisher',
  str: 'Stereotyper',
  wdc: 'Woodcutter',
  wde: 'Wood engraver',
};

/** The term of a MARC relator code; `Associated name` for one that is not among them. */
export function relatorTerm(code: string): string {
  return terms[code] ?? 'Associated name';
}
