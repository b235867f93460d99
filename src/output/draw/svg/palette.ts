/** Colours of the drawing. Each kind of line and mark can be told from the others without them. */
export const palette = {
  paper: '#fffdf7',
  ink: '#1f1b16',
  /** Second lines of names, years, notes. */
  soft: '#574f43',
  /** Bars of days. */
  bar: '#94897a',
  /** Lines of the years: to guide the eye, nothing is said by them alone. */
  hair: '#e0d8c9',
  contradiction: '#9a1b1b',
} as const;

/** Book faces that readers have; none is fetched. */
export const typeface =
  "'EB Garamond', Garamond, 'Iowan Old Style', 'Palatino Linotype', Palatino, Georgia, 'Times New Roman', serif";
