/** Turns typed words into head words: aliases, endings, and slips of one letter. */
export interface Vocabulary {
  /** The head word a typed word stands for; itself when it is unknown. */
  readonly head: (word: string) => string;
  /** True for a word that some record or list knows. */
  readonly isKnown: (word: string) => boolean;
  /** The head that starts at `words[at]` and how many words it takes, for aliases of several words; what is no word parts them. */
  readonly phrase: (
    words: readonly (string | undefined)[],
    at: number,
  ) => { readonly head: string; readonly length: number } | undefined;
  /** What can be kept of it. Throws RangeError for a word that holds a sign of the text it is kept in. */
  readonly lay: () => LaidWords;
}

/** The head word of a word as it stands, without mending slips: for the words of records. */
export function headOf(heads: Readonly<Record<string, readonly string[]>>): (word: string) => string {
  let known: Map<string, string> | undefined;
  const learn = (): Map<string, string> => {
    known = new Map();
    for (const [head, aliases] of Object.entries(heads)) for (const alias of aliases) known.set(alias, head);
    return known;
  };
  return (word) => (Object.hasOwn(heads, word) ? word : ((known ?? learn()).get(word) ?? word));
}

/** Longest alias that is listened for, in words. */
const longest = 4;
/** Words this long may have one slip; shorter ones must be typed as they are. */
const sure = 5;
const endings = [/s$/, /es$/, /ing$/, /ed$/, /d$/];
const restored = ['', 'e'];

/**
 * A vocabulary from head words with their aliases, and plain words that stand for themselves. Of `exact` words no slip is
 * mended. `laid` is what these very words come to, where that is at hand.
 */
export function vocabularyOf(
  heads: Readonly<Record<string, readonly string[]>>,
  plain: () => Iterable<string>,
  exact: Iterable<string> = [],
  laid?: LaidWords,
): Vocabulary {
  const { known, phrases } = laid ? unpacked(laid) : learnt(heads, plain());
  let slips: ReadonlyMap<string, readonly string[]> | undefined;
  const remembered = new Map<string, string>();
  const slip = (word: string): string | undefined => {
    slips ??= slipsOf(known.keys(), new Set(exact));
    return known.get(slipped(word, slips, known) ?? '');
  };
  const find = (word: string): string =>
    known.get(word) ?? known.get(owned(word)) ?? ended(owned(word), known) ?? slip(word) ?? owned(word);
  return {
    head: (word) => {
      const before = remembered.get(word);
      if (before !== undefined) return before;
      const head = find(word);
      if (remembered.size < 5000) remembered.set(word, head);
      return head;
    },
    isKnown: (word) => known.has(word),
    phrase: (words, at) => {
      for (const { words: wanted, head } of phrases(words[at]!)) {
        if (wanted.length <= longest && wanted.every((word, i) => words[at + i] === word))
          return { head, length: wanted.length };
      }
      return undefined;
    },
    lay: () => layWords(learnt(heads, plain())),
  };
}

/** An alias of several words. */
interface Phrase {
  readonly words: readonly string[];
  readonly head: string;
}

interface Learnt {
  readonly known: ReadonlyMap<string, string>;
  /** The aliases that start with a word, the longest first. */
  readonly phrases: (first: string) => readonly Phrase[];
}

const noPhrases: readonly Phrase[] = [];

function learnt(
  heads: Readonly<Record<string, readonly string[]>>,
  plain: Iterable<string>,
): Learnt & {
  readonly all: ReadonlyMap<string, readonly Phrase[]>;
} {
  const known = new Map<string, string>();
  const phrases = new Map<string, Phrase[]>();
  const learn = (word: string, head: string): void => {
    if (!known.has(word)) known.set(word, head);
  };
  for (const [head, aliases] of Object.entries(heads)) {
    for (const alias of [head, ...aliases]) {
      const words = alias.split(' ');
      const before = phrases.get(words[0]!);
      if (words.length === 1) learn(alias, head);
      else if (before) before.push({ words, head });
      else phrases.set(words[0]!, [{ words, head }]);
    }
  }
  for (const word of plain) learn(word, word);
  for (const list of phrases.values()) list.sort((a, b) => b.words.length - a.words.length);
  return { known, phrases: (first) => phrases.get(first) ?? noPhrases, all: phrases };
}

/** What the words of a vocabulary come to, as texts that can be kept. */
export interface LaidWords {
  /** Every word, with its head after `=` where that is another, apart by spaces. */
  readonly known: string;
  /** The aliases of several words with their heads, those that start alike in one line, apart by `|`. */
  readonly phrases: string;
}

function layWords({ known, all }: ReturnType<typeof learnt>): LaidWords {
  for (const word of [...known].flat()) if (/[ =|\n]/.test(word)) throw new RangeError(`"${word}" cannot be kept`);
  return {
    known: Array.from(known, ([word, head]) => (word === head ? word : `${word}=${head}`)).join(' '),
    phrases: Array.from(all.values(), (list) =>
      list.map(({ words, head }) => `${words.join(' ')}=${head}`).join('|'),
    ).join('\n'),
  };
}

function unpacked({ known: words, phrases }: LaidWords): Learnt {
  const known = new Map<string, string>();
  for (const each of words.split(' ')) {
    const at = each.indexOf('=');
    if (at < 0) known.set(each, each);
    else known.set(each.slice(0, at), each.slice(at + 1));
  }
  const lines = new Map<string, string>();
  for (const line of phrases.split('\n')) lines.set(line.slice(0, line.indexOf(' ')), line);
  const read = new Map<string, readonly Phrase[]>();
  return {
    known,
    phrases: (first) => {
      const line = lines.get(first);
      if (line === undefined) return noPhrases;
      const before = read.get(first);
      if (before) return before;
      const list = line.split('|').map((each): Phrase => {
        const [phrase, head] = each.split('=');
        return { words: phrase!.split(' '), head: head! };
      });
      read.set(first, list);
      return list;
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

/** Words by their first letter and their length, so that a slip is not sought among all of them. */
function slipsOf(words: Iterable<string>, exact: ReadonlySet<string>): Map<string, string[]> {
  const slips = new Map<string, string[]>();
  for (const word of words) {
    if (word.length < sure || exact.has(word)) continue;
    const key = `${word[0]}${word.length}`;
    const list = slips.get(key);
    if (list) list.push(word);
    else slips.set(key, [word]);
  }
  return slips;
}

/** The one known word a slip away; undefined when there is none. The first letter is taken to be right. */
function slipped(
  word: string,
  slips: ReadonlyMap<string, readonly string[]>,
  known: ReadonlyMap<string, string>,
): string | undefined {
  if (word.length < sure) return undefined;
  let found: string | undefined;
  for (let length = word.length - 1; length <= word.length + 1; length++) {
    for (const candidate of slips.get(`${word[0]}${length}`) ?? []) {
      if (!oneSlip(word, candidate)) continue;
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
