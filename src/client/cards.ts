/** The cards alone, a file of their own. */
export { cards, wordsOfCards } from '../ask/cards.generated.ts';
