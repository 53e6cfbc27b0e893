import type { Figure } from '../calc/read/reading.ts';
import type { Unit } from '../calc/units.ts';
import type { QuantityRecord } from '../rules/shapes.ts';
import type { UnitSystem } from './reply.ts';
import type { Titles } from './titles.ts';

/** What helps to tell which role a figure has. */
export interface Context {
  readonly quantities: ReadonlyMap<string, QuantityRecord>;
  /** Quantities that a word beside a figure speaks of. */
  readonly byWord: ReadonlyMap<string, readonly QuantityRecord[]>;
  /** Quantities by their whole titles, in head words. */
  readonly titles: Titles;
  /** Quantities that have a place in a group like 12 x 300 x 2. */
  readonly sides: readonly QuantityRecord[];
  /** Words that stand before any figure at all: they tell little. */
  readonly weak: ReadonlySet<string>;
  /** True when something is asked; `near` then has to do with that, else with the patch itself. */
  readonly aimed: boolean;
  /** Steps from each quantity to what is asked; absent when it has nothing to do with it. */
  readonly near: ReadonlyMap<string, number>;
  /** Quantities asked for: a figure is not read as the very thing asked, unless it is being checked. */
  readonly sought: ReadonlySet<string>;
  /** Places of names whose figures are their own even where they are spoken of: of a sentence that asks nothing. */
  readonly names: ReadonlySet<number>;
  /** Positions of the words that say what is asked: they tell no figure its role. */
  readonly spent: ReadonlySet<number>;
  /** Figures the job carries: one said without a word of its role takes the place of the likest. */
  readonly kept: ReadonlyMap<string, { readonly number: number; readonly unit: Unit }>;
  /** Quantities whose title before a figure means another: the bound that a limit works out, and the figure it judges. */
  readonly meant?: ReadonlyMap<string, QuantityRecord> | undefined;
  /** What the last reply asked for. */
  readonly asked?: string | undefined;
  /** What the limit asked about is on. */
  readonly judged?: string | undefined;
  /** Quantities that words give a figure for: an untold figure is not one of them. */
  readonly inWords?: ReadonlySet<string> | undefined;
  /** Roles that a figure is not to have. */
  readonly without?: ReadonlyMap<Figure, ReadonlySet<string>> | undefined;
  readonly system: UnitSystem;
}
