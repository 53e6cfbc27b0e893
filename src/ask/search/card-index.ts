import MiniSearch from 'minisearch';
import { wordsOfCards } from '../cards.generated.ts';
import { oneSlip } from '../vocabulary.ts';
import type { Term } from './terms.ts';
import { isSpokenOf } from './text-index.ts';

/** A card found, and how well it answers: near 0 for hardly, 1 for a way of asking it word for word. */
export interface Found {
  readonly id: string;
  readonly score: number;
  /** False where it speaks of too little of the question to be taken for an answer. */
  readonly sure: boolean;
}

export interface CardIndex {
  /** Cards whose title or ways of asking have some of these words, best first. */
  readonly find: (terms: readonly Term[]) => Found[];
  /** How much a word tells: the fewer cards speak of it the more; 0 for one that no card knows. */
  readonly weight: (word: string) => number;
  /** The known word nearest to one that no card knows. */
  readonly nearest: (word: string) => string | undefined;
}

/** The words of a title or of a way of asking by their numbers, and their weight together. */
interface Phrase {
  /** Less than 1 for a single word that many cards speak of: alone it asks for none of them, but for the card on the word. */
  readonly tells: number;
  readonly words: readonly number[];
  readonly weight: number;
}

const boost = { title: 3, asks: 2 };
/** Letters that may be wrong in a word that no card knows, as a share of its length; shorter words must be right. */
const fuzzy = 0.3;
const shortestSlip = 5;
/** How many of the search's results are looked at closely. */
const close = 25;
/** The share of a question, by weight, that a card must speak of: more where only one word of it is heard. */
const enough = { one: 0.45, several: 0.3 };
/** What a word counts for that nobody asks by, beside the rarest one that is asked by: less where a card speaks of it, more where none does. */
const strange = { spokenOf: 0.6, foreign: 1.4 };
/** The weight from which a word alone asks for a card. */
const telling = 4;
/** How far each counts: the likest way of asking, the share of the question that the card speaks of, the search's own order. */
const counts = { alike: 0.5, share: 0.3, order: 0.2 };

let built: CardIndex | undefined;

/** The index over all cards; built when first asked for. */
export function cardIndex(): CardIndex {
  built ??= cardIndexOf(Object.entries(wordsOfCards));
  return built;
}

/** An index over cards by their ids, each with the words of its title and then of its ways of asking. */
export function cardIndexOf(cards: readonly (readonly [string, readonly string[]])[]): CardIndex {
  const search = new MiniSearch({
    fields: Object.keys(boost),
    tokenize: (text) => text.split(' '),
    processTerm: (term) => term,
  });
  search.addAll(cards.map(([id, [title, ...asks]]) => ({ id, title, asks: asks.join(' ') })));
  const { numbers, weights } = wordsOf(cards.map(([, phrases]) => phrases.flatMap((phrase) => phrase.split(' '))));
  const weight = (word: string): number => weights[numbers.get(word) ?? -1] ?? 0;
  const rarest = Math.log2(1 + cards.length);
  const unknown = (word: string): number => rarest * (isSpokenOf(word) ? strange.spokenOf : strange.foreign);
  const phrases = new Map(
    cards.map(([id, lines]) => [
      id,
      lines.map((line) =>
        phraseOf(
          line.split(' ').map((word) => numbers.get(word)!),
          weights,
          id.startsWith('term-'),
        ),
      ),
    ]),
  );

  const find = (terms: readonly Term[]): Found[] => {
    const words = new Set(terms.flatMap(({ head, typed }) => [head, typed]));
    if (words.size === 0) return [];
    const weigh = (list: Iterable<string>): number =>
      [...list].reduce((sum, word) => sum + (weight(word) || unknown(word)), 0);
    const all = weigh(words);
    const results = search.search({ combineWith: 'OR', queries: [...words] }, { boost }).slice(0, close);
    const top = results[0]?.score ?? 1;
    const isSaid = new Uint8Array(weights.length);
    for (const word of words) {
      const number = numbers.get(word);
      if (number !== undefined) isSaid[number] = 1;
    }
    return results
      .map(({ id, score, queryTerms }) => {
        let alike = 0;
        for (const phrase of phrases.get(id)!) alike = Math.max(alike, likeness(phrase, isSaid, weights, all));
        const share = weigh(queryTerms) / all;
        const heard = terms.filter(({ head, typed }) => queryTerms.includes(head) || queryTerms.includes(typed));
        return {
          id: String(id),
          score: counts.alike * alike + counts.share * share + (counts.order * score) / top,
          sure: share >= (heard.length > 1 ? enough.several : enough.one),
        };
      })
      .sort((a, b) => b.score - a.score || (a.id < b.id ? -1 : 1));
  };
  const nearest = (word: string): string | undefined => {
    if (word.length < shortestSlip) return undefined;
    const near = search.search(word, { fuzzy, prefix: true }).flatMap(({ terms }) => terms);
    return near.find((term) => term[0] === word[0] && (term.startsWith(word) || oneSlip(word, term)));
  };
  return { find, weight, nearest };
}

/** The words of all cards by number, with the weight of each. Rare ones weigh more: one that few cards speak of says much. */
function wordsOf(cards: readonly (readonly string[])[]): {
  readonly numbers: ReadonlyMap<string, number>;
  readonly weights: readonly number[];
} {
  const spoken = new Map<string, number>();
  for (const words of cards) for (const word of new Set(words)) spoken.set(word, (spoken.get(word) ?? 0) + 1);
  const numbers = new Map(Array.from(spoken.keys(), (word, at) => [word, at]));
  return { numbers, weights: Array.from(spoken.values(), (times) => Math.log2(1 + cards.length / times)) };
}

function phraseOf(words: readonly number[], weights: readonly number[], isTerm: boolean): Phrase {
  const all = words.reduce((sum, word) => sum + weights[word]!, 0);
  return { words, weight: all, tells: isTerm || words.length > 1 ? 1 : Math.min(1, all / telling) };
}

/** How much of two phrases, by weight, is in both. */
function likeness(phrase: Phrase, isSaid: Uint8Array, weights: readonly number[], all: number): number {
  let both = 0;
  for (const word of phrase.words) if (isSaid[word] === 1) both += weights[word]!;
  return (phrase.tells * 2 * both) / (phrase.weight + all);
}
