/** What a bare ampersand is read as: a reference to a character that XML does not have, so an error where it stands. */
export const bareAmpersand = '&#0;';

const bare = /&(?!#\d{1,7};|#x[\da-f]{1,6};|[a-z_:][\w.:-]{0,40};)/gi;
/** Longest reference, with its ampersand and semicolon. */
const longest = 45;

/**
 * Marks ampersands that begin no reference (`Ward & Lock`). An XML parser looks for the semicolon of a bare ampersand
 * through all that follows, and would take the next records with it; the mark keeps the error in its place.
 */
export class BareAmpersands {
  #held = '';

  /** The text so far, without an end that may be the beginning of a reference. */
  write(text: string): string {
    const all = this.#held + text;
    const last = all.lastIndexOf('&');
    const cut = last >= 0 && all.length - last < longest && !all.includes(';', last) ? last : all.length;
    this.#held = all.slice(cut);
    return marked(all.slice(0, cut));
  }

  end(): string {
    const rest = marked(this.#held);
    this.#held = '';
    return rest;
  }
}

function marked(text: string): string {
  return text.includes('&') ? text.replace(bare, bareAmpersand) : text;
}
