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
  readonly table: CueTable;
  /** True for a word that may find a cue. */
  readonly finds: (word: string) => boolean;
  /** The cues that a word may find, by number, in their order. */
  readonly found: (word: string) => readonly number[];
  /** A cue by its number, read when it is first wanted. */
  readonly entry: (at: number) => Entry<T>;
  /** The cues that a word may find, read. */
  readonly entries: (word: string) => readonly Entry<T>[];
  readonly weight: (word: string) => number;
  /** Every word the cues speak of. */
  readonly words: readonly string[];
  /** The number of each word: most cues are ruled out by number, which is quicker than by word. */
  readonly numbers: ReadonlyMap<string, number>;
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

const none: readonly never[] = [];

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
  const places = new Map<string, number>();
  for (const word of partsOf(table.keys)) places.set(word, places.size);
  const entries: (Entry<T> | undefined)[] = new Array(table.cues);
  const entry = (at: number): Entry<T> => {
    const before = entries[at];
    if (before) return before;
    const { text, of } = line(at);
    const read = entryOf(reading(text), of, numbers);
    entries[at] = read;
    return read;
  };
  const numbersAt = (place: number): number[] => found[place]!.split(',').map(Number);
  const lists: (readonly Entry<T>[] | undefined)[] = new Array(found.length);
  return {
    table,
    words,
    numbers,
    finds: (word) => places.has(word),
    found: (word) => {
      const place = places.get(word);
      return place === undefined ? none : numbersAt(place);
    },
    entry,
    entries: (word) => {
      const place = places.get(word);
      if (place === undefined) return none;
      lists[place] ??= numbersAt(place).map(entry);
      return lists[place];
    },
    weight: (word) => {
      const number = numbers.get(word);
      if (number === undefined) return 1;
      // None weighs nothing: that is one not worked out yet.
      weights[number] ||= weightOf(word, Number(times[number]), table.cues);
      return weights[number]!;
    },
  };
}

const partsOf = (text: string): string[] => (text === '' ? [] : text.split(' '));

const entryOf = <T>(cue: Cue, of: T, numbers: ReadonlyMap<string, number>): Entry<T> => ({
  cue,
  of,
  wants: cue.needs.flatMap((term) => term.map((words) => words.map((word) => numbers.get(word)!))),
});

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

/** False when no cue can fit: none of the words is there that one of them must have. */
export function isTouched<T>({ finds }: CueIndex<T>, { places }: Heard): boolean {
  for (const word of places.keys()) if (finds(word)) return true;
  return false;
}

/** Every cue that fits, with how well. */
export function* heardIn<T>(index: CueIndex<T>, heard: Heard): Generator<HeardCue<T>> {
  const { numbers, entries, weight } = index;
  const isSaid = new Uint8Array(numbers.size);
  for (const word of heard.places.keys()) {
    const number = numbers.get(word);
    if (number !== undefined) isSaid[number] = 1;
  }
  for (const word of heard.places.keys()) {
    for (const { cue, of, wants } of entries(word)) {
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
