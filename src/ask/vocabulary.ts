/** Turns typed words into head words: aliases, endings, and slips of one letter. */
export interface Vocabulary {
  /** The head word a typed word stands for; itself when it is unknown. */
  readonly head: (word: string) => string;
  /** The head that starts at `words[at]` and how many words it takes, for aliases of several words. */
  readonly phrase: (
    words: readonly string[],
    at: number,
  ) => { readonly head: string; readonly length: number } | undefined;
}

/** The head word of a word as it stands, without mending slips: for the words of records. */
export function headOf(heads: Readonly<Record<string, readonly string[]>>): (word: string) => string {
  const known = new Map(
    Object.entries(heads).flatMap(([head, aliases]) => aliases.map((alias) => [alias, head] as const)),
  );
  return (word) => (Object.hasOwn(heads, word) ? word : (known.get(word) ?? word));
}

/** Words this long may have one slip; shorter ones must be typed as they are. */
const sure = 5;
const endings = [/s$/, /es$/, /ing$/, /ed$/, /d$/];
const restored = ['', 'e'];

/** A vocabulary from head words with their aliases, and plain words that stand for themselves. Of `exact` words no slip is mended. */
export function vocabularyOf(
  heads: Readonly<Record<string, readonly string[]>>,
  plain: Iterable<string>,
  exact: ReadonlySet<string> = new Set(),
): Vocabulary {
  const known = new Map<string, string>();
  const phrases = new Map<string, { words: string[]; head: string }[]>();
  const learn = (word: string, head: string): void => {
    if (!known.has(word)) known.set(word, head);
  };
  for (const [head, aliases] of Object.entries(heads)) {
    for (const alias of [head, ...aliases]) {
      const words = alias.split(' ');
      if (words.length === 1) learn(alias, head);
      else
        phrases.set(
          words[0]!,
          [...(phrases.get(words[0]!) ?? []), { words, head }].sort((a, b) => b.words.length - a.words.length),
        );
    }
  }
  for (const word of plain) learn(word, word);
  const slips = slipsOf([...known.keys()].filter((word) => !exact.has(word)));
  const remembered = new Map<string, string>();

  const find = (word: string): string =>
    known.get(word) ??
    known.get(owned(word)) ??
    ended(owned(word), known) ??
    known.get(slipped(word, slips, known) ?? '') ??
    owned(word);
  return {
    head: (word) => {
      const before = remembered.get(word);
      if (before !== undefined) return before;
      const head = find(word);
      if (remembered.size < 5000) remembered.set(word, head);
      return head;
    },
    phrase: (words, at) => {
      for (const { words: wanted, head } of phrases.get(words[at]!) ?? []) {
        if (wanted.every((word, i) => words[at + i] === word)) return { head, length: wanted.length };
      }
      return undefined;
    },
  };
}

/** "The tack's down": the word without the mark of a short is, or of whose it is. */
const owned = (word: string): string => word.replace(/['’]s?$/, '');

function ended(word: string, known: ReadonlyMap<string, string>): string | undefined {
  for (const ending of endings) {
    const stem = word.replace(ending, '');
    if (stem === word || stem.length < 3) continue;
    for (const tail of restored) {
      const head = known.get(stem + tail);
      if (head) return head;
    }
    const single = /(.)\1$/.test(stem) ? known.get(stem.slice(0, -1)) : undefined;
    if (single) return single;
  }
  return undefined;
}

/** Each word with one letter left out, so that a slip is found without comparing with every word. */
function slipsOf(words: Iterable<string>): Map<string, string[]> {
  const slips = new Map<string, string[]>();
  for (const word of words) {
    if (word.length < sure) continue;
    for (const key of withoutOne(word)) {
      const list = slips.get(key);
      if (list) list.push(word);
      else slips.set(key, [word]);
    }
  }
  return slips;
}

function* withoutOne(word: string): Generator<string> {
  yield word;
  for (let i = 1; i < word.length; i++) yield word.slice(0, i) + word.slice(i + 1);
}

/** The one known word a slip away; undefined when there is none. The first letter is taken to be right. */
function slipped(
  word: string,
  slips: ReadonlyMap<string, string[]>,
  known: ReadonlyMap<string, string>,
): string | undefined {
  if (word.length < sure) return undefined;
  let found: string | undefined;
  for (const key of withoutOne(word)) {
    for (const candidate of slips.get(key) ?? []) {
      if (candidate[0] !== word[0] || !oneSlip(word, candidate)) continue;
      if (found && known.get(found) !== known.get(candidate)) return undefined;
      found ??= candidate;
    }
  }
  return found;
}

/** True when one letter too many, too few, wrong, or swapped with its neighbour makes one word of the other. */
export function oneSlip(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1) return false;
  let start = 0;
  while (start < a.length && a[start] === b[start]) start++;
  let end = 0;
  while (end < a.length - start && end < b.length - start && a[a.length - 1 - end] === b[b.length - 1 - end]) end++;
  const [restA, restB] = [a.slice(start, a.length - end), b.slice(start, b.length - end)];
  if (restA.length <= 1 && restB.length <= 1) return true;
  return restA.length === 2 && restB.length === 2 && restA[0] === restB[1] && restA[1] === restB[0];
}
