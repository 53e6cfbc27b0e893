import { heads } from '../rules/words.ts';
import { denial, kinLines } from '../rules/words-kin.ts';
import { type Cue, readCue } from './cue.ts';
import { headOf } from './vocabulary.ts';

const head = headOf(heads);

const kin = new Map(
  [denial, ...kinLines].flatMap((line) => {
    const words = [...new Set(line.split(' ').map(head))];
    return words.map((word) => [word, words] as const);
  }),
);

const denials = new Set(denial.split(' '));

/** A cue line of the trade, in head words, with the words that will do as well in place of each; of what rules it out, only those that deny. */
export const tradeCue = (line: string): Cue =>
  readCue(line, head, (word, isBar) => (isBar && !denials.has(word) ? [word] : (kin.get(word) ?? [word])));
