import { kindOfId } from '../model/id.ts';
import { dateRule } from './date-rule.ts';
import { dateVariable } from './date-variable.ts';

export const editionRules = [
  dateRule(
    'x5',
    'Appearance',
    'A plate was made no later than an edition that it is in was published.',
    ({ id, plate, edition, presence }, rule) =>
      presence === 'PRESENT'
        ? { links: [rule.inOrder(dateVariable(plate, 'made'), dateVariable(edition, 'published'), [id])] }
        : {},
  ),
  dateRule(
    'x6',
    'Appearance',
    'A state was made no later than an edition that it is in was published.',
    ({ id, state, edition, presence }, rule) =>
      presence === 'PRESENT' && state !== undefined
        ? { links: [rule.inOrder(dateVariable(state, 'made'), dateVariable(edition, 'published'), [id])] }
        : {},
  ),
  dateRule(
    'x10',
    'EditionDescent',
    'An edition was published no later than one that was made from it.',
    ({ id, earlier, later }, rule) => ({
      links: [rule.inOrder(dateVariable(earlier, 'published'), dateVariable(later, 'published'), [id])],
    }),
  ),
  dateRule(
    'x11',
    'PartOf',
    'A part was published no later than the volume it belongs to, and a number of a serial while the serial ran.',
    ({ id, part, whole }, rule, { claimsAt }) => {
      if (kindOfId(part) !== 'Edition') return {};
      const published = dateVariable(part, 'published');
      const runs = claimsAt('Dating', 'of', whole).some(({ event }) => event === 'RAN');
      if (runs || kindOfId(whole) === 'Work') {
        return { links: rule.chain([dateVariable(whole, 'began'), published, dateVariable(whole, 'ended')], [id]) };
      }
      return {
        links: kindOfId(whole) === 'Edition' ? [rule.inOrder(published, dateVariable(whole, 'published'), [id])] : [],
      };
    },
  ),
  dateRule(
    'x12',
    'Imprint',
    'An edition reached the place of a bookseller whom its imprint names no earlier than it was published.',
    ({ id, edition, place, role }, rule) =>
      role === 'BOOKSELLER' && place !== undefined
        ? { links: [rule.inOrder(dateVariable(edition, 'published'), dateVariable(edition, 'arrived', place), [id])] }
        : {},
  ),
];
