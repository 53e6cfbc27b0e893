import type { Unit } from '../units.ts';

/** What a language needs to word figures; another language is another table of this shape. */
export interface FigureWords {
  readonly decimal: string;
  readonly thousands: string;
  /** A figure rounded so far that it has to be said: `about 7/8 in`. */
  readonly about: (figure: string) => string;
  /** The exact decimal beside a rounded figure. */
  readonly beside: (figure: string, exact: string) => string;
  readonly range: (low: string, high: string) => string;
  /** Each unit with `#` where the number stands: with the number 1, and with any other. */
  readonly units: Readonly<Record<Unit, readonly [one: string, other: string]>>;
}
