const seen = new Map<string, ReadonlySet<string>>();
/** Texts whose words are remembered: more than the records have. */
const mostSeen = 4000;

/** Words that carry meaning, cut to their stem: what two texts have in common, or what a stem gives away. */
export function contentWords(text: string): ReadonlySet<string> {
  const before = seen.get(text);
  if (before) return before;
  if (seen.size >= mostSeen) seen.clear();
  const words = wordsIn(text);
  seen.set(text, words);
  return words;
}

function wordsIn(text: string): ReadonlySet<string> {
  const words = text.toLowerCase().match(/[a-z]{3,30}/g) ?? [];
  return new Set(words.map((word) => word.slice(0, 5)).filter((word) => !common.has(word)));
}

const common = new Set(
  'this that with from have will what which when where over into under until than then they them their there does goes'
    .split(' ')
    .concat(
      'before after about every other only first last side their right likel these those the and for not too one two any are was has its off out can may how who all'.split(
        ' ',
      ),
    )
    .concat('mix mat you see ahe'.split(' '))
    .map((word) => word.slice(0, 5)),
);

/** True when the texts share a word that carries meaning. */
export function sharesWord(a: string, b: string): boolean {
  const words = contentWords(a);
  return [...contentWords(b)].some((word) => words.has(word));
}
