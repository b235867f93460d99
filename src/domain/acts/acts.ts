import type { Act } from './act.ts';
import { copies } from './copies.ts';
import { looking } from './looking.ts';
import { opinion } from './opinion.ts';
import { photographs } from './photographs.ts';
import { piece } from './piece.ts';
import { plates } from './plates.ts';
import { print } from './print.ts';
import { samePlates } from './same-plates.ts';

/** Every act, by the name of its mutation. The order is that of generated files and of help. */
export const acts = {
  recordPiece: piece,
  recordPrint: print,
  recordPlates: plates,
  recordSamePlates: samePlates,
  recordCopies: copies,
  recordLooking: looking,
  recordOpinion: opinion,
  recordPhotographs: photographs,
} as const satisfies Readonly<Record<string, Act>>;

export type ActName = keyof typeof acts;

export const actNames = Object.keys(acts) as readonly ActName[];
