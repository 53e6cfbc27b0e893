import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildQuiz } from '../../src/ask/quiz/build.ts';
import { lintSet } from '../../src/ask/quiz/lint-set.ts';
import type { QuizRequest } from '../../src/ask/quiz/request.ts';
import { kinds, levels } from '../../src/ask/quiz/shapes.ts';
import { seats, topics } from '../../src/ask/quiz/topics.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import { faultOf, keysOf, setOf } from './sets.ts';

/** More sets can be asked for: QUIZ_SETS=10000 npx vitest run tests/quiz/sets.test.ts */
const runs = Number(process.env.QUIZ_SETS ?? 300);

const request: fc.Arbitrary<QuizRequest> = fc.record(
  {
    topics: fc.uniqueArray(fc.constantFrom(...topics), { maxLength: 3 }),
    levels: fc.uniqueArray(fc.constantFrom(...levels), { maxLength: 2 }),
    kinds: fc.uniqueArray(fc.constantFrom(...kinds), { maxLength: 3 }),
    seat: fc.constantFrom(...Object.keys(seats)),
    seed: fc.string({ maxLength: 12 }),
    variant: fc.constantFrom('A' as const, 'B' as const),
    count: fc.integer({ min: 4, max: 14 }),
  },
  { requiredKeys: ['count'] },
);

test(`${runs} sets, whatever is asked for: every item and every set keeps the rules, and the blueprint is met`, {
  timeout: 30_000 + runs * 60,
}, () => {
  let made = 0;
  fc.assert(
    fc.property(request, (asked) => {
      const built = buildQuiz(knowledge, asked);
      if ('fault' in built) {
        expect(built.fault).toMatch(/^(\d+ are too many: \d+ different|There are no questions like that)/);
        return;
      }
      made++;
      const { set } = built;
      expect(lintSet(built.made, asked.count)).toEqual([]);
      for (const item of set.items) {
        if (item.mustPass && asked.seat) continue;
        if (asked.topics?.length) expect(asked.topics).toContain(item.topic);
        if (asked.levels?.length) expect(asked.levels).toContain(item.level);
        if (asked.kinds?.length) expect(asked.kinds).toContain(item.kind);
      }
      expect(JSON.stringify(set)).toBe(JSON.stringify(setOf(asked).set));
    }),
    { numRuns: runs, seed: 14 },
  );
  expect(made).toBeGreaterThan(runs / 2);
});

describe('a set', () => {
  test('comes out the same from the same seed, and otherwise from another', () => {
    const one = setOf({ topics: ['mix'], count: 10, seed: 'winter' });
    expect(JSON.stringify(setOf({ topics: ['mix'], count: 10, seed: 'winter' }))).toBe(JSON.stringify(one));
    expect(setOf({ topics: ['mix'], count: 10, seed: 'spring' }).set.items).not.toEqual(one.set.items);
  });

  test('has a seed of its own when none is named: the same request, the same set', () => {
    const { set } = setOf({ count: 5 });
    expect(set.seed).toMatch(/^[0-9a-f]{8}$/);
    expect(setOf({ count: 5 }).set).toEqual(set);
    expect(setOf({ count: 5, topics: ['tack'] }).set.seed).not.toBe(set.seed);
  });

  test.each(['', ' ', '\u0000', '日本', 'a"b<c>&,\r\n', 'x'.repeat(2000)])('takes a seed of any text: %j', (seed) => {
    expect(setOf({ count: 6, seed }).set.seed).toBe(seed);
  });

  test('B asks the same points as A, with other figures and in another order', () => {
    for (const seed of ['a', 'b', 'c', 'd']) {
      const [a, b] = (['A', 'B'] as const).map((variant) =>
        setOf({ topics: ['mix', 'rolling'], count: 12, seed, variant }),
      );
      const cells = (set: typeof a) =>
        set!.made.map(({ item, point }) => `${point} ${item.topic} ${item.level} ${item.kind}`);
      expect(cells(b).sort()).toEqual(cells(a).sort());
      expect(cells(b)).not.toEqual(cells(a));
      const stems = new Set(a!.set.items.map(({ stem }) => stem));
      const figured = b!.set.items.filter(({ kind }) => kind === 'number');
      expect(figured.filter(({ stem }) => stems.has(stem)).length).toBeLessThan(Math.max(1, figured.length));
    }
  });

  test('carries the version of the rules', () => {
    expect(setOf({ count: 4 }).set.rules.version).toBe(knowledge.version);
  });

  test('on rolling, ten, easy, can be had: and so can ten on every large topic', () => {
    for (const topic of ['rolling', 'tack', 'mix', 'lifts', 'blade', 'traffic', 'faults'])
      expect(setOf({ topics: [topic], levels: ['easy'], count: 10, seed: 'a' }).set.items).toHaveLength(10);
  });
});

describe('a set by seat', () => {
  test.each(Object.entries(seats))('%s has every item that must be right', (seat, { musts }) => {
    for (const seed of ['a', 'b', 'c']) {
      const { items } = setOf({ seat, count: 10, seed }).set;
      const asked = items.filter(({ mustPass }) => mustPass).map(({ rule }) => rule);
      expect(asked).toEqual(expect.arrayContaining(musts.map((rule) => `practice/${rule}`)));
      expect(new Set(items.map((item) => item.seat))).toEqual(new Set([seat]));
    }
  });

  test('an item that must be right never offers a wrong way to choose from', () => {
    for (let at = 0; at < 40; at++) {
      const { items } = setOf({ topics: ['safety'], levels: ['easy'], kinds: ['one'], count: 5, seed: String(at) }).set;
      for (const item of items) {
        expect(item.mustPass).toBe(true);
        const wrong = item.options.filter(({ text }) => !keysOf(item).includes(text));
        const as = item.drawing ? 'not-in-the-drawing' : 'does-hold';
        expect(new Set(wrong.map(({ mistake }) => mistake))).toEqual(new Set([as]));
      }
    }
  });

  test('too small for them is said', () => {
    expect(faultOf({ seat: 'flagger', count: 3 })).toBe(
      'A set for the flagger has 4 questions that must be right. Ask for at least 4.',
    );
  });
});

describe('what cannot be had is said, with what can', () => {
  test.each([
    [{ count: 0 }, 'Ask for 1 to 100 questions.'],
    [{ count: -3 }, 'Ask for 1 to 100 questions.'],
    [{ count: 2.5 }, 'Ask for 1 to 100 questions.'],
    [{ count: Number.NaN }, 'Ask for 1 to 100 questions.'],
    [{ count: 101 }, 'Ask for 1 to 100 questions.'],
  ])('%j', (asked, said) => expect(faultOf(asked)).toBe(said));

  test('an unknown topic, seat, level or kind names those there are', () => {
    expect(faultOf({ count: 5, topics: ['cooking'] })).toMatch(
      /^There are no questions on "cooking"\. There are on rolling, tack, /,
    );
    expect(faultOf({ count: 5, seat: 'cook' })).toMatch(/^"cook" is no seat\. Take new-hand, flagger, /);
    expect(faultOf({ count: 5, levels: ['mad'] })).toBe('"mad" is no level. Take easy, medium, hard, or leave it out.');
    expect(faultOf({ count: 5, kinds: ['essay'] })).toMatch(/^"essay" is no kind of question\. Take true-false, one, /);
    expect(faultOf({ count: 5, seat: 'toString' })).toMatch(/is no seat/);
  });

  test('more than a topic has: the number it has can be had', () => {
    const said = faultOf({ topics: ['weather'], count: 60, seed: 'a' });
    const most = Number(/: (\d+) different questions can be had on weather\./.exec(said)![1]);
    expect(most).toBeGreaterThan(4);
    expect(setOf({ topics: ['weather'], count: most, seed: 'a' }).set.items).toHaveLength(most);
  });
});

test('fifty items take less than 50 ms', () => {
  for (let at = 0; at < 3; at++) setOf({ count: 50, seed: `warm ${at}` });
  const times = [1, 2, 3, 4, 5].map((at) => {
    const before = performance.now();
    setOf({ count: 50, seed: `timed ${at}` });
    return performance.now() - before;
  });
  // The quickest of five: other work on the machine slows one or the other.
  expect(Math.min(...times)).toBeLessThan(50);
});
