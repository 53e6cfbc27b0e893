import type { NumberOptions } from './numbers.ts';

/** The side of a size that a number stands beside: in "12 x 300 inch deep" the 300 stands beside 12. */
export interface Side {
  readonly number: number;
  /** It has no unit of its own. */
  readonly bare: boolean;
  /** How many sides of the size stand before the number. */
  readonly count: number;
  /** Joined to the number by x or by, not only said before it ("12 wide 300 inch deep"). */
  readonly joined: boolean;
}

/** What stands before a quantity, as far as it tells how the quantity is read. */
export interface QuantityOptions extends NumberOptions {
  /** The figure before this one stands next to it, or is a factor of the same group, and is in feet. */
  readonly afterFeet?: boolean;
  readonly metric?: boolean;
  /** A figure stands right before, so that a hyphen is no sign. */
  readonly afterFigure?: boolean;
  /** The side said before this one. */
  readonly side?: Side | undefined;
}
