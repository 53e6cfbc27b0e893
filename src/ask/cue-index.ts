import { type Cue, fitOf, type Heard, readCue, wordsOf } from './cue.ts';

/** A cue and what it stands for. */
export interface Entry<T> {
  readonly cue: Cue;
  readonly of: T;
}

/** A cue that fits, what it stands for, and how well it fits. */
export interface HeardCue<T> extends Entry<T> {
  readonly score: number;
}

/** Cues found by a word that must be heard, so that a question is held only against those that can fit. */
export interface CueIndex<T> {
  readonly table: CueTable;
  /** The cues that a word may find, by number, in their order. */
  readonly found: (word: string) => readonly number[];
  /** A cue by its number, read when it is first wanted. */
  readonly entry: (at: number) => Entry<T>;
  /** The cues of which every word is heard in some place or other, and that may fit. */
  readonly likelyIn: (heard: Heard) => Entry<T>[];
  readonly weight: (word: string) => number;
  /** Every word the cues speak of. */
  readonly words: readonly string[];
}

/** What the cues of an index come to, as texts that can be kept: parts are apart by a space. */
export interface CueTable {
  /** How many cues there are. */
  readonly cues: number;
  /** Every word they speak of, signs and forms too, and how many cues speak of it. */
  readonly words: string;
  readonly times: string;
  /** Words of which a cue must have one, and the numbers of those cues, apart by commas. */
  readonly keys: string;
  readonly found: string;
}

interface Line<T> {
  readonly text: string;
  readonly of: T;
}

const none = -1;

/**
 * The cues that one word may find. What else they need stands in `wants` by the numbers of words, so that most of them are
 * ruled out in one go: for each cue where the next one begins, then for each place the words that will do there and `done`.
 */
interface Shelf<T> {
  readonly entries: readonly Entry<T>[];
  readonly wants: readonly number[];
}

const done = -1;

/**
 * Builds an index; `reading` makes a cue of a line. Rare words weigh more: one that few cues speak of says much. With the
 * table of the very same lines at hand no line is read before it is wanted; one of other lines throws RangeError then.
 */
export function cueIndex<T>(
  lines: () => readonly Line<T>[],
  reading: (line: string) => Cue = readCue,
  laid?: CueTable,
): CueIndex<T> {
  let made: readonly Line<T>[] | undefined;
  const line = (at: number): Line<T> => {
    made ??= lines();
    if (made.length !== table.cues) throw new RangeError(`a table of ${table.cues} cues for ${made.length}`);
    return made[at]!;
  };
  const table = laid ?? tableOf(lines().map(({ text }) => reading(text)));
  const numbers = new Map<string, number>();
  const words: string[] = [];
  for (const word of partsOf(table.words)) {
    numbers.set(word, numbers.size);
    if (!isSign(word)) words.push(word);
  }
  const times = partsOf(table.times);
  const weights = new Float64Array(times.length);
  const found = partsOf(table.found);
  /** Which shelf a word finds cues on, by its number. */
  const shelfOfWord = new Int32Array(times.length).fill(none);
  for (const [at, word] of partsOf(table.keys).entries()) shelfOfWord[numbers.get(word)!] = at;
  const shelfFor = (word: string): number => shelfOfWord[numbers.get(word) ?? none] ?? none;
  const entries: (Entry<T> | undefined)[] = new Array(table.cues);
  const entry = (at: number): Entry<T> => {
    const before = entries[at];
    if (before) return before;
    const { text, of } = line(at);
    const read = { cue: reading(text), of };
    entries[at] = read;
    return read;
  };
  const numbersOn = (at: number): number[] => (at === none ? [] : found[at]!.split(',').map(Number));
  const shelves: (Shelf<T> | undefined)[] = new Array(found.length);
  /** The question in which each word was heard last: so nothing need be wiped between two. */
  const heardLast = new Uint32Array(times.length);
  let question = 0;
  return {
    table,
    words,
    found: (word) => numbersOn(shelfFor(word)),
    entry,
    likelyIn: ({ places }) => {
      question++;
      const said: number[] = [];
      for (const word of places.keys()) {
        const number = numbers.get(word);
        if (number === undefined) continue;
        heardLast[number] = question;
        said.push(number);
      }
      const likely: Entry<T>[] = [];
      for (const number of said) {
        const at = shelfOfWord[number]!;
        if (at === none) continue;
        shelves[at] ??= shelfOf(numbersOn(at).map(entry), number, numbers);
        const { entries, wants } = shelves[at];
        let from = 0;
        for (const each of entries) {
          const next = wants[from]!;
          if (isHeard(wants, from + 1, next)) likely.push(each);
          from = next;
        }
      }
      return likely;
    },
    weight: (word) => {
      const number = numbers.get(word);
      if (number === undefined) return 1;
      // None weighs nothing: that is one not worked out yet.
      weights[number] ||= weightOf(word, Number(times[number]), table.cues);
      return weights[number]!;
    },
  };

  /** True when of every place one of the words was heard. */
  function isHeard(wants: readonly number[], from: number, to: number): boolean {
    let isSaid = false;
    for (let at = from; at < to; at++) {
      const number = wants[at]!;
      if (number !== done) isSaid ||= heardLast[number] === question;
      else if (isSaid) isSaid = false;
      else return false;
    }
    return true;
  }
}

/** Puts cues on a shelf: a place where the word that finds them will do need not be looked at again. */
function shelfOf<T>(entries: readonly Entry<T>[], finder: number, numbers: ReadonlyMap<string, number>): Shelf<T> {
  const wants: number[] = [];
  for (const { cue } of entries) {
    const start = wants.push(0) - 1;
    for (const words of cue.needs.flat()) {
      const place = words.map((word) => numbers.get(word)!);
      if (!place.includes(finder)) wants.push(...place, done);
    }
    wants[start] = wants.length;
  }
  return { entries, wants };
}

const partsOf = (text: string): string[] => (text === '' ? [] : text.split(' '));

const weightOf = (word: string, times: number, cues: number): number =>
  isSign(word) ? 1 : 1 + Math.log2(cues / times);

function tableOf(cues: readonly Cue[]): CueTable {
  const spoken = new Map<string, number>();
  for (const cue of cues) for (const word of wordsOf(cue)) spoken.set(word, (spoken.get(word) ?? 0) + 1);
  const weight = (word: string): number => weightOf(word, spoken.get(word)!, cues.length);
  const found = new Map<string, number[]>();
  for (const [at, cue] of cues.entries()) {
    for (const word of rarest(cue, weight)) {
      const list = found.get(word);
      if (list) list.push(at);
      else found.set(word, [at]);
    }
  }
  return {
    cues: cues.length,
    words: [...spoken.keys()].join(' '),
    times: [...spoken.values()].join(' '),
    keys: [...found.keys()].join(' '),
    found: [...found.values()].join(' '),
  };
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

/** False when no cue can fit, in the sentence or in a part of it: of each some word is not there. */
export const isTouched = <T>({ likelyIn }: CueIndex<T>, heard: Heard): boolean => likelyIn(heard).length > 0;

/** Every cue that fits, with how well. */
export function heardIn<T>({ likelyIn, weight }: CueIndex<T>, heard: Heard): HeardCue<T>[] {
  const fitting: HeardCue<T>[] = [];
  for (const { cue, of } of likelyIn(heard)) {
    const score = fitOf(cue, heard, weight);
    if (score !== undefined) fitting.push({ cue, of, score });
  }
  return fitting;
}
