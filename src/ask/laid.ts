import type { CueTable } from './cue-index.ts';

/** What the cues of the rules as shipped come to, so that a start need not read them all. */
export interface LaidCues {
  readonly goals: CueTable;
  readonly options: CueTable;
  readonly inWords: CueTable;
  readonly open: CueTable;
  readonly emergencies: CueTable;
}

/** Laid down by the build, in place of this file (`scripts/laid.mjs`); run from its sources the program works it out at its start. */
export const laid: LaidCues | undefined = undefined;
