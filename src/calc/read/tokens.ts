import { at, type Token, type Tokens } from './lexer.ts';

const ends = new Set(['.', ',', '?', '!', ';', '\n', ')']);
const articles = new Set(['a', 'an', 'un', 'una']);

/** True at the end of the text and at a mark that ends a thought. */
export function endsThought(token: Token): boolean {
  return token.kind === 'end' || (token.kind === 'sign' && ends.has(token.text));
}

/** True for a, an, un and una. */
export function isArticle(token: Token): boolean {
  return articles.has(token.text);
}

/** The token past a hyphen that only joins two words (three-quarter-inch); `i` when there is none. */
export function afterHyphen(tokens: Tokens, i: number): number {
  const hyphen = at(tokens, i);
  return hyphen.text === '-' && !hyphen.gap && !at(tokens, i + 1).gap ? i + 1 : i;
}

/** The longest of the phrases (lists of words by their first) that stands at token `i`. */
export function phraseAt<P extends { readonly words: readonly string[] }>(
  phrases: ReadonlyMap<string, readonly P[]>,
  tokens: Tokens,
  i: number,
): P | undefined {
  const list = phrases.get(at(tokens, i).text);
  if (!list) return undefined;
  for (const phrase of list) {
    let k = 1;
    while (k < phrase.words.length && at(tokens, i + k).text === phrase.words[k]) k++;
    if (k === phrase.words.length) return phrase;
  }
  return undefined;
}

/** Phrases by their first word, the longest first, as `phraseAt` wants them. */
export function byFirstWord<P extends { readonly words: readonly string[] }>(
  phrases: readonly P[],
  keyOf: (first: string) => string = (first) => first,
): Map<string, P[]> {
  const map = new Map<string, P[]>();
  for (const phrase of phrases) {
    const first = keyOf(phrase.words[0]!);
    const list = map.get(first);
    if (list) list.push(phrase);
    else map.set(first, [phrase]);
  }
  for (const list of map.values()) list.sort((a, b) => b.words.length - a.words.length);
  return map;
}
