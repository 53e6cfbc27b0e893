import { describe, expect, test } from 'vitest';
import { engine } from '../../src/ask/engine.ts';
import type { Fact } from '../../src/ask/facts.ts';
import { impliedPractice } from '../../src/ask/implied-rule.ts';
import { type Sentence, sentenceOf } from '../../src/ask/sentence.ts';
import { liftFigures } from '../../src/ask/step-stage.ts';
import { read } from '../../src/calc/read/read.ts';
import { knowledge } from '../../src/rules/knowledge.ts';

const sentence = (question: string): Sentence => sentenceOf(read(question, {}), engine.vocabulary, engine.small);
const said = (quantity: string, choice: string): Fact => ({ quantity, choice, turn: 1, fresh: true });

describe('figures that only number a lift', () => {
  const numbers = (question: string): unknown => {
    const heard = sentence(question);
    const { lift, count } = liftFigures(heard);
    return [lift, count].map((at) => {
      const token = at === undefined ? undefined : heard.tokens[at];
      return token?.kind === 'figure' ? token.figure.number : undefined;
    });
  };

  test.each([
    ['lift 2 is down, what next', [2, undefined]],
    ['lift 2 of 3 is down', [2, 3]],
    ['second lift is down, 12 wide', [undefined, undefined]],
    ['lift 1.5 inches is down', [undefined, undefined]],
    ['max lift 2', [undefined, undefined]],
  ])('%s', (question, expected) => {
    expect(numbers(question)).toEqual(expected);
  });
});

describe('a way of working that is told and asked about', () => {
  const taken = (fresh: ReturnType<typeof said>[]) => ({ fresh, facts: fresh });
  test.each([
    ['open it with loose stone all over?', said('mat-state', 'loose-stone'), 'open-to-traffic'],
    ['ok to start with no signs out', said('traffic-control-state', 'none'), 'traffic-control-first'],
  ])('%s', (question, fact, expected) => {
    expect(impliedPractice(knowledge, sentence(question), taken([fact]))).toEqual({ kind: 'practice', id: expected });
  });

  test('nothing is asked, or nothing is judged: no practice', () => {
    expect(
      impliedPractice(knowledge, sentence('loose stone all over'), taken([said('mat-state', 'loose-stone')])),
    ).toBeUndefined();
    expect(impliedPractice(knowledge, sentence('is it hot mix?'), taken([said('mix-kind', 'hot')]))).toBeUndefined();
  });

  test('of two rules the one broken worst is told', () => {
    const both = [said('rolling-direction', 'center-first'), said('mat-state', 'not-rolled')];
    expect(impliedPractice(knowledge, sentence('is that right?'), taken(both))?.id).toBe('open-to-traffic');
  });
});
