import type { Solution } from '../calc/solve.ts';
import type { Unit } from '../calc/units.ts';
import type { Knowledge } from '../rules/knowledge.ts';

/** How figures of an answer are worded: in its units. */
export interface Voice {
  readonly knowledge: Knowledge;
  readonly solved: Solution;
  readonly unit: (id: string) => Unit;
  /** True for a figure the asker gave: it is echoed as typed. */
  readonly isGiven: (id: string) => boolean;
}
