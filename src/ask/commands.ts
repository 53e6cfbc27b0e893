import { fitOf } from './cue.ts';
import type { Sentence } from './sentence.ts';
import { tradeCue } from './trade-cue.ts';
import { commandCues } from './wording/commands.ts';

/** What a person tells the assistant itself, apart from any question of the trade. */
export type Command = keyof typeof commandCues;

const cues = Object.entries(commandCues).flatMap(([command, lines]) =>
  lines.map((line) => ({ command: command as Command, cue: tradeCue(line) })),
);

/** Words that commands are made of, for the vocabulary. */
export const commandWords: readonly string[] = cues
  .flatMap(({ cue }) => [...cue.needs, ...cue.helps, ...cue.bars].flat(2))
  .filter((word) => !/^[@#]/.test(word));

/** Commands heard in a sentence. */
export function commandsIn(sentence: Sentence): ReadonlySet<Command> {
  return new Set(cues.filter(({ cue }) => fitOf(cue, sentence, () => 1) !== undefined).map(({ command }) => command));
}
