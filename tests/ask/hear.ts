import type { Heard } from '../../src/ask/cue.ts';
import { type Sentence, sentenceOf } from '../../src/ask/sentence.ts';
import { type Vocabulary, vocabularyOf } from '../../src/ask/vocabulary.ts';
import { read } from '../../src/calc/read/read.ts';

/** A sentence of head words as they stand, for cues: `small` ones do not count between others. */
export function heard(words: string, small: readonly string[] = ['the', 'of', 'a']): Heard {
  const list = words.split(' ');
  const places = new Map<string, number[]>();
  for (const [at, word] of list.entries()) places.set(word, [...(places.get(word) ?? []), at]);
  const after = (position: number): number => {
    let at = position + 1;
    while (small.includes(list[at]!)) at++;
    return at;
  };
  return { places, after };
}

/** A small vocabulary of this test's own. */
export const vocabulary: Vocabulary = vocabularyOf(
  {
    'how-many': ['how many', 'how much'],
    ton: ['tonnage', 'tonelada'],
    check: ['can', 'ok'],
    'wheel-path': ['wheel path', 'wheel track'],
  },
  () => [
    'why',
    'how',
    'what',
    'taper',
    'roller',
    'premix',
    'lift',
    'deep',
    'depth',
    'water',
    'place',
    'is',
    'the',
    'in',
    'of',
    'sy',
    'mph',
    'grade',
  ],
);

/** A question as the engine hears it, in that vocabulary. */
export const hear = (question: string): Sentence =>
  sentenceOf(read(question), vocabulary, new Set(['is', 'the', 'of']));
