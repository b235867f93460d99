/** Ordinals written out, as title pages have them; languages of the bundled locales and Latin. */
const ordinals: readonly (readonly [number, string])[] = [
  [1, 'first|erste|erster|premi[èe]re|prima|primera|eerste'],
  [2, 'second|zweite|seconde|deuxi[èe]me|seconda|segunda|tweede|secunda'],
  [3, 'third|dritte|troisi[èe]me|terza|tercera|derde|tertia'],
  [4, 'fourth|vierte|quatri[èe]me|quarta|cuarta|vierde'],
  [5, 'fifth|f[üu]nfte|cinqui[èe]me|quinta|vijfde'],
  [6, 'sixth|sechste|sixi[èe]me|sesta|sexta|zesde'],
  [7, 'seventh|siebente|siebte|septi[èe]me|settima|s[ée]ptima|zevende'],
  [8, 'eighth|achte|huiti[èe]me|ottava|octava|achtste'],
  [9, 'ninth|neunte|neuvi[èe]me|nona|novena|negende'],
  [10, 'tenth|zehnte|dixi[èe]me|decima|d[ée]cima|tiende'],
];

const edition = '(?:editions?|edn|ed|auflage|aufl|ausgabe|éditions?|éd|edizione|edición|druk|uitgave|editio)\\.?';
const numeral = new RegExp(`^(?:the |die |la )?(\\d{1,3})(?:st|nd|rd|th|d|e|de|ste|è?me|[.ªº])?\\s*${edition}$`, 'iu');
const written = ordinals.map(
  ([number, forms]) =>
    [number, new RegExp(`^(?:the |die |la )?(?:(?:${forms}) ${edition}|${edition} (?:${forms}))$`, 'iu')] as const,
);

/** The number of an edition statement that says nothing else (`2nd ed.`, `Zweite Auflage`), else undefined. */
export function editionNumber(statement: string): number | undefined {
  const text = statement
    .trim()
    .replace(/^\[(.*)\]$/u, '$1')
    .replace(/\s*[.,;:]$/u, '')
    .replace(/\s+/gu, ' ');
  const digits = /^\d{1,3}$/u.exec(text) ?? numeral.exec(text);
  if (digits !== null) return Number(digits[1] ?? digits[0]);
  return written.find(([, form]) => form.test(text))?.[0];
}
