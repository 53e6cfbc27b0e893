import { describe, expect, test } from 'vitest';
import { hear } from './hear.ts';

const heads = (question: string): string[] =>
  hear(question).tokens.flatMap((token) => (token.kind === 'word' ? [token.head] : []));

describe('a question as it is heard', () => {
  test('words become heads, several words one, and case does not matter', () => {
    expect(heads('How MANY tonnage')).toEqual(['how-many', 'ton']);
    expect(heads('the wheel track')).toEqual(['the', 'wheel-path']);
  });

  test('an alias does not reach over a figure', () => expect(heads('how 2 in many')).not.toContain('how-many'));

  test('every word and figure knows where it stands in the question', () => {
    const question = 'premix for 12 ft';
    const places = hear(question).tokens.map(({ at }) => question.slice(...at));
    expect(places).toContain('premix');
    expect(places).toContain('12 ft');
  });

  test.each([
    ['2 in', '#length'],
    ['400 sq yd', '#area'],
    ['15 tons', '#mass'],
    ['0.05 gal/yd2', '#rate'],
    ['45 mph', '#speed'],
    ['50 F', '#temperature'],
    ['5 %', '#ratio'],
    ['20 minutes', '#time'],
    ['12', '#number'],
    ['1:1', '#parts'],
  ])('%s is heard as %s', (figure, sign) => {
    const { places } = hear(`premix ${figure}`);
    expect(places.has(sign)).toBe(true);
    expect(places.has('#figure')).toBe(true);
  });

  test('no figure is no sign of one', () =>
    expect([...hear('premix lift').places.keys()].filter((key) => key.startsWith('#'))).toEqual([]));

  test('after a place, small words are passed over', () => {
    const sentence = hear('deep is the lift');
    const [deep, lift] = [sentence.places.get('deep')![0]!, sentence.places.get('lift')![0]!];
    expect(sentence.after(deep)).toBe(lift);
  });
});

describe('a question for yes or no', () => {
  test.each([
    ['can the lift', true],
    ['is the lift deep', true],
    ['lift deep ok', true],
    ['how many lift', false],
    ['what lift', false],
    ['deep lift', false],
    ['how deep can the lift', false],
  ] as const)('%s: %s', (question, wanted) => expect(hear(question).places.has('@check')).toBe(wanted));

  test('a question for the reason', () => {
    expect(hear('why deep').places.has('@why')).toBe(true);
    expect(hear('deep').places.has('@why')).toBe(false);
  });
});
