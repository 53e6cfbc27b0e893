import type { PartId } from './layout-names.ts';
import type { Sources } from './shapes.ts';

/** Which layout is drawn: the options of the choice of that name. */
export type LayoutKind = 'flaggers' | 'lane-closed' | 'shoulder';

/**
 * One part of a layout, set down outward from the work. A `stretch` is as long as the quantity named; a `post` stands at
 * the distance named from the part before it, or right at its end.
 */
export type Part =
  | { readonly is: 'stretch'; readonly part: PartId; readonly length: string; readonly spacing?: string }
  | { readonly is: 'post'; readonly part: PartId; readonly after?: string; readonly sign?: true };

/** A layout as data: what stands before the work as traffic comes to it, what stands past it, and how the work is lined. */
export interface Plan {
  readonly kind: LayoutKind;
  /** The quantity that says how long it is from its outermost place to its outermost place. */
  readonly length: string;
  /** Other quantities of which it is the layout. */
  readonly shows: readonly string[];
  /** From the work outward, against the traffic of the closed lane. */
  readonly approach: readonly Part[];
  /** From the work outward, past its far end. */
  readonly past: readonly Part[];
  /** Spacing of the devices along the work and along a stretch that names none. */
  readonly spacing: string;
  /** Devices that come in a number of their own: paddles, boards. */
  readonly with: readonly { readonly part: PartId; readonly perPost: PartId }[];
  /** Signs that may be added and have no distance of their own here. */
  readonly mayAdd: readonly PartId[];
  readonly sources: Sources;
}
