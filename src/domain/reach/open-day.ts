/** Stands for an open end in arrays of numbers, with a minus for an open beginning: no day is so far off. */
export const openDay = 1_000_000_000;
