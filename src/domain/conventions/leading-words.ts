const leadingWords =
  /^(?:(?:re-?)?(?:impres[oa]|impress[oa]|imprimé|gedruckt|printed|stampat[oa])\s+)?(?:at|in|à|a|an|zu|te|v|ve|w|we|u|en|na|i|på|apud|ἐν|εν|въ|в|у|на)\.?\s+(?=\p{Lu})/iu;

/** The name of a place without the "at" or "printed in" of its language: `we Lwowie`, `Reimpreso en Gerona`. */
export function withoutLeadingWords(name: string): string {
  return name.normalize('NFC').replace(leadingWords, '');
}
