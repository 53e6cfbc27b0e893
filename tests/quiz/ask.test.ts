import { describe, expect, test } from 'vitest';
import { isHeard, readCue, wordsOf } from '../../src/ask/cue.ts';
import { engine } from '../../src/ask/engine.ts';
import { readQuizAsk } from '../../src/ask/quiz/ask.ts';
import { quizReply } from '../../src/ask/quiz/reply.ts';
import { seats, topics } from '../../src/ask/quiz/topics.ts';
import type { Reply } from '../../src/ask/reply.ts';
import type { Scene } from '../../src/ask/scene.ts';
import { sentenceOf } from '../../src/ask/sentence.ts';
import { vocabularyOf } from '../../src/ask/vocabulary.ts';
import { quizAsks, seatWords, topicWords } from '../../src/ask/wording/quiz-asks.ts';
import { read } from '../../src/calc/read/read.ts';
import { heads, plainWords, smallWords } from '../../src/rules/words.ts';

const reply = (question: string, job?: unknown): Reply =>
  quizReply({ engine, request: { question, job } } as unknown as Scene);

describe('what was asked for', () => {
  test.each([
    ['make me a ten question quiz on rolling', { count: 10, topics: ['rolling'] }],
    ['10 questions on tack, easy, with answer key', { count: 10, topics: ['tack'], levels: ['easy'] }],
    ['quiz for flaggers', { count: 10, seat: 'flagger' }],
    ['make me a quiz on rolling with 5 questions', { count: 5, topics: ['rolling'] }],
    [
      'twelve hard questions about the windrow, seed winter-7',
      { count: 12, topics: ['blade'], levels: ['hard'], seed: 'winter-7' },
    ],
    ['quiz', { count: 10 }],
    ['a 5-question tailgate quiz on safety', { count: 5, topics: ['safety'] }],
    ['ten-question quiz on trucks and tack', { count: 10, topics: ['tack', 'trucks'] }],
    ['quiz the roller operator, 8 questions', { count: 8, seat: 'roller' }],
    ['quiz for the new hands, 6 easy questions, set b', { count: 6, seat: 'new-hand', levels: ['easy'], variant: 'B' }],
    ['quiz on everything, 30 questions', { count: 30 }],
    ['quiz on cooking', { count: 10, topics: ['cooking'] }],
    ['zero questions on tack', { count: 0, topics: ['tack'] }],
    ['5000 question quiz on mix', { count: 5000, topics: ['mix'] }],
    ['give us a quiz on the job for monday', { count: 10 }],
    ['quiz seed 42', { count: 10, seed: '42' }],
  ])('%s', (question, wanted) => expect(readQuizAsk(question)).toEqual(wanted));

  test('the words name topics and seats that there are', () => {
    expect(Object.keys(topicWords).sort()).toEqual([...topics].sort());
    expect(Object.keys(seatWords).sort()).toEqual(Object.keys(seats).sort());
  });
});

describe('the cues', () => {
  const cues = quizAsks.map((text) => readCue(text));
  /** The words of the records' own language, and those of these cues. */
  const vocabulary = vocabularyOf(heads, () => [
    ...cues.flatMap((cue) => [...wordsOf(cue)]),
    ...smallWords,
    ...plainWords,
  ]);
  const isAsked = (question: string): boolean => {
    const sentence = sentenceOf(read(question, {}), vocabulary, engine.small);
    return cues.some((cue) => isHeard(cue, sentence));
  };

  test.each([
    'make me a ten question quiz on rolling',
    '10 questions on tack, easy, with answer key',
    'quiz for flaggers',
    'make me a quiz on rolling with 5 questions',
    'zero questions on tack',
  ])('%s', (question) => {
    expect(isAsked(question)).toBe(true);
  });

  test.each([
    'how many tons for 300 x 12 ft at 2 in',
    'I have a question about the tack rate',
    'two questions: how many tons and how many loads',
    'how far do we roll past the end',
  ])('not %s', (question) => {
    expect(isAsked(question)).toBe(false);
  });
});

describe('the reply', () => {
  test('holds the set, its sheet and its key', () => {
    const { kind, topic, quiz, text, cautions, reason } = reply('make me a ten question quiz on rolling');
    expect([kind, topic, reason]).toEqual(['quiz', 'quiz', undefined]);
    expect(quiz!.items).toHaveLength(10);
    expect(new Set(quiz!.items.map((item) => item.topic))).toEqual(new Set(['rolling']));
    expect(quiz!.title).toBe('Rolling: 10 questions');
    for (const { stem, why } of quiz!.items) {
      expect(text).toContain(stem);
      expect(text).toContain(why);
    }
    expect(cautions[0]).toBe('This is practice. It certifies nobody as a flagger or an operator.');
    expect(Object.keys(quiz!).sort()).toEqual(['address', 'items', 'seed', 'title']);
    expect(quiz!.address).toMatch(/^\/quiz\?topic=rolling&/);
  });

  test('is the same for the same words', () => expect(reply('quiz on tack')).toEqual(reply('quiz on tack')));

  test('leaves the job as it was', () => {
    const job = {
      v: 1,
      turn: 3,
      facts: [{ quantity: 'patch-length', turn: 2, number: 300, unit: 'ft' }],
      goal: 'quantity/premix-mass',
    };
    expect(reply('10 questions on tack', job).job).toEqual(job);
  });

  test.each([
    ['quiz on cooking', /There are no questions on "cooking"\. There are on rolling, tack/],
    ['zero questions on tack', /Ask for 1 to 100 questions\./],
    ['90 questions on weather', /90 are too many: \d+ different questions can be had on weather\./],
  ])('%s', (question, said) => {
    const { kind, reason, text, quiz } = reply(question);
    expect([kind, reason, quiz]).toEqual(['unknown', 'out-of-range', undefined]);
    expect(text).toMatch(said);
  });
});
