import type { PlateInEdition } from '../domain/descent/editions-plates.ts';
import type { Descent } from '../questions/descent-answer.ts';
import { daysJson } from './days-json.ts';

/** The answer with the names of the API: ids stand for records and claims, days are written out. */
export function descentJson({ of, editions, steps, contradictions, cut, grounds }: Descent): unknown {
  return {
    asked: of,
    editions: editions.map(edition => ({
      ...edition,
      published: daysJson(edition.published),
      recorded: daysJson(edition.recorded),
      plates: edition.plates.map(plateJson),
    })),
    steps,
    contradictions: contradictions.map(({ daysShort = null, ...each }) => ({ ...each, daysShort })),
    cut,
    grounds,
  };
}

function plateJson({ plate, fate, from, by }: PlateInEdition): unknown {
  return { plate, fate, fromPlate: from?.plate ?? null, fromEdition: from?.edition ?? null, restsOn: by };
}
