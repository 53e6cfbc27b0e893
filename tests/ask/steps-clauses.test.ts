import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { figuresIn, fillClauses } from '../../src/ask/clauses.ts';

const figures: Readonly<Record<string, string>> = { 'lift-loose': '1 1/4 in', 'max:flush-finish': '1/8 in' };
const fill = (template: string): string => fillClauses(template, (name) => figures[name], 'not settled');

describe('a clause', () => {
  test.each([
    ['Lay it. [[Leave {lift-loose} loose.]] Roll it.', 'Lay it. Leave 1 1/4 in loose. Roll it.'],
    ['Lay it. [[Leave {lift-thickness} loose.]] Roll it.', 'Lay it. Roll it.'],
    ['Lay it[[, {lift-thickness} rolled]].', 'Lay it.'],
    ['Order [[{premix-order} of mix|the mix]] today.', 'Order the mix today.'],
    ['[[Flush, or {max:flush-finish} high.|Flush.]]', 'Flush, or 1/8 in high.'],
    ['[[{lift-loose} loose, {lift-thickness} rolled.]] Roll.', 'Roll.'],
    ['[[{a} and {b}|{lift-loose}]]', '1 1/4 in'],
    ['{lift-thickness} thick', 'not settled thick'],
  ])('%s', (template, expected) => {
    expect(fill(template)).toBe(expected);
  });

  test('names its figures', () => {
    expect(figuresIn('[[{a-b} and {max:c}|{d}]] {e}')).toEqual(['a-b', 'max:c', 'd', 'e']);
  });

  test('leaves no sign of itself, whatever is known', () => {
    const names = fc.constantFrom('a', 'b', 'c-d');
    const part = fc.oneof(
      fc.constantFrom('Roll it.', 'Then', 'lay', ','),
      names.map((name) => `[[at {${name}}]]`),
      fc.tuple(names, names).map(([a, b]) => `[[at {${a}}|by {${b}}]]`),
    );
    fc.assert(
      fc.property(fc.array(part), fc.subarray(['a', 'b', 'c-d']), (parts, known) => {
        const text = fillClauses(parts.join(' '), (name) => (known.includes(name) ? '1 in' : undefined), '?');
        expect(text).not.toMatch(/[[\]{}|]| {2}| [.,;:]/);
      }),
    );
  });
});
