/** Longest phrase that is looked at; longer ones are refused. */
export const longestPhrase = 200;

/**
 * The phrase with dashes and apostrophes made plain, spaces collapsed, ISBD end punctuation gone, and brackets that
 * enclose the whole or were opened or closed in another subfield taken off. Brackets inside stay.
 */
export function normalisePhrase(text: string): string {
  const plain = text
    .normalize('NFC')
    .replace(/[\u2010-\u2015\u2212\uFE58\uFF0D]/g, '-')
    .replace(/[\u2018\u2019\u02BC]/g, "'")
    .replace(/[\u00A0\s]+/g, ' ')
    .replace(/-? ?<[^<>]*>$/, open => (open.startsWith('-') ? '-' : open.replace(/[<>]/g, '')))
    .replace(/[<>]/g, '');
  return stripEnclosing(plain);
}

/** The phrase without any bracket, and whether it ended with a question mark, which is then gone too. */
export function withoutBrackets(text: string): { readonly plain: string; readonly doubtful: boolean } {
  const bare = stripEnd(text.replace(/[[\]]/g, ''));
  const plain = bare.replace(/(?: ?(?:\(\?\)|\?))+$/, '');
  const stays = plain === '' || (plain !== bare && /-$/.test(plain) && /^\d{4}/.test(plain));
  return { plain: stays ? bare : plain.trim(), doubtful: plain !== bare && !stays };
}

function stripEnclosing(text: string): string {
  let now = text;
  for (let turn = 0; turn < 3; turn += 1) {
    const stripped = stripEnd(now);
    const opens = stripped.lastIndexOf('[');
    const closes = stripped.indexOf(']');
    if (stripped.startsWith('[') && opens === 0 && (closes === -1 || closes === stripped.length - 1)) {
      now = stripped.slice(1, closes === -1 ? undefined : -1);
    } else if (opens === -1 && closes !== -1 && closes === stripped.length - 1) now = stripped.slice(0, -1);
    else if (nested(stripped)) now = stripped.slice(1, -1);
    else return stripped;
  }
  return stripEnd(now);
}

/** `[X [Y]]`: the first bracket is closed by the last. */
function nested(text: string): boolean {
  return text.startsWith('[') && text.endsWith(']]');
}

function stripEnd(text: string): string {
  return text
    .trim()
    .replace(/[.,;: ]+$/, '')
    .trim();
}
