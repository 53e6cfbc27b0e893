import type { CardsFound, Scene } from './scene.ts';
import { type CardIndex, cardIndex, type Found } from './search/card-index.ts';
import { cardsById } from './search/shelf.ts';
import { hitOf } from './search/shown.ts';
import { type Term, termsOf } from './search/terms.ts';
import { inTexts } from './search/text-index.ts';

/** Words a search is asked with, at most. */
const mostWords = 5;
/** Of them, words that no card knows. */
const mostUnknown = 2;

/** Searches the cards with the telling words of a question, never with the whole of it. The same question finds the same. */
export function searchCards({ understood, request, voice }: Scene, most = 3): CardsFound {
  const index = cardIndex();
  const terms = telling(termsOf(understood.sentence, request.question), index);
  const found = index.find(terms);
  const hits = emergenciesLast(found.filter(({ sure }) => sure)).slice(0, most);
  const near = hits.length > 0 ? [] : [...new Set([...found.map(({ id }) => id), ...inTexts(terms)])].slice(0, most);
  return {
    heard: terms.filter(({ head, typed }) => index.weight(head) > 0 || index.weight(typed) > 0).length,
    hits: hits.map(({ id, score }) => hitOf(cardsById.get(id)!, score, voice)),
    didYouMean: near.map((id) => hitOf(cardsById.get(id)!, 0, voice)),
  };
}

/** The rarest words; one that no card knows is taken for the known word a slip away, where there is one. */
export function telling(terms: readonly Term[], { weight, nearest }: CardIndex): Term[] {
  const heaviest = ({ head, typed }: Term): number => Math.max(weight(head), weight(typed));
  const known = terms
    .filter((term) => heaviest(term) > 0)
    .map(({ head, typed }) => ({ head: weight(head) > 0 ? head : typed, typed: weight(typed) > 0 ? typed : head }))
    .sort((a, b) => heaviest(b) - heaviest(a));
  const unknown = terms.filter((term) => heaviest(term) === 0).slice(0, mostUnknown);
  const mended = unknown.map((term) => {
    const near = nearest(term.typed);
    return near ? { head: near, typed: near } : term;
  });
  return [...known.slice(0, mostWords - mended.length), ...mended];
}

/**
 * What is happening now has been answered before anything is searched; whoever asks about it otherwise wants to know how to
 * be ready for it, so such a card comes after the others.
 */
function emergenciesLast(found: readonly Found[]): Found[] {
  const isEmergency = ({ id }: Found): boolean => cardsById.get(id)!.kind === 'emergency';
  return [...found.filter((each) => !isEmergency(each)), ...found.filter(isEmergency)];
}
