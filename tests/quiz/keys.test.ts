import { describe, expect, test } from 'vitest';
import { problems } from '../../src/ask/quiz/problems.ts';
import { topics } from '../../src/ask/quiz/topics.ts';
import { figureIn, reckoned, stemsKnown } from './reckon.ts';
import { setOf } from './sets.ts';

const sets = topics
  .filter((topic) => !['repairs', 'faults', 'steps', 'safety', 'hazards', 'weather'].includes(topic))
  .flatMap((topic) =>
    ['a', 'b', 'c', 'd', 'e', 'f'].map((seed) => setOf({ topics: [topic], kinds: ['one', 'number'], count: 9, seed })),
  );
const items = sets.flatMap(({ set }) => set.items);
const figured = items.filter(({ rule }) => rule.startsWith('relation/'));

describe('keys of problems in figures, reckoned from the stem by plain arithmetic', () => {
  test('every problem came up, and every stem is known to the reckoner', () => {
    expect(figured.filter(({ stem }) => !reckoned(stem)).map(({ stem }) => stem)).toEqual([]);
    const seen = new Set(figured.map(({ stem }) => reckoned(stem)!.at));
    expect(stemsKnown).toBe(problems.length - 1); // the two merging tapers read alike
    expect(seen.size).toBeGreaterThan(0.9 * stemsKnown);
  });

  test('a figure to fill in is right within half a thousandth', () => {
    const numbers = figured.filter(({ kind }) => kind === 'number');
    expect(numbers.length).toBeGreaterThan(50);
    for (const { stem, key } of numbers) {
      const { result } = reckoned(stem)!;
      expect(Math.abs(Number(key) - result) / result, stem).toBeLessThan(0.0005);
    }
  });

  test('the option that is the key says that figure, and no other comes within the near miss', () => {
    const chosen = figured.filter(({ kind }) => kind === 'one');
    expect(chosen.length).toBeGreaterThan(50);
    for (const { stem, key, options } of chosen) {
      const { result } = reckoned(stem)!;
      // Gallons and counts are rounded up to whole ones, the rest to the nearest step that the option shows.
      const off = (text: string): number => Math.abs(figureIn(text) - result);
      const said = figureIn(String(key));
      expect(off(String(key)), `${stem} ${key}`).toBeLessThanOrEqual(
        Math.max(0.02 * result, said % 1 === 0 ? 0.999 : 0.05),
      );
      for (const { text } of options.filter((option) => option.text !== key)) {
        expect(off(text), `${stem} ${text}`).toBeGreaterThan(off(String(key)));
        expect(off(text) / result, `${stem} ${text}`).toBeGreaterThan(0.06);
      }
    }
  });

  test('figures stand in rising order', () => {
    for (const { stem, options } of figured.filter(({ kind }) => kind === 'one')) {
      const figures = options.map(({ text }) => figureIn(text));
      expect(figures, stem).toEqual([...figures].sort((a, b) => a - b));
    }
  });
});

/** Bounds as the sources print them, beside the words a stem begins with. */
const bounds: readonly (readonly [stem: RegExp, holds: (figure: number, other: number) => boolean, source: string])[] =
  [
    [/^A steel roller is going ([\d./ ]+) mph/, (v) => v <= 3, 'NAVEDTRA 14081, ch. 11: steel wheel at most 3 mph'],
    [
      /^The edge of the patch stands ([\d./ ]+) in above/,
      (h) => h <= 0.125,
      'UFC 3-270-01, 3.3.4: at most 1/8 in high',
    ],
    [/^A thin hot lift is to go on a road of ([\d./ ]+) °F/, (t) => t >= 55, 'Everett 5-04.3(1) table 1: 55 degF'],
    [/^The open lane is ([\d./ ]+) ft wide/, (w) => w >= 10, 'MUTCD 11th ed., section 6N.07: 10 ft'],
    [
      /^By day a flagger closes the road both ways for ([\d./ ]+) min/,
      (t) => t <= 20,
      'California MUTCD 2026, TA-13: 20 min',
    ],
    [
      /^Across the road the gap under the straightedge is ([\d./ ]+) in/,
      (g) => g <= 0.25,
      'smoothness amendment: 1/4 in across',
    ],
    [/^The tank holds (\d+)% emulsion/, (d) => d >= 50, 'at most one part water to one of emulsion'],
    [/^For the work the speed limit is lowered by (\d+) mph/, (v) => v <= 10, 'MUTCD 11th ed., section 6B.01: 10 mph'],
    [
      /^The truck may carry ([\d.]+) tons by law. It is loaded with ([\d.]+)/,
      (may, has) => has <= may,
      'the figures of the stem',
    ],
    [
      /^The largest stone is ([\d./ ]+) in, and the lift is ([\d./ ]+) in/,
      (s, t) => t >= 1.5 * s,
      'TM 5-822-14: 1.5 times the stone',
    ],
    [/figure is at least 50 °F. The air is (\d+) °F/, (t) => t >= 50, 'printed in the stem'],
  ];

describe('keys of yes-or-no items on limits, held against the printed bounds', () => {
  const judged = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].flatMap(
    (seed) => setOf({ kinds: ['true-false'], count: 45, seed }).set.items,
  );

  test.each(bounds)('%s', (pattern, holds) => {
    const found = judged.flatMap((item) => {
      const figures = pattern.exec(item.stem);
      return figures ? [{ key: item.key, holds: holds(figureIn(figures[1]!), figureIn(figures[2] ?? '0')) }] : [];
    });
    expect(found.length).toBeGreaterThan(0);
    for (const { key, holds: yes } of found) expect(key).toBe(yes ? 'Yes' : 'No');
  });
});

describe('figures read off the published tables', () => {
  /** MUTCD 11th ed., Table 6B-2, level road. */
  const sight: Readonly<Record<number, number>> = {
    20: 115,
    25: 155,
    30: 200,
    35: 250,
    40: 305,
    45: 360,
    50: 425,
    55: 495,
    60: 570,
    65: 645,
    70: 730,
    75: 820,
  };
  /** MUTCD 11th ed., Table 6B-1, in the order A, B, C. */
  const signs: Readonly<Record<string, readonly number[]>> = {
    'Urban, low speed': [100, 100, 100],
    'Urban, high speed': [350, 350, 350],
    Rural: [500, 500, 500],
    'Freeway or expressway': [1000, 1500, 2640],
  };
  const read = 'abcdefghijklmnop'
    .split('')
    .flatMap((seed) => setOf({ topics: ['traffic'], levels: ['easy'], kinds: ['one'], count: 7, seed }).set.items);

  test('stopping distances', () => {
    const found = read.filter(({ rule }) => rule === 'table/stopping-sight');
    expect(found.length).toBeGreaterThan(2);
    for (const { stem, key } of found) {
      const speed = Number(/goes (\d+) mph/.exec(stem)![1]);
      if (sight[speed]) expect(figureIn(String(key)), stem).toBe(sight[speed]);
    }
    expect(found.some(({ stem }) => sight[Number(/goes (\d+) mph/.exec(stem)![1])])).toBe(true);
  });

  test('sign distances', () => {
    const found = read.filter(({ rule }) => rule === 'table/sign-spacing');
    expect(found.length).toBeGreaterThan(2);
    for (const { stem, key } of found) {
      const [, road] = /^Kind of road: (.+?)\. How/.exec(stem)!;
      const row = Object.entries(signs).find(([name]) => name.toLowerCase() === road!.toLowerCase())![1];
      const column = stem.includes('farthest') ? 2 : stem.includes('middle sign') ? 1 : 0;
      expect(figureIn(String(key)), stem).toBe(row[column]);
    }
  });
});

test('a lift in millimeters is judged by the inch of the manual, which the stem need not say', () => {
  const asked = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].flatMap(
    (seed) =>
      setOf({ topics: ['lifts'], kinds: ['true-false'], units: 'metric', count: 3, about: ['limit/lift-max'], seed })
        .set.items,
  );
  const lifts = asked.flatMap(({ stem, key }) => {
    const figure = /^A lift is (\d+) mm thick after rolling\. Does/.exec(stem);
    return figure ? [{ figure: Number(figure[1]), key }] : [];
  });
  expect(lifts.length).toBeGreaterThan(3);
  for (const { figure, key } of lifts) expect(key, String(figure)).toBe(figure <= 25.4 ? 'Yes' : 'No');
});
