/** Why a text is no EDTF expression: what was expected in the place that failed. */
export interface EdtfFault {
  readonly expected: string;
}

export function edtfFault(expected: string): EdtfFault {
  return { expected };
}

export function isEdtfFault(value: object): value is EdtfFault {
  return 'expected' in value;
}
