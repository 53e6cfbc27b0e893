import type { Scored } from './goal.ts';
import type { Sentence } from './sentence.ts';

/** A cue this light is heard in the words that only tell what a figure is of. */
export const light = 6;

/** "What about a 1/2 inch lift": another figure for what was asked before, with no more than the word of its role. */
export function isSameAgain({ places, tokens, figures }: Sentence, best: Scored | undefined): boolean {
  const asksAgain = (word: string): boolean =>
    tokens.slice(0, 4).some((token) => token.kind === 'word' && token.head === word);
  if (figures.length === 0 || places.has('how-many') || places.has('@check')) return false;
  // "What if we tack between the lifts, 2 coats" does something else, and asks the same.
  if (places.has('what') && asksAgain('if')) return best === undefined || best.kind === 'step';
  const opens = asksAgain('about') && (places.has('what') || places.has('how'));
  return opens && best?.kind === 'quantity' && best.score < light;
}
