import type { CitableExemplar } from './citable.ts';
import { compact } from './compact.ts';
import type { CslItem } from './csl-item.ts';
import { editionToCsl } from './edition-to-csl.ts';
import { joinedNote, sentence } from './roles-note.ts';

/**
 * One copy as a CSL-JSON item: that of its edition, with holder and shelfmark as they are written, and what it wants.
 * An album of no edition is a `collection`.
 */
export function exemplarToCsl(exemplar: CitableExemplar, language = 'en'): CslItem {
  const { id, shelfmark, wants, edition } = exemplar;
  const whole: CslItem = edition === undefined ? album(exemplar) : editionToCsl(edition, language);
  return compact({
    ...whole,
    id,
    archive: shelfmark,
    URL: exemplar.access ?? whole.URL,
    note: joinedNote([
      ...(whole.note === undefined ? [] : [whole.note]),
      ...(wants === undefined ? [] : [sentence(`Wants ${wants}`)]),
    ]),
    custom: compact({ ...whole.custom, id, edition: edition?.id, shelfmark, wants }),
  });
}

function album({ id, title, shelfmark }: CitableExemplar): CslItem {
  return { id, type: 'collection', title: title ?? shelfmark ?? '[album]', custom: { id } };
}
