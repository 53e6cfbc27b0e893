import type { Unit } from '../units.ts';

/** A place in the text as it was sent, in UTF-16 positions. */
export type Place = readonly [start: number, end: number];

/** What a reader makes of a text: figures, words, names and marks in the order they stand. */
export type Item = Figure | Word | Name | Mark;

/** A number with or without its unit. */
export interface Figure {
  readonly kind: 'figure';
  /** The figure as written, in `unit`; for a range the middle, for a bound the figure named. */
  readonly number: number;
  /** Both ends of a range: "2 to 3 in". */
  readonly low?: number;
  readonly high?: number;
  /** Absent for a bare number. */
  readonly unit?: Unit;
  /** The unit as typed where it can mean two things: `t`, `m`, `yd` (length, area or volume), `deg`, `tonelada`, `gal/yd`. */
  readonly unclear?: string;
  /** "about 2 in", "a couple of inches". */
  readonly about?: true;
  /** "no more than", "at least": the figure is an end, not the value. */
  readonly bound?: 'at-most' | 'at-least' | 'under' | 'over';
  /** "4 inches or so", "per": how it stood; `each` for "10 ft each", `apart` for "every 20 ft" and "20 ft apart". */
  readonly manner?: 'each' | 'apart';
  /** Figures joined by x or by ("12 x 300 x 2") share a number and count up from 0. */
  readonly group?: number;
  readonly index?: number;
  /** "38 and rising". */
  readonly trend?: 'rising' | 'falling';
  /** How the number was written: a plain count of things, a fraction, a ratio with both parts, a span between two stations. */
  readonly form?: 'ratio' | 'station-span' | 'milepost-span' | 'fraction' | 'spelled';
  /** For a ratio a:b, both parts. */
  readonly parts?: readonly [number, number];
  readonly at: Place;
}

/** A word, in lower case, as typed; marks inside it (don't, cut-back) are kept. */
export interface Word {
  readonly kind: 'word';
  readonly text: string;
  readonly at: Place;
}

/** What looks like a figure and is none: a grade (SS-1h), a route, a sieve, a place on the road, a time of day. */
export interface Name {
  readonly kind: 'name';
  readonly sort: 'grade' | 'route' | 'sieve' | 'station' | 'milepost' | 'clock' | 'other';
  readonly text: string;
  readonly at: Place;
}

/** A full stop, comma, question mark, or line end. */
export interface Mark {
  readonly kind: 'mark';
  readonly text: '.' | ',' | ';' | '?' | '!' | ':' | '\n' | '(' | ')';
  readonly at: Place;
}

export interface ReadingOptions {
  /** What a bare or two-sided unit is taken for. */
  readonly units?: 'us' | 'metric';
}
