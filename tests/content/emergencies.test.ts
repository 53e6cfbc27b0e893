import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { cards } from '../../src/ask/cards.generated.ts';
import { emergenciesIn, emergencyIn, emergencyReply } from '../../src/ask/emergency.ts';
import { engine } from '../../src/ask/engine.ts';
import { emptyJob } from '../../src/ask/job.ts';
import { linesOf, pairsOf } from './lines.ts';

const happening = pairsOf('emergencies.txt');
const others = linesOf('not-emergencies.txt');

describe('what is happening now is known', () => {
  test('there are sixty lines and more, and every emergency has four at least', () => {
    expect(happening.length).toBeGreaterThanOrEqual(60);
    for (const { id } of cards.filter(({ kind }) => kind === 'emergency'))
      expect(happening.filter(({ card }) => card === id).length, id).toBeGreaterThanOrEqual(4);
  });

  test.each(happening.map(({ card, text }) => [text, card]))('%s', (text, card) => {
    expect(emergenciesIn(text)[0]).toBe(card);
  });

  test.each(happening.map(({ card, text }) => [text, card]))(
    'in capitals, with the news after a cry: %s',
    (text, card) => {
      expect(emergenciesIn(`HELP! ${text.toUpperCase()}`)[0]).toBe(card);
    },
  );
});

describe('what is asked, supposed or told of another day is none', () => {
  test('there are forty lines and more', () => {
    expect(others.length).toBeGreaterThanOrEqual(40);
  });

  test.each(others)('%s', (text) => {
    expect(emergenciesIn(text)).toEqual([]);
  });

  test('nor are the questions the cards are searched by', () => {
    const taken = [...pairsOf('queries.txt'), ...pairsOf('queries-later.txt')].filter(
      ({ text }) => emergenciesIn(text).length > 0,
    );
    expect(taken).toEqual([]);
  });

  test.each([
    ['guy got burned, do i need to pop the blisters', 'emergency-burn'],
    ['do i move him, the roller ran over his leg', 'emergency-struck-by'],
    ['should i pull him out he is pinned under the roller', 'emergency-struck-by'],
    ['raker passed out. when will the ambulance come?', 'emergency-medical'],
    ['what do i do he is not breathing', 'emergency-medical'],
  ])('a question about somebody who is hurt is one: %s', (text, card) => {
    expect(emergenciesIn(text)[0]).toBe(card);
  });

  test.each([
    'if a guy gets burned, do i pop the blisters',
    'suppose the roller tips over, operator pinned, what first',
    'when somebody is pinned under a roller what do we do',
  ])('a supposition holds to the end of its sentence: %s', (text) => {
    expect(emergenciesIn(text)).toEqual([]);
  });
});

describe('anything may be typed', () => {
  test.each([undefined, null, 7, {}, [], '', '   ', '?'])('%s', (sent) => {
    expect(emergenciesIn(sent)).toEqual([]);
  });

  test('two thousand letters take less than 20 ms', () => {
    const text = 'if the truck hit a guy on the roller in the ditch by the wire, and the tack is on fire '.repeat(30);
    emergenciesIn(text);
    const times = Array.from({ length: 9 }, () => {
      const from = performance.now();
      emergenciesIn(text);
      return performance.now() - from;
    });
    expect(times.sort((a, b) => a - b)[4]).toBeLessThan(20);
  });
});

describe('the reply', () => {
  const reply = emergencyReply(['emergency-burn', 'emergency-eye'], engine, emptyJob);

  test('opens with the number and the first thing to do, then what to tell them', () => {
    const [first, second] = reply.text.split('\n');
    expect(first).toMatch(/^Call the emergency number now: 911 in the US, else your local one\. Cool the burn/);
    expect(second).toMatch(/road, the direction and the milepost; send one person to meet them/);
    expect(reply.text).toContain('Do not peel the asphalt off');
  });

  test('asks nothing, and shows the card of the other emergency that was heard', () => {
    expect(reply).toMatchObject({ kind: 'card', topic: 'emergency-burn', job: emptyJob });
    expect(reply.clarify).toBeUndefined();
    expect(reply.cards.map(({ id }) => id)).toEqual(['emergency-eye']);
    expect(reply.cautions.join(' ')).toContain('not a doctor');
  });

  test.each(cards.filter(({ kind }) => kind === 'emergency').map(({ id }) => [id]))(
    '%s names the number, and no figure is open',
    (id) => {
      const { text } = emergencyReply([id], engine, emptyJob);
      expect(text).toMatch(/^Call the emergency number now: 911/);
      expect(text).not.toMatch(/[{}]/);
    },
  );

  test('is given for what is happening, and for nothing else', () => {
    expect(emergencyIn('guy got burned with tack', engine, emptyJob)?.topic).toBe('emergency-burn');
    expect(emergencyIn('what do i do if somebody gets burned', engine, emptyJob)).toBeUndefined();
    expect(emergencyIn(undefined, engine, emptyJob)).toBeUndefined();
  });

  test('has every list of a reply', () => {
    expect(Object.keys(reply).sort()).toEqual(
      Object.keys(ask({ question: 'how many tons for 300 x 12 ft at 2 in' })).sort(),
    );
  });
});
