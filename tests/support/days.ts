/** Days from 1970-01-01 to a date (ISO 8601, a year of four digits) by the clock of JavaScript, apart from our own calendar. */
export function days(date: string): number {
  return Date.parse(`${date}T00:00:00Z`) / 86_400_000;
}
