import { type Cue, wordsOf } from './cue.ts';
import type { CueIndex } from './cue-index.ts';
import type { Goal, GoalKind } from './goal.ts';
import { goalText } from './goal.ts';
import type { Sentence } from './sentence.ts';
import { askingWords } from './wording/search-words.ts';

/** A record that speaks of the same things as a question. */
export interface Near extends Goal {
  /** The weight of the words they share. */
  readonly score: number;
  /** That weight as a share of all the words of the question that any record knows. */
  readonly share: number;
}

/** Records by the words they are asked by, whatever the cue. */
export interface NearIndex {
  /** The records nearest to a sentence, best first. */
  readonly near: (sentence: Sentence, kinds: ReadonlySet<GoalKind>) => Near[];
  readonly weight: (word: string) => number;
}

/** Makes the index of all goals, each with the words of its cues and those of `more`. */
export function nearIndex(
  goals: CueIndex<Goal>,
  more: (goal: Goal) => readonly string[],
  small: ReadonlySet<string>,
): NearIndex {
  const words = new Map<string, { goal: Goal; words: Set<string> }>();
  for (const at of new Set(goals.table.keys.split(' ').flatMap(goals.found))) {
    const entry = goals.entry(at);
    const key = goalText(entry.of);
    const found = words.get(key) ?? { goal: entry.of, words: new Set(more(entry.of)) };
    for (const word of spoken(entry.cue)) found.words.add(word);
    words.set(key, found);
  }
  const goalsOf = new Map<string, Goal[]>();
  for (const { goal, words: list } of words.values())
    for (const word of list) {
      if (small.has(word) || askingWords.has(word)) continue;
      const known = goalsOf.get(word);
      if (known) known.push(goal);
      else goalsOf.set(word, [goal]);
    }
  const isForeign = (word: string): boolean => !small.has(word) && !askingWords.has(word) && /^[a-z]/.test(word);
  const weight = (word: string): number => {
    const known = goalsOf.get(word)?.length ?? 0;
    return known === 0 ? 0 : Math.log2(1 + words.size / known);
  };
  return {
    weight,
    near: (sentence, kinds) => {
      const found = new Map<Goal, number>();
      let all = 0;
      for (const word of sentence.places.keys()) {
        const each = weight(word);
        all += each > 0 || !isForeign(word) ? each : foreign;
        for (const goal of goalsOf.get(word) ?? [])
          if (kinds.has(goal.kind)) found.set(goal, (found.get(goal) ?? 0) + each);
      }
      return [...found]
        .map(([goal, score]) => ({ ...goal, score, share: all > 0 ? score / all : 0 }))
        .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
    },
  };
}

/** What a word counts for that no record is asked by: about what a rare one of theirs does. */
const foreign = 5;

/** The words a cue is heard by, its signs aside. */
const spoken = (cue: Cue): string[] =>
  [...wordsOf({ ...cue, bars: [] })].filter((word) => !word.startsWith('@') && !word.startsWith('#'));
