import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeFieldOf, readAnswers } from '../../src/ask/quiz/desk/answers.ts';
import { endsInWords, keyInWords, unitInWords } from '../../src/ask/quiz/figures.ts';
import { type Given, markItem, score } from '../../src/ask/quiz/mark.ts';
import type { QuizItem } from '../../src/ask/reply.ts';
import { keysOf, rightAnswer, setOf } from './sets.ts';

const { set } = setOf({ count: 80, seed: 'marks' });

/** An answer that is wrong. */
function wrongAnswer(item: QuizItem): Given {
  if (item.kind === 'number') return [String(Number(item.key) * 2 + 1)];
  if (item.kind === 'order') return [...rightAnswer(item)].reverse();
  return item.options.flatMap(({ text }, at) => (keysOf(item).includes(text) ? [] : [String(at)])).slice(0, 1);
}

describe('marking', () => {
  test('the key is right, anything else wrong, nothing left out', () => {
    for (const item of set.items) {
      expect(markItem(item, rightAnswer(item)), item.stem).toBe('right');
      expect(markItem(item, wrongAnswer(item)), item.stem).toBe('wrong');
      expect(markItem(item, [])).toBe('open');
      expect(markItem(item, ['', ' '])).toBe('open');
    }
  });

  test('an item to mark every one wants all of them and no other', () => {
    const item = set.items.find(({ kind, key }) => kind === 'many' && typeof key === 'object' && key.length > 1)!;
    const right = rightAnswer(item);
    expect(markItem(item, right.slice(1))).toBe('wrong');
    expect(
      markItem(
        item,
        item.options.map((_, at) => String(at)),
      ),
    ).toBe('wrong');
    expect(markItem(item, [...right].reverse())).toBe('right');
  });

  const fill: QuizItem = {
    ...set.items[0]!,
    kind: 'number',
    options: [],
    key: 18,
    tolerance: 0.5,
    unit: 'in',
    stem: 'How wide?',
  };
  test.each([
    ['18', 'right'],
    ['18 in', 'right'],
    ['18 inches', 'right'],
    ['17 1/2', 'right'],
    ['18.5', 'right'],
    ['1.5 ft', 'right'],
    ['18,4', 'right'],
    ['18.51', 'wrong'],
    ['17.4', 'wrong'],
    ['18 lb', 'wrong'],
    ['18 or 20', 'wrong'],
    ['15 to 20', 'wrong'],
    ['wide', 'wrong'],
    ['-18', 'wrong'],
    ['NaN', 'wrong'],
    ['1e999', 'wrong'],
    ['   ', 'open'],
  ] as const)('typed %j is %s', (typed, mark) => expect(markItem(fill, [typed])).toBe(mark));

  test('a thousands comma is read, and a count has to be met', () => {
    expect(markItem({ ...fill, key: 5400, tolerance: 110, unit: 'ft' }, ['5,400'])).toBe('right');
    expect(markItem({ ...fill, key: 4, tolerance: 0, unit: '1' }, ['4'])).toBe('right');
    expect(markItem({ ...fill, key: 4, tolerance: 0, unit: '1' }, ['4.2'])).toBe('wrong');
  });

  test('whatever is typed, nothing is thrown', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...set.items),
        fc.array(fc.string({ maxLength: 80 }), { maxLength: 9 }),
        (item, given) => {
          expect(['right', 'wrong', 'open']).toContain(markItem(item, given));
        },
      ),
      { numRuns: 500, seed: 3 },
    );
  });
});

describe('a score', () => {
  test('is by topic, and names the musts that were missed', () => {
    const { set: flagger } = setOf({ seat: 'flagger', count: 10, seed: 'a' });
    const must = flagger.items.findIndex(({ mustPass }) => mustPass);
    const given = flagger.items.map((item, at) => (at === must ? wrongAnswer(item) : rightAnswer(item)));
    const { right, of, topics, missedMusts } = score(flagger.items, given);
    expect([right, of, missedMusts]).toEqual([9, 10, [must + 1]]);
    expect(topics.reduce((sum, topic) => sum + topic.right, 0)).toBe(9);
    expect(topics.reduce((sum, topic) => sum + topic.of, 0)).toBe(10);
    expect(score(flagger.items, []).missedMusts.length).toBeGreaterThanOrEqual(4);
  });
});

test('answers come out of a form in the order of the items', () => {
  const form = new URLSearchParams();
  for (const item of [...set.items].reverse()) {
    rightAnswer(item).forEach((value, at) => {
      form.append(item.kind === 'order' ? placeFieldOf(item, at) : `answer-${item.id}`, value);
    });
  }
  const { right, of } = score(set.items, readAnswers(set.items, form));
  expect(right).toBe(of);
});

describe('a figure in a key', () => {
  const item = set.items[0]!;
  test.each([
    [0.09677, 0.0039, 'gal/yd2', '0.097 gal/sq yd', ['0.093', '0.101']],
    [30.63, 0.61, 'ton', '30.6 tons', ['30', '31.2']],
    [5400, 110, 'ft', '5,400 ft', ['5,290', '5,510']],
    [4, 0, '1', '4', undefined],
  ] as const)('%d within %d %s', (key, tolerance, unit, text, ends) => {
    const number: QuizItem = { ...item, kind: 'number', key, tolerance, unit };
    expect(keyInWords(number)).toBe(text);
    expect(endsInWords(number)).toEqual(ends);
  });

  test('what is printed counts as right', () => {
    for (const number of set.items.filter(({ kind }) => kind === 'number')) {
      expect(markItem(number, [keyInWords(number)]), keyInWords(number)).toBe('right');
      for (const end of endsInWords(number) ?? []) {
        // An end is rounded to the step that is printed: it may lie a step's half outside.
        const off = Math.abs(Number(end.replaceAll(',', '')) - Number(number.key));
        expect(off).toBeLessThanOrEqual(number.tolerance! * 1.5);
      }
    }
  });

  test('units are written as people write them', () => {
    expect(['yd2', 'ton', 'gal/yd2', '1', undefined, 'nonsense'].map(unitInWords)).toEqual([
      'sq yd',
      'tons',
      'gal/sq yd',
      '',
      '',
      '',
    ]);
  });
});
