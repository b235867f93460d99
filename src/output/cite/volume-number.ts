/** `Vol. 3`, `Bd. 3`, `3`: a number of its own. Anything wordier belongs to the title. */
export function volumeOf(number: string | undefined): string | undefined {
  return /^(?:v|vol|volume|bd|band|t|tom|tome|tomo|deel|d)?\.?\s*(\d{1,4}|[IVXLC]{1,7})\.?$/iu.exec(
    number?.trim() ?? '',
  )?.[1];
}
