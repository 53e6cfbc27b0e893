import { type Cue, fitOf, type Heard, readCue, wordsOf } from './cue.ts';

/** A cue and what it stands for. */
export interface Entry<T> {
  readonly cue: Cue;
  readonly of: T;
  /** For each place of what the cue needs, the numbers of the words that will do there. */
  readonly wants: readonly (readonly number[])[];
}

/** Cues found by a word that must be heard, so that a question is held only against those that can fit. */
export interface CueIndex<T> {
  readonly byWord: ReadonlyMap<string, readonly Entry<T>[]>;
  readonly weight: (word: string) => number;
  /** Every word the cues speak of. */
  readonly words: ReadonlySet<string>;
  /** The number of each word that some cue needs: most cues are ruled out by number, which is quicker than by word. */
  readonly numbers: ReadonlyMap<string, number>;
}

/** Builds an index; `reading` makes a cue of a line. Rare words weigh more: one that few cues speak of says much. */
export function cueIndex<T>(
  lines: readonly { readonly text: string; readonly of: T }[],
  reading: (line: string) => Cue = readCue,
): CueIndex<T> {
  const numbers = new Map<string, number>();
  const numberOf = (word: string): number => {
    const number = numbers.get(word) ?? numbers.size;
    numbers.set(word, number);
    return number;
  };
  const entries = lines.map(({ text, of }): Entry<T> => {
    const cue = reading(text);
    return { cue, of, wants: cue.needs.flatMap((term) => term.map((words) => words.map(numberOf))) };
  });
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
  return { byWord, weight, words: new Set([...spoken.keys()].filter((word) => !isSign(word))), numbers };
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

/** False when no cue can fit: none of the words is there that one of them must have. */
export function isTouched<T>({ byWord }: CueIndex<T>, { places }: Heard): boolean {
  for (const word of places.keys()) if (byWord.has(word)) return true;
  return false;
}

/** Every cue that fits, with how well. */
export function* heardIn<T>(index: CueIndex<T>, heard: Heard): Generator<HeardCue<T>> {
  const { numbers, byWord, weight } = index;
  const isSaid = new Uint8Array(numbers.size);
  for (const word of heard.places.keys()) {
    const number = numbers.get(word);
    if (number !== undefined) isSaid[number] = 1;
  }
  for (const word of heard.places.keys()) {
    for (const { cue, of, wants } of byWord.get(word) ?? []) {
      const score = areSaid(wants, isSaid) ? fitOf(cue, heard, weight) : undefined;
      if (score !== undefined) yield { cue, of, score };
    }
  }
}

/** A cue that fits, what it stands for, and how well it fits. */
export interface HeardCue<T> {
  readonly cue: Cue;
  readonly of: T;
  readonly score: number;
}

/** True when every place has one of its words. Whether words that belong side by side are so is another matter. */
function areSaid(wants: readonly (readonly number[])[], isSaid: Uint8Array): boolean {
  for (const words of wants) {
    let said = 0;
    for (const word of words) said |= isSaid[word]!;
    if (said === 0) return false;
  }
  return true;
}
