import { describe, expect, test } from 'vitest';
import { readCue } from '../../src/ask/cue.ts';
import { type Goal, goalIndex, goalsOf } from '../../src/ask/goal.ts';
import { hear } from './hear.ts';

const same = (line: string) => readCue(line);
const record = (id: string, ...cues: string[]) => ({ kind: 'quantity' as const, id, cues });
const ids = (goals: readonly Goal[]): string[] => goals.map(({ id }) => id);

describe('what a sentence may be after', () => {
  test('comes best first: a word few records speak of says more', () => {
    const index = goalIndex(
      () => [
        record('common', 'lift'),
        record('other', 'lift taper'),
        record('third', 'lift deep'),
        record('rare', 'roller'),
      ],
      same,
    );
    const found = goalsOf(index, hear('lift roller'));
    expect(ids(found)).toEqual(['rare', 'common']);
    expect(found[0]!.score).toBeGreaterThan(found[1]!.score);
  });

  test('a cue that says more comes before one that says less', () => {
    const index = goalIndex(() => [record('a', 'lift'), record('b', 'lift deep')], same);
    expect(ids(goalsOf(index, hear('deep lift')))).toEqual(['b', 'a']);
  });

  test('ties go by id, whichever record was read first', () => {
    const records = [record('b', 'lift'), record('a', 'lift'), record('c', 'lift')];
    for (const list of [records, [...records].reverse()])
      expect(
        ids(
          goalsOf(
            goalIndex(() => list, same),
            hear('lift'),
          ),
        ),
      ).toEqual(['a', 'b', 'c']);
  });

  test('of several cues of a record the best counts, once', () => {
    const index = goalIndex(() => [record('a', 'lift', 'lift deep', 'deep')], same);
    const found = goalsOf(index, hear('deep lift'));
    expect(found).toHaveLength(1);
    expect(found[0]!.cue.text).toBe('lift deep');
  });

  test('a record of another kind with the same id is another goal', () => {
    const index = goalIndex(() => [record('a', 'lift'), { kind: 'limit' as const, id: 'a', cues: ['lift'] }], same);
    expect(goalsOf(index, hear('lift'))).toHaveLength(2);
  });

  test('nothing heard is nothing found', () => {
    const index = goalIndex(() => [record('a', 'taper'), { kind: 'limit' as const, id: 'b' }], same);
    expect(goalsOf(index, hear('lift deep'))).toEqual([]);
    expect(goalsOf(index, hear('taper -'))).toHaveLength(1);
  });
});
