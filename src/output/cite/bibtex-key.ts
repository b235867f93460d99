import type { CslItem } from './csl-item.ts';

/** Letters that do not come apart into a base letter and marks. */
const letters: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
};

/**
 * The citation key of an item: family name or first word of the title, year, id. It depends on the item alone, so it
 * is the same in every list, and the id makes it unique.
 */
export function bibtexKey(item: CslItem): string {
  const first = item.author?.[0] ?? item.editor?.[0];
  const name = ascii(first?.family ?? first?.literal ?? '') || ascii(item.title) || 'anon';
  const year = item.issued?.['date-parts']?.[0]?.[0];
  return `${name}${year !== undefined && year > 0 ? year : ''}-${item.id.replace(/^edition-/, '').replace(/[^A-Za-z0-9-]+/g, '-')}`;
}

function ascii(text: string): string {
  const base = text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[^a-z0-9\s-]/g, character => letters[character] ?? '');
  const words = base
    .split(/[\s-]+/)
    .filter(
      word =>
        /^[a-z]{2,}/.test(word) &&
        !/^(?:the|an|der|die|das|la|le|les|el|il|de|von|van|den|ten|ter|zu|zum|zur|di|da|del|du|des|dos|af|av)$/.test(
          word,
        ),
    );
  return words[0] ?? '';
}
