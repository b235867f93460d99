/**
 * Parts the date from the end of an imprint: years with their brackets, doubts and ranges, also of the French
 * republican calendar (`an IX`). Undefined if the text does not end so.
 */
export function trailingDate(text: string): readonly [rest: string, date: string | undefined] {
  const found = date.exec(text);
  if (found === null) return [text, undefined];
  const rest = text.slice(0, found.index);
  const words = found[0].replace(/^[\s,.:;]+|[\s,.;]+$/g, '');
  return [rest, stripped(words)];
}

const date =
  /(?:^|[\s,.:;[(])(?:an (?:\d{1,2}|[ivxlc]{1,5})\b[.,]?[\s[]*)?[[(]?(?:(?:ca|c|circa)\.? ?)?\d{4}(?:[\s\d,.\-–/?[\]()&]|\bca?\.|\bcirca\b)*$/iu;

/** The stop that ends the record goes; a date inside a bracket that opened before the place gets a bracket of its own. */
function stripped(words: string): string {
  const ended = words.replace(/\.\]$/, ']');
  const openedBefore = ended.split('[').length < ended.split(']').length;
  return openedBefore ? `[${ended}` : ended;
}

/**
 * Parts the extent from the head of an imprint: pages, leaves, plates, volumes in their abbreviations, or a bracketed
 * remark such as `[A card.]`. Undefined if the text does not begin so.
 */
export function leadingExtent(text: string): readonly [rest: string, extent: string | undefined] {
  let at = remark.exec(text)?.[0].length ?? 0;
  let hasUnit = at > 0;
  for (;;) {
    const rest = text.slice(at);
    const token = unit.exec(rest) ?? number.exec(rest);
    if (token === null) break;
    hasUnit ||= unit.test(rest);
    at += token[0].length;
  }
  if (!hasUnit) return [text, undefined];
  return [text.slice(at), text.slice(0, at).replace(/[\s,;:.]+$/, '')];
}

/** Small letters where a capital would be an initial (`T. Cadell`, `F. C. & J. Rivington`). */
const unit =
  /^(?:pp?|ff?|pl|vols?|pts?|tom|t|[Bb]de?|[Tt]le?|[Tt]h|[Aa]bt|[Hh]fte?|[Dd]l|deel|díly?|dílů|nos?|ser|livr|fasc|cah|cz|sv|zesz)(?![\p{L}’'])\.?[,;:.]*\s*/u;
/** Roman numerals in small letters, with a mark or a figure behind (`v Praze` is "at Prague"); in capitals after a unit. */
const number =
  /^\[?(?:\d{1,4}(?:[-–]\d{1,4})?|[ivxlcdm]+(?=[\].,;:]|\s+\d)|[IVXLC]{2,})\]?(?![\p{L}\p{N}’'])[,;:.]*\s*/u;
const remark = /^\[A [\p{Ll} ]{2,40}\.?\]\s*/u;
