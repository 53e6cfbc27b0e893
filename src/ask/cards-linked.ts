import { cards } from './cards.generated.ts';
import type { Voice } from './judging.ts';
import type { CardHit } from './reply.ts';
import type { Card } from './search/card.ts';
import { hitOf } from './search/shown.ts';

const mostCards = 3;

/** Cards by the records they bear on; those that bear on few come first, for they say the most of each. */
const byLink = new Map<string, Card[]>();
for (const card of [...cards].sort((a, b) => a.links.length - b.links.length || (a.id < b.id ? -1 : 1))) {
  if (card.kind === 'emergency') continue;
  for (const link of card.links) {
    const list = byLink.get(link);
    if (list) list.push(card);
    else byLink.set(link, [card]);
  }
}

/** The cards that bear on the records an answer used, given as `kind/id`, the most important first. */
export function linkedCards(addresses: readonly string[], voice: Voice): CardHit[] {
  const found = new Set(addresses.flatMap((address) => byLink.get(address) ?? []));
  return [...found].slice(0, mostCards).map((card, i) => hitOf(card, 1 - i / mostCards, voice));
}
