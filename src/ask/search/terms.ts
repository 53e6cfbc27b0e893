import { read } from '../../calc/read/read.ts';
import type { Engine } from '../engine.ts';
import { type Sentence, sentenceOf } from '../sentence.ts';
import { isSmall, type Token } from '../token.ts';
import { askingWords } from '../wording/search-words.ts';
import { stem } from './stem.ts';

/** A word to search by: its head word, and as it was typed. Both without their endings; often the same. */
export interface Term {
  readonly head: string;
  readonly typed: string;
}

/** No word of the trade is longer; a search near one that is costs as many letters as it has, squared. */
const longestWord = 40;

/**
 * The words of a sentence that tell what it is about, in order, each once; the words that only ask come in where nothing
 * else is left. `text` is what the sentence was read from.
 */
export function termsOf({ tokens, small }: Sentence, text: string): Term[] {
  const words = tokens.flatMap((token) => wordsOf(token, small, text));
  const telling = words.filter(({ head, typed }) => !askingWords.has(head) && !askingWords.has(typed));
  const terms = new Map<string, Term>();
  for (const { head, typed } of telling.length > 0 ? telling : words) {
    const term = { head: stem(head.slice(0, longestWord)), typed: stem(typed.slice(0, longestWord)) };
    if (!terms.has(term.head)) terms.set(term.head, term);
  }
  return [...terms.values()];
}

/** A text as the index holds it, its words each once: by the head, and as typed where that differs. */
export function indexed(text: string, { vocabulary, small }: Pick<Engine, 'vocabulary' | 'small'>): string[] {
  const terms = termsOf(sentenceOf(read(text), vocabulary, small), text);
  return [...new Set(terms.flatMap(({ head, typed }) => [head, typed]))];
}

/** A figure gives the words it was typed with: "110 pounds" speaks of pounds; and a number that is called, like 811. */
function wordsOf(token: Token, small: ReadonlySet<string>, text: string): Term[] {
  if (token.kind === 'mark' || isSmall(token, small)) return [];
  const typed = owner(text.slice(...token.at).toLowerCase());
  if (token.kind === 'word') return [{ head: owner(token.head), typed: typed.replaceAll(' ', '-') }];
  if (token.kind === 'name') return [{ head: typed, typed }];
  return (typed.match(/[a-z]{3,20}|\b\d11\b/g) ?? []).map((word) => ({ head: word, typed: word }));
}

/** "The tack's down": the word without the mark of a short is, or of whose it is. */
const owner = (word: string): string => word.replace(/['’]s?$/, '');
