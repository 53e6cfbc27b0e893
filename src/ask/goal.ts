import { type Cue, fit, readCue, wordsOf } from './cue.ts';
import type { Sentence } from './sentence.ts';

/** What a question can be after. */
export type GoalKind = 'quantity' | 'limit' | 'practice';

export interface Goal {
  readonly kind: GoalKind;
  readonly id: string;
}

export interface Scored extends Goal {
  readonly score: number;
  /** The cue that was heard. */
  readonly cue: Cue;
}

interface Entry {
  readonly goal: Goal;
  readonly cue: Cue;
}

/** Every cue of every record, found by a word that must be heard. */
export interface GoalIndex {
  readonly byWord: ReadonlyMap<string, readonly Entry[]>;
  readonly weight: (word: string) => number;
  readonly words: ReadonlySet<string>;
}

/** Builds the index. Rare words weigh more: one that few cues speak of says much. */
export function goalIndex(records: readonly { kind: GoalKind; id: string; cues?: readonly string[] }[]): GoalIndex {
  const entries = records.flatMap(({ kind, id, cues = [] }) => cues.map((cue): Entry => ({ goal: { kind, id }, cue: readCue(cue) })));
  const spoken = new Map<string, number>();
  for (const { cue } of entries) for (const word of new Set(wordsOf(cue))) spoken.set(word, (spoken.get(word) ?? 0) + 1);
  const weight = (word: string): number => (/^[@#]/.test(word) ? 1 : 1 + Math.log2(entries.length / (spoken.get(word) ?? 1)));
  const byWord = new Map<string, Entry[]>();
  for (const entry of entries) {
    const rarest = [...entry.cue.needs].map((term) => term[0]!).sort((a, b) => Math.min(...b.map(weight)) - Math.min(...a.map(weight)))[0]!;
    for (const word of rarest) byWord.set(word, [...(byWord.get(word) ?? []), entry]);
  }
  return { byWord, weight, words: new Set([...spoken.keys()].filter((word) => !/^[@#]/.test(word))) };
}

/** What a sentence may be after, best first. */
export function goalsOf(index: GoalIndex, sentence: Sentence): Scored[] {
  const best = new Map<string, Scored>();
  for (const word of sentence.places.keys()) {
    for (const { goal, cue } of index.byWord.get(word) ?? []) {
      const score = fit(cue, sentence, index.weight);
      if (score === undefined) continue;
      const key = `${goal.kind}/${goal.id}`;
      if (score > (best.get(key)?.score ?? 0)) best.set(key, { ...goal, score, cue });
    }
  }
  return [...best.values()].sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
}
