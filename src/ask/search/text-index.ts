import MiniSearch from 'minisearch';
import { cards } from '../cards.generated.ts';
import { stem } from './stem.ts';
import type { Term } from './terms.ts';

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[a-z]{2,30}/g) ?? [];

let spoken: ReadonlySet<string> | undefined;

/** True for a word that some card speaks of in its text: a word of the trade, though nobody asks by it. */
export function isSpokenOf(word: string): boolean {
  spoken ??= new Set(cards.flatMap(({ text }) => wordsOf(text)).map(stem));
  return spoken.has(word);
}

let built: MiniSearch | undefined;

/** Cards whose text has at least half of these words, best first. The index is built when first asked for. */
export function inTexts(terms: readonly Term[]): string[] {
  built ??= build();
  const words = [...new Set(terms.map(({ typed }) => typed))];
  return built
    .search({ combineWith: 'OR', queries: words })
    .filter(({ queryTerms }) => 2 * queryTerms.length >= words.length)
    .map(({ id }) => String(id));
}

function build(): MiniSearch {
  const search = new MiniSearch({
    fields: ['text'],
    tokenize: wordsOf,
    processTerm: stem,
    searchOptions: { tokenize: (word) => [word], processTerm: (word) => word },
  });
  search.addAll(cards);
  return search;
}
