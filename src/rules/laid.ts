import type { Way } from '../calc/relation.ts';

/** What joining the records as shipped comes to, so that a start need not turn every formula round. */
export interface LaidKnowledge {
  readonly version: string;
  /** The ways each relation can be worked, in the order of the relations; a phone works them out, for they are long. */
  readonly ways?: readonly (readonly Way[])[];
}

/** Laid down by the build, in place of this file (`scripts/laid.mjs`); run from its sources the program works it out at its start. */
export const laid: LaidKnowledge | undefined = undefined;
