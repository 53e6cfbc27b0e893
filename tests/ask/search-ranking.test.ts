import { describe, expect, test } from 'vitest';
import { searchCards } from '../../src/ask/search.ts';
import { sceneOf } from './scenes.ts';

const found = (question: string, most = 10): string[] => searchCards(sceneOf(question), most).hits.map(({ id }) => id);
const ahead = (list: readonly string[], one: string, other: string): void => {
  expect(list).toContain(one);
  const [first, second] = [list.indexOf(one), list.indexOf(other)];
  expect(second === -1 || first < second, `${one} before ${other} in ${list.join(', ')}`).toBe(true);
};

describe('why one card comes before another', () => {
  test('a way of asking word for word beats cards that only share a word of it', () => {
    const { hits } = searchCards(sceneOf('roller will not climb'));
    expect(hits[0]?.id).toBe('steep-grade');
    ahead(found('roller will not climb'), 'steep-grade', 'breakdown-roller');
  });

  test('a title that is the whole question beats a longer one that holds it', () => {
    expect(found('moldboard')[0]).toBe('term-moldboard');
    ahead(found('moldboard'), 'term-moldboard', 'craft-pitch');
  });

  test('the word as typed tells apart what its head word makes one: moldboard and blade', () => {
    expect(found('what is a moldboard')[0]).toBe('term-moldboard');
    expect(found('walk around the blade machine in the morning')[0]).toBe('preshift-grader');
  });

  test('a rare word decides over a common one: paddle over flagger', () => {
    ahead(found('flagger paddle'), 'paddle', 'one-flagger');
    ahead(found('flagger training card'), 'new-flagger', 'paddle');
  });

  test('two words of the question beat one', () => {
    ahead(found('tack on the second lift'), 'tack-between-lifts', 'craft-next-lift');
    ahead(found('roller broke down'), 'breakdown-roller', 'breakdown-grader');
    ahead(found('grader broke down'), 'breakdown-grader', 'breakdown-roller');
  });

  test('short and to the point beats long and about more: bridge deck and posted bridge', () => {
    expect(found('patch on a bridge deck')[0]).toBe('bridge-deck');
    expect(found('bridge weight limit')[0]).toBe('load-limits');
  });

  test('a trade word finds the card that uses another one for the same thing', () => {
    expect(found('berm of blacktop meaning')[0]).toBe('term-windrow');
    expect(found('cold mix pushes under the rodillo')[0]).toBe('cold-mix-airing');
  });

  test('endings do not count: dump, dumps, dumping', () => {
    const places = ['where does the first truck dump', 'where do the first trucks dump', 'first truck dumping'].map(
      (question) => found(question)[0],
    );
    expect(places).toEqual(['dump-points', 'dump-points', 'dump-points']);
  });

  test('nor does the order of the words', () => {
    const asked = ['shoulder low after the patch', 'patch after shoulder low the'];
    expect(new Set(asked.map((question) => found(question)[0]))).toEqual(new Set(['low-shoulder']));
  });

  test.each([
    ['superelvation', 'banked-curve'],
    ['drivway in the zone', 'house-drives'],
    ['pedestrain in the lane', 'bikes-and-walkers'],
    ['supereleva', 'banked-curve'],
  ])('a slip or a word cut short is mended: %s', (question, card) => {
    expect(found(question)[0]).toBe(card);
  });

  test('a slip in a short word is not guessed at: pee is no bee', () => {
    expect(found('flagger has to pee')).not.toContain('bees-and-snakes');
  });

  test('words that only ask do not count while another word does: what do I do about fog', () => {
    expect(found('what do i do about the fog')).toEqual(found('fog'));
  });

  test('a card for an emergency comes after every other: nobody is hurt now, so being ready comes first', () => {
    const ids = found('which extinguisher for a tank on fire', 20);
    expect(ids[0]).toBe('fire-ready');
    const firstEmergency = ids.findIndex((id) => id.startsWith('emergency-'));
    expect(firstEmergency).toBeGreaterThan(0);
    expect(ids.slice(firstEmergency).every((id) => id.startsWith('emergency-'))).toBe(true);
  });

  test('a ramble is searched by its five rarest words', () => {
    const short = found('dead nozzle pad test bar height corduroy');
    expect(short[0]).toBe('even-spray');
    expect(
      found(
        `so the other day the boss and I and the crew were out there and ${'we had the truck and the mix and the patch and '.repeat(10)} bar height nozzle angle pad test`,
      )[0],
    ).toBe('even-spray');
  });
});
