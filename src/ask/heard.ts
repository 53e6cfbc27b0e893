import { type Cue, type Heard, hears } from './cue.ts';

/** True when a sentence says all that a cue must have, and nothing that rules it out. */
export function isHeard(cue: Cue, heard: Heard): boolean {
  return cue.needs.every((term) => hears(heard, term)) && !cue.bars.some((term) => hears(heard, term));
}
