import type { Citable } from './citable.ts';
import type { CslItem } from './csl-item.ts';
import { editionToCsl } from './edition-to-csl.ts';
import { exemplarToCsl } from './exemplar-to-csl.ts';
import { objectToCsl } from './object-to-csl.ts';
import { plateToCsl } from './plate-to-csl.ts';
import { sourceToCsl } from './source-to-csl.ts';

/** Anything that can be cited as a CSL-JSON item (schema 1.0.2), worded in the language where CSL only holds words. */
export function toCsl(citable: Citable, language = 'en'): CslItem {
  switch (citable.what) {
    case 'plate':
      return plateToCsl(citable, language);
    case 'artwork':
    case 'piece':
      return objectToCsl(citable, language);
    case 'exemplar':
      return exemplarToCsl(citable, language);
    case 'source':
      return sourceToCsl(citable);
    default:
      return editionToCsl(citable, language);
  }
}
