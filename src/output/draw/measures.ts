/** Sizes in user units (CSS pixels). Every level of the drawing is a multiple of `grid`. */
export const measures = {
  grid: 6,
  /** Half the size of a mark. */
  mark: 5,
  /** Half the size of the ring around the mark that was asked about. */
  ring: 9.2,
  /** From the middle of a mark down to the bar of its days, on which it stands. */
  bar: 7.2,
  /** The same where its name stands beside it. */
  barBeside: 8.6,
  /** From the middle of a mark down to the line on which its name is written. */
  nameBase: 18,
  /** From the middle of a mark to the name that hangs below it on the right. */
  nameGap: 9,
  line: 12,
  nameSize: 11,
  smallSize: 9.5,
  /** Distance between lines that come to one mark. */
  portGap: 9,
  /** A line needs so much room for its sign and arrow; a nearer copy is reached round the left. */
  nearest: 34,
  /** How far a line round the left reaches out, and how far above or below its mark it does. */
  reach: 34,
  shoulder: 12,
  /** Radius of the corners of lines. */
  corner: 5,
  /** Room kept free around a line. */
  lineRoom: 4,
  /** Length of an end of days that is open. */
  fade: 40,
  margin: 44,
  platesInRow: 20,
} as const;
