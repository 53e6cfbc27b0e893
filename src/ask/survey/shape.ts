import type { Span } from '../../calc/survey/tokens.ts';
import type { Unit } from '../../calc/units.ts';

/** One place along the road where depths were read. */
export interface SurveyStation {
  /** As it was typed (0+50), else the distance from the first reading in words. */
  readonly label: string;
  /** Distance along the road, in `units.along`. */
  readonly at: number;
  /** Where across each depth was read, from the left edge, in `units.across`. */
  readonly offsets: readonly number[];
  /** Depths from left to right, in `units.depth`. */
  readonly readings: readonly number[];
  /** Mean depth across the width, in `units.depth`. */
  readonly average: number;
  readonly deepest: number;
  /** Lifts that the deepest reading here takes. */
  readonly lifts: number;
  /** Where the row stands in the question, when it was sent with this one. */
  readonly from?: Span;
}

/** A volume by one of the two rules. */
export interface SurveyVolume {
  readonly method: 'trapezoid' | 'simpson';
  readonly number: number;
  readonly unit: Unit;
  readonly text: string;
}

/** A low that is filled before the lifts that go over all. */
export interface SurveyLow {
  readonly label: string;
  readonly at: number;
  /** Its deepest reading, in `units.depth`. */
  readonly deepest: number;
  /** Lifts here, those over all included. */
  readonly lifts: number;
}

/** Depths read across and along a patch, and what comes of them: enough to draw the profile from. */
export interface Survey {
  readonly units: { readonly along: Unit; readonly across: Unit; readonly depth: Unit };
  /** Width of the patch, in `units.across`. */
  readonly width: number;
  /** In order along the road; one alone is a section across it. */
  readonly stations: readonly SurveyStation[];
  readonly straightedge?: { readonly number: number; readonly unit: Unit };
  /** By trapezoids first; by Simpson's rule where it can be worked. */
  readonly volumes: readonly SurveyVolume[];
  readonly deepest: { readonly label: string; readonly at: number; readonly offset: number; readonly depth: number };
  /** Thickest lift that the lifts were counted with, in `units.depth`, and the lifts that go over all. */
  readonly lift: { readonly most: number; readonly overAll: number };
  /** Lows to fill first, the deepest first. */
  readonly fill: readonly SurveyLow[];
}

/** Readings as the job carries them from turn to turn. */
export interface JobSurvey {
  readonly turn: number;
  readonly units: { readonly along: 'ft' | 'm'; readonly depth: 'in' | 'mm' };
  readonly rows: readonly {
    readonly label?: string;
    /** Place along the road, in `units.along`; absent in a list at equal steps. */
    readonly at?: number;
    readonly readings: readonly number[];
    readonly width?: number;
  }[];
  /** Where across the readings stand, in `units.along`. */
  readonly offsets?: readonly number[];
  /** True for one section across the road. */
  readonly across?: boolean;
  readonly straightedge?: number;
  /** Rows that could not be read, as they were typed: sent again or left out, the readings are worked. */
  readonly unread?: readonly string[];
}
