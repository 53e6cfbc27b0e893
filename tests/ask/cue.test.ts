import { describe, expect, test } from 'vitest';
import { fitOf, placesOf, readCue, wordsOf } from '../../src/ask/cue.ts';
import { heard } from './hear.ts';

const one = (): number => 1;
const fits = (cue: string, words: string): boolean => fitOf(readCue(cue), heard(words), one) !== undefined;

describe('the signs of a cue', () => {
  test.each([
    ['all words, in any order', 'lift thick', 'thick the lift', true],
    ['a word missing', 'lift thick', 'the lift', false],
    ['either of two', 'lift|layer thick', 'thick layer', true],
    ['neither of two', 'lift|layer thick', 'thick row', false],
    ['side by side in this order', 'how+thick', 'how thick', true],
    ['side by side the other way round', 'how+thick', 'thick how', false],
    ['small words between', 'bottom+patch', 'bottom of the patch', true],
    ['another word between', 'how+thick', 'how very thick', false],
    ['either of two in a run', 'how+thick|deep', 'how deep', true],
    ['a run of three', 'how+many+lifts', 'so how many lifts', true],
    ['a run of three, broken', 'how+many+lifts', 'how many big lifts', false],
    ['the second place the word stands', 'how+thick', 'how wide and how thick', true],
    ['a word that rules it out', 'lift -truck', 'lift the truck', false],
    ['that word is not there', 'lift -truck', 'lift', true],
    ['a run that rules it out', 'lift -lift+gate', 'lift gate', false],
    ['its words apart do not', 'lift -lift+gate', 'gate lift', true],
    ['a word that helps and is not there', 'lift ?thick', 'lift', true],
    ['a dimension', '#length wide', '#length wide', true],
    ['a form of question', '@check lift', '@check lift', true],
  ])('%s', (_, cue, words, wanted) => expect(fits(cue, words)).toBe(wanted));
});

describe('how well a cue fits', () => {
  const weight = (word: string): number => ({ lift: 2, thick: 3, layer: 5 })[word] ?? 1;
  const score = (cue: string, words: string) => fitOf(readCue(cue), heard(words), weight);

  test('is the sum of the weights of what it hears', () => expect(score('lift thick', 'thick lift')).toBe(2 + 3));
  test('counts what helps only when it is heard', () => {
    expect(score('lift ?thick', 'thick lift')).toBe(2 + 3);
    expect(score('lift ?thick', 'lift')).toBe(2);
  });
  test('takes the lighter of alternatives that are both heard', () =>
    expect(score('lift|layer', 'layer lift')).toBe(2));
  test('gives one more for each word that must stand beside another', () =>
    expect(score('lift+thick', 'lift thick')).toBe(2 + 3 + 1));
  test('does not count what rules it out', () => expect(score('lift -layer', 'lift')).toBe(2));
});

test('a cue without a word that must be there is refused', () => {
  expect(() => readCue('?lift -truck')).toThrow(SyntaxError);
  expect(() => readCue('  ')).toThrow(SyntaxError);
});

test('words are turned into their heads when a cue is read', () => {
  const cue = readCue(
    'tonnage -loads+gone ?trucks',
    (word) => ({ tonnage: 'ton', loads: 'load', trucks: 'truck' })[word] ?? word,
  );
  expect([...wordsOf(cue)].sort()).toEqual(['gone', 'load', 'ton', 'truck']);
});

test('the places a cue spends are those of the words it must have', () => {
  expect(placesOf(readCue('how+thick lift ?big'), heard('big how thick a lift'))).toEqual([1, 2, 4]);
});
