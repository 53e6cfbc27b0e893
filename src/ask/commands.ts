import { cueIndex, heardIn } from './cue-index.ts';
import { laid } from './laid.ts';
import type { Sentence } from './sentence.ts';
import { tradeCue } from './trade-cue.ts';
import { commandCues } from './wording/commands.ts';

/** What a person tells the assistant itself, apart from any question of the trade. */
export type Command = keyof typeof commandCues;

const commands = Object.keys(commandCues) as Command[];

/** The cues of all commands. */
export const commandIndex = cueIndex(
  () => commands.flatMap((command) => commandCues[command].map((text) => ({ text, of: command }))),
  tradeCue,
  laid?.commands,
);

/** Words that commands are made of, for the vocabulary. */
export const commandWords: readonly string[] = commandIndex.words;

/** Commands heard in a sentence. */
export function commandsIn(sentence: Sentence): ReadonlySet<Command> {
  const heard = new Set(heardIn(commandIndex, sentence).map(({ of }) => of));
  return new Set(commands.filter((command) => heard.has(command)));
}
