import MiniSearch from 'minisearch';
import { describe, expect, test } from 'vitest';
import { cards } from '../../src/ask/cards.generated.ts';
import { searchCards } from '../../src/ask/search.ts';
import { linesOf, pairsOf } from '../content/lines.ts';
import { sceneOf } from './scenes.ts';

type Search = (question: string) => readonly string[];

const ours: Search = (question) => searchCards(sceneOf(question)).hits.map(({ id }) => id);

/** The same library as it comes, over the same cards, asked with the whole question. */
const plain: Search = (() => {
  const search = new MiniSearch({ fields: ['title', 'asks', 'text'] });
  search.addAll(cards.map((card) => ({ ...card, asks: card.asks.join('. ') })));
  return (question) => search.search(question).map(({ id }) => String(id));
})();

/** How often the right card comes first, and among the first three, in per cent. */
function hits(search: Search, file: string): { first: number; three: number } {
  const asked = pairsOf(file);
  const places = asked.map(({ card, text }) => search(text).indexOf(card));
  const share = (within: number): number =>
    (100 * places.filter((place) => place >= 0 && place < within).length) / asked.length;
  return { first: share(1), three: share(3) };
}

describe('the right card comes first', () => {
  test.each([
    ['queries.txt', 92, 98, 120],
    ['queries-later.txt', 90, 95, 60],
  ] as const)('%s', (file, first, three, least) => {
    const [found, baseline] = [hits(ours, file), hits(plain, file)];
    const say = ({ first, three }: typeof found): string =>
      `first ${first.toFixed(1)} %, of three ${three.toFixed(1)} %`;
    console.info(`${file}: ${say(found)}; plain search: ${say(baseline)}`);
    expect(pairsOf(file).length).toBeGreaterThanOrEqual(least);
    expect(found.first).toBeGreaterThanOrEqual(first);
    expect(found.three).toBeGreaterThanOrEqual(three);
    expect(found.first).toBeGreaterThan(baseline.first);
    expect(found.three).toBeGreaterThan(baseline.three);
  });

  test('with a slip in the rarest long word, in nine of ten', () => {
    const asked = pairsOf('queries.txt').flatMap(({ card, text }) => {
      const word = text.match(/[a-z]{7,}/g)?.sort((a, b) => b.length - a.length)[0];
      return word ? [{ card, text: text.replace(word, word.slice(0, 3) + word.slice(4)) }] : [];
    });
    const right = asked.filter(({ card, text }) => ours(text).includes(card));
    console.info(`slips: ${right.length} of ${asked.length}`);
    expect(asked.length).toBeGreaterThan(80);
    expect(right.length / asked.length).toBeGreaterThanOrEqual(0.9);
  });
});

describe('nothing is claimed where nothing is known', () => {
  test('nine in ten questions of another world find no card', () => {
    const asked = linesOf('not-cards.txt');
    const claimed = asked.filter((text) => ours(text).length > 0);
    expect(asked.length).toBeGreaterThanOrEqual(30);
    expect(claimed.length).toBeLessThanOrEqual(asked.length / 10);
  });

  test('the nearest cards are offered in their place, where there are any', () => {
    const { hits, didYouMean } = searchCards(sceneOf('which movie should we watch'));
    expect(hits).toEqual([]);
    expect(didYouMean.length).toBeGreaterThan(0);
    expect(searchCards(sceneOf('zxcvb qwert')).didYouMean).toEqual([]);
  });
});

describe('a search is quick and always the same', () => {
  const rambling =
    'the row and the roller and the windrow of tack past the manhole by the bridge deck with a flagger '.repeat(20);

  test('a text of two thousand letters takes less than 20 ms', () => {
    const scene = sceneOf(rambling.slice(0, 2000));
    searchCards(scene);
    const times = Array.from({ length: 9 }, () => {
      const from = performance.now();
      searchCards(scene);
      return performance.now() - from;
    });
    expect(times.sort((a, b) => a - b)[4]).toBeLessThan(20);
  });

  test('the same question finds the same, in the same order', () => {
    for (const { text } of pairsOf('queries-later.txt'))
      expect(searchCards(sceneOf(text))).toEqual(searchCards(sceneOf(text)));
  });

  test('scores run from 0 to 1, and fall', () => {
    for (const { text } of pairsOf('queries.txt')) {
      const scores = searchCards(sceneOf(text), 10)
        .hits.filter(({ id }) => !id.startsWith('emergency-'))
        .map(({ score }) => score);
      expect(scores).toEqual([...scores].sort((a, b) => b - a));
      for (const score of scores) expect(score).toBeGreaterThan(0);
      for (const score of scores) expect(score).toBeLessThanOrEqual(1);
    }
  });
});
