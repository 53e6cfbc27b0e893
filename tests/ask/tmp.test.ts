import { test } from 'vitest';
import { searchCards } from '../../src/ask/search.ts';
import { termsOf } from '../../src/ask/search/terms.ts';
import { linesOf, pairsOf } from '../content/lines.ts';
import { sceneOf } from './scenes.ts';
test('x', () => {
  for (const { card, text } of pairsOf('queries.txt')) {
    const word = text.match(/[a-z]{7,}/g)?.sort((a, b) => b.length - a.length)[0]; if (!word) continue;
    const t = text.replace(word, word.slice(0, 3) + word.slice(4)); const s = sceneOf(t);
    const f = searchCards(s).hits; if (!f.some((h) => h.id === card)) console.log(card, '|', t, '|', termsOf(s.understood.sentence, t).map((x) => x.head + '/' + x.typed).join(' '), '=>', f.map((h) => h.id + h.score).join(' '));
  }
  for (const text of linesOf('not-cards.txt')) { const f = searchCards(sceneOf(text)); if (f.hits.length) console.log('CLAIM', text, f.hits[0]!.id, f.hits[0]!.score, f.didYouMean.map((h)=>h.id)); }
});
