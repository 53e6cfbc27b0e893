import { type Cue, fitOf, type Heard, readCue, wordsOf } from './cue.ts';

/** A cue and what it stands for. */
export interface Entry<T> {
  readonly cue: Cue;
  readonly of: T;
}

/** Cues found by a word that must be heard, so that a question is held only against those that can fit. */
export interface CueIndex<T> {
  readonly byWord: ReadonlyMap<string, readonly Entry<T>[]>;
  readonly weight: (word: string) => number;
  /** Every word the cues speak of. */
  readonly words: ReadonlySet<string>;
}

/** Builds an index; `reading` makes a cue of a line. Rare words weigh more: one that few cues speak of says much. */
export function cueIndex<T>(
  lines: readonly { readonly text: string; readonly of: T }[],
  reading: (line: string) => Cue = readCue,
): CueIndex<T> {
  const entries = lines.map(({ text, of }): Entry<T> => ({ cue: reading(text), of }));
  const spoken = new Map<string, number>();
  for (const { cue } of entries) for (const word of wordsOf(cue)) spoken.set(word, (spoken.get(word) ?? 0) + 1);
  const weights = new Map(
    [...spoken].map(([word, times]) => [word, isSign(word) ? 1 : 1 + Math.log2(entries.length / times)]),
  );
  const weight = (word: string): number => weights.get(word) ?? 1;
  const byWord = new Map<string, Entry<T>[]>();
  for (const entry of entries) {
    for (const word of rarest(entry.cue, weight)) {
      const list = byWord.get(word);
      if (list) list.push(entry);
      else byWord.set(word, [entry]);
    }
  }
  return { byWord, weight, words: new Set([...spoken.keys()].filter((word) => !isSign(word))) };
}

/** The alternatives, at the head of one of the terms a cue needs, that are rarest: one of them must be heard. */
function rarest({ needs }: Cue, weight: (word: string) => number): readonly string[] {
  let best: readonly string[] = [];
  let most = -1;
  for (const [first] of needs) {
    let least = Number.POSITIVE_INFINITY;
    for (const word of first!) least = Math.min(least, weight(word));
    if (least > most) [best, most] = [first!, least];
  }
  return best;
}

const isSign = (word: string): boolean => word.startsWith('@') || word.startsWith('#');

/** Every cue that fits, with how well. */
export function* heardIn<T>(index: CueIndex<T>, heard: Heard): Generator<Entry<T> & { readonly score: number }> {
  for (const word of heard.places.keys()) {
    for (const { cue, of } of index.byWord.get(word) ?? []) {
      const score = fitOf(cue, heard, index.weight);
      if (score !== undefined) yield { cue, of, score };
    }
  }
}
