/** Degrees, WGS 84; north and east positive. */
export interface Coordinates {
  readonly lat: number;
  readonly lon: number;
}

/** A town or region as far as routes need it: all but the name may be unknown. */
export interface LocatedPlace {
  readonly name: string;
  readonly coordinates?: Coordinates | undefined;
  /** MARC country code (`enk`, `fr`, `gw`), without padding. */
  readonly country?: string | undefined;
}
