import type { CueTable } from './cue-index.ts';
import type { LaidWords } from './vocabulary.ts';

/** What the cues and words of the rules as shipped come to, so that a start need not read them all. */
export interface LaidCues {
  readonly goals: CueTable;
  readonly options: CueTable;
  readonly inWords: CueTable;
  readonly open: CueTable;
  readonly commands: CueTable;
  readonly repairs: CueTable;
  readonly stages: CueTable;
  readonly emergencies: CueTable;
  readonly titles: string;
  readonly words: LaidWords;
  readonly emergencyWords: LaidWords;
}

/** Laid down by the build, in place of this file (`scripts/laid.mjs`); run from its sources the program works it out at its start. */
export const laid: LaidCues | undefined = undefined;
