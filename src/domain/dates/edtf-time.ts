import { type EdtfDate, readDate } from './edtf-date.ts';
import { type EdtfFault, edtfFault, isEdtfFault } from './edtf-fault.ts';

const timeForm = /^([01]\d|2[0-3]):[0-5]\d:[0-5]\d(?:Z|([+-])(\d\d)(?::([0-5]\d))?)?$/;

/**
 * Reads a date with time of day: level 0, "Date and Time", hours to whole seconds, and the shift from UTC in hours
 * or hours and minutes. The day is the day as written, whatever the shift.
 */
export function readDateTime(text: string): EdtfDate | EdtfFault {
  const cut = text.indexOf('T');
  const date = readDate(text.slice(0, cut));
  if (isEdtfFault(date)) return date;
  if (date.components !== 3 || date.unspecified || date.marks.length > 0) {
    return edtfFault('a whole day without X or qualifiers before T');
  }
  const match = timeForm.exec(text.slice(cut + 1));
  if (match === null) return edtfFault('a time as 23:20:30, 23:20:30Z, 23:20:30-04 or 23:20:30+04:30 after T');
  const [, , sign, hours, minutes] = match;
  return sign === undefined || isShift(sign, Number(hours) * 60 + Number(minutes ?? 0))
    ? date
    : edtfFault('a shift from UTC of -12:00 to +14:00, and not -00:00');
}

/** The shifts that clocks use; ISO 8601-1 has no negative shift of nothing. */
function isShift(sign: string, minutes: number): boolean {
  return sign === '-' ? minutes > 0 && minutes <= 12 * 60 : minutes <= 14 * 60;
}
