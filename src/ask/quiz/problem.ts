import { roundUp } from '../../calc/quantity.ts';
import type { Unit } from '../../calc/units.ts';
import rollDown from '../../rules/quantities/roll-down.ts';
import type { Facts } from '../../rules/shapes.ts';
import type { Level } from './shapes.ts';

/** Figures that one fact of a problem is drawn from, and the unit they are said in. */
export type Draws = readonly [unit: Unit, figures: readonly number[]];

/** What a mistake works with: the right figure and the facts of the stem, in base units. */
export interface Case {
  readonly right: number;
  readonly fact: (id: string) => number;
}

/** The figure that somebody gets who makes a mistake, in base units. */
export type Mistake = (at: Case) => number;

/** A problem in figures: which facts are drawn, what is asked, and what goes wrong when people work it. Its stem is in the wording. */
export interface Problem {
  readonly id: string;
  readonly topics: readonly [string, ...string[]];
  readonly level: Level;
  /** A formula or a rule of thumb in feet and miles an hour: no problem for a metric set. */
  readonly inFeetOnly?: true;
  readonly finds: string;
  /** Unit of the answer, where it is not that of the record. */
  readonly unit?: Unit;
  readonly draws: Readonly<Record<string, Draws>>;
  /** Choices that are settled by the stem: an option, or one drawn from several. */
  readonly settled?: Readonly<Record<string, string | readonly string[]>>;
  /** Draws that make no fair problem are drawn again. */
  readonly fair?: (fact: (id: string) => number) => boolean;
  /** By the tag of each mistake. */
  readonly mistakes: Readonly<Record<string, Mistake>>;
}

/** Figures from `from` to `to` in steps; worked in whole steps, so that no dust gathers. */
export const steps = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, at) => Number((from + at * step).toPrecision(12)));

/** Loose over rolled, as it usually is: what is taken for the other comes out so many times over. */
export const loose = rollDown.default!.number;

/** A mistake that makes the answer so many times what it should be. */
export const timesOver =
  (factor: number): Mistake =>
  ({ right }) =>
    right * factor;

/** The figure of one fact, taken for the answer. */
export const takes =
  (id: string): Mistake =>
  ({ fact }) =>
    fact(id);

/** Depth taken as one inch, in an answer that grows with it. */
export const tookOneInch =
  (depth: string): Mistake =>
  ({ right, fact }) =>
    right / fact(depth);

/** One and a half inches read as a half; no mistake for another depth. */
export const halfForOneAndHalf =
  (depth: string): Mistake =>
  ({ right, fact }) =>
    fact(depth) === 1.5 ? right / 3 : Number.NaN;

/** Facts of a problem drawn anew, or given. */
export type Drawn = Facts;

/** Largest whole number not above `x`, float dust forgiven. */
export const roundDown = (x: number): number => 0 - roundUp(-x);
