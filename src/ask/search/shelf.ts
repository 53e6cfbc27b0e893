import { cards } from '../cards.generated.ts';
import type { Card } from './card.ts';

/** Every card by its id. */
export const cardsById: ReadonlyMap<string, Card> = new Map(cards.map((card) => [card.id, card]));
