/** Remarks that an answer about reach carries. */
export const answerFlags = {
  CIRCA: 'a date is approximate',
  UNCERTAIN: 'a date is marked uncertain; its bounds are taken as written',
  ASSUMED: 'a way without a recorded route was reckoned from its length',
  IMPRINT_AHEAD: 'the book may have been for sale before the year of its imprint',
  MARK_WINDOW: 'the object is dated by a mark, its decoration is not dated itself',
  PLACE_UNKNOWN: 'where it was published, or where the way leads, is not known',
  BEYOND_CALENDAR: 'a year lies too far off to be counted in days and bounds nothing',
  SUPPOSED: 'claims were supposed or left out for the question',
  SUPPLIED: 'a date was supplied by the cataloguer',
  REGION_UNKNOWN: 'the country of a place is not known, so that no route between regions could be fitted',
  INEXACT: 'not every combination of alternatives was tried',
} as const;

export type AnswerFlag = keyof typeof answerFlags;
