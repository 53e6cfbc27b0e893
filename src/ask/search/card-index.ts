import MiniSearch from 'minisearch';
import { wordsOfCards } from '../cards.generated.ts';
import type { Term } from './terms.ts';

/** A card found, and how well it answers: near 0 for hardly, 1 for a way of asking it word for word. */
export interface Found {
  readonly id: string;
  readonly score: number;
}

export interface CardIndex {
  /** Cards that speak of these words, best first. */
  readonly find: (terms: readonly Term[]) => Found[];
  /** How much a word tells: the fewer cards speak of it the more; 0 for one that no card knows. */
  readonly weight: (word: string) => number;
  /** The known word nearest to one that no card knows. */
  readonly nearest: (word: string) => string | undefined;
}

/** The words of a title or of a way of asking, each with its weight, and their weight together. */
interface Phrase {
  readonly words: readonly (readonly [word: string, weight: number])[];
  readonly weight: number;
}

const boost = { title: 3, asks: 2, text: 1 };
/** Letters that may be wrong in a word that no card knows, as a share of its length. */
const fuzzy = 0.3;
const shortestSlip = 5;
/** How many of the search's results are looked at closely. */
const close = 25;
/** How far each counts: the likest way of asking, the share of the question that the card speaks of, the search's own order. */
const counts = { alike: 0.5, share: 0.3, order: 0.2 };

let built: CardIndex | undefined;

/** The index over all cards; built when first asked for. */
export function cardIndex(): CardIndex {
  built ??= build(Object.entries(wordsOfCards));
  return built;
}

function build(cards: readonly (readonly [string, { asks: readonly string[]; text: string }])[]): CardIndex {
  const search = new MiniSearch({
    fields: Object.keys(boost),
    tokenize: (text) => text.split(' '),
    processTerm: (term) => term,
  });
  const spoken = new Map<string, number>();
  for (const [id, { asks, text }] of cards) {
    const [title, ...rest] = asks;
    search.add({ id, title, asks: rest.join(' '), text });
    for (const word of new Set(`${asks.join(' ')} ${text}`.split(' '))) spoken.set(word, (spoken.get(word) ?? 0) + 1);
  }
  const weight = (word: string): number => {
    const times = spoken.get(word);
    return times === undefined ? 0 : Math.log2(1 + cards.length / times);
  };
  const weigh = (words: readonly string[]): number => words.reduce((sum, word) => sum + weight(word), 0);
  const phrases = new Map(
    cards.map(([id, { asks }]) => [
      id,
      asks.map((ask): Phrase => {
        const words = ask.split(' ').map((word) => [word, weight(word)] as const);
        return { words, weight: words.reduce((sum, [, each]) => sum + each, 0) };
      }),
    ]),
  );
  const unknown = Math.log2(1 + cards.length);

  return {
    weight,
    nearest: (word) => (word.length < shortestSlip ? undefined : search.search(word, { fuzzy, prefix: true })[0]?.terms[0]),
    find: (terms) => {
      if (terms.length === 0) return [];
      const words = new Set(terms.flatMap(({ head, typed }) => [head, typed]));
      const all = [...words].reduce((sum, word) => sum + (weight(word) || unknown), 0);
      const results = search.search({ combineWith: 'OR', queries: [...words] }, { boost });
      const top = results[0]?.score ?? 1;
      return results
        .slice(0, close)
        .map(({ id, score, queryTerms }) => {
          const share = weigh(queryTerms) / all;
          const alike = Math.max(...phrases.get(String(id))!.map((phrase) => likeness(phrase, words, all)));
          return { id: String(id), score: counts.alike * alike + counts.share * share + (counts.order * score) / top };
        })
        .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
    },
  };
}

/** How much of two phrases, by weight, is in both. */
function likeness(phrase: Phrase, words: ReadonlySet<string>, all: number): number {
  let both = 0;
  for (const [word, weight] of phrase.words) if (words.has(word)) both += weight;
  return (2 * both) / (phrase.weight + all);
}
