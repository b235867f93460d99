/** How a language says where a printed image stands, and what it is called without a caption. From memory. */
export interface LocatorWords {
  readonly plate: string;
  readonly cut: string;
  readonly vignette: string;
  readonly cover: string;
  readonly print: string;
  readonly number: string;
  readonly volume: string;
  readonly page: string;
  /** Before the page that a plate faces. */
  readonly facing: string;
}

const words: Readonly<Record<string, LocatorWords>> = {
  en: {
    plate: 'plate',
    cut: 'cut',
    vignette: 'vignette',
    cover: 'cover',
    print: 'print',
    number: 'no.',
    volume: 'vol.',
    page: 'p.',
    facing: 'facing p.',
  },
  de: {
    ...{ plate: 'Tafel', cut: 'Abbildung', vignette: 'Vignette', cover: 'Umschlag', print: 'Druckgraphik' },
    ...{ number: 'Nr.', volume: 'Bd.', page: 'S.', facing: 'gegenüber S.' },
  },
  fr: {
    ...{ plate: 'planche', cut: 'figure', vignette: 'vignette', cover: 'couverture', print: 'estampe' },
    ...{ number: 'n°', volume: 'vol.', page: 'p.', facing: 'en regard de la p.' },
  },
  it: {
    ...{ plate: 'tavola', cut: 'figura', vignette: 'vignetta', cover: 'copertina', print: 'stampa' },
    ...{ number: 'n.', volume: 'vol.', page: 'p.', facing: 'di fronte a p.' },
  },
  es: {
    ...{ plate: 'lámina', cut: 'figura', vignette: 'viñeta', cover: 'cubierta', print: 'estampa' },
    ...{ number: 'n.º', volume: 'vol.', page: 'p.', facing: 'frente a la p.' },
  },
  nl: {
    ...{ plate: 'plaat', cut: 'afbeelding', vignette: 'vignet', cover: 'omslag', print: 'prent' },
    ...{ number: 'nr.', volume: 'deel', page: 'p.', facing: 'tegenover p.' },
  },
};

/** Words of the language of a BCP 47 tag; English if it has none. */
export function locatorWords(language: string): LocatorWords {
  return words[language.split('-')[0]!.toLowerCase()] ?? words['en']!;
}
