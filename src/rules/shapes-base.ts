import type { Dimension } from '../calc/dimension.ts';
import type { Measure } from '../calc/quantity.ts';
import type { Sources } from './source.ts';

/** What every record has. */
export interface Base {
  /** The file's name; lower case, words joined by hyphens. */
  readonly id: string;
  /** What it is called, lower case, to stand inside a sentence. */
  readonly title: string;
  /** Why it is so: the mechanism, not the rule again. */
  readonly because: string;
  readonly sources: Sources;
  /**
   * What people type when they ask for it, each line a set of head words (`words.ts`) that must all be there, in any order:
   * `a|b` either, `a+b` side by side in this order, `?a` makes it likelier, `-a` rules it out, `#length` a figure of that
   * dimension, `@check` a yes-or-no question, `@why` a question for the reason.
   */
  readonly cues?: readonly string[];
  /** Other words it is known by, for the search alone. */
  readonly alsoCalled?: readonly string[];
}

/** A figure with its unit, as written in a record. */
export type Figure<D extends Dimension = Dimension> = Measure<D>;
