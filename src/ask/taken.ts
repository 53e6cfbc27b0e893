import type { Figure } from '../calc/read/reading.ts';
import type { Fact } from './facts.ts';

/** The figures and choices of a question, taken in the light of a goal. */
export interface Taken {
  /** Quantities that a word gives a figure for. */
  readonly told: ReadonlySet<string>;
  readonly fresh: readonly Fact[];
  readonly facts: readonly Fact[];
  readonly unbound: readonly Figure[];
  /** The roles that the figures have, and how well words and places tell them. */
  readonly roles: readonly { readonly figure: Figure; readonly quantity: string; readonly told: boolean }[];
  readonly weight: number;
}
