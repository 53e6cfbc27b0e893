import { describe, expect, test } from 'vitest';
import { withAgency } from '../../src/ask/agency.ts';
import { ask } from '../../src/ask/ask.ts';
import { cards } from '../../src/ask/cards.generated.ts';
import { cardInstead, cardReply, cardsFor } from '../../src/ask/cards.ts';
import { type Engine, engine as shipped } from '../../src/ask/engine.ts';
import { FileFault } from '../../src/rules/file-parts.ts';
import { sceneOf } from './scenes.ts';

function withRules(rules: object): Engine {
  const own = withAgency(shipped, { name: 'Alder County', source: 'Directive 7', date: '2026-03-01', ...rules });
  if (own instanceof FileFault) throw own;
  return own;
}

describe('a card as an answer', () => {
  test.each(cards.map(({ id }) => [id]))('%s has its figures, in both systems', (id) => {
    for (const units of ['us', 'metric'] as const) {
      const reply = cardReply(sceneOf('tell me', units), id);
      expect(reply).toMatchObject({ kind: 'card', topic: id });
      expect(reply.text).not.toMatch(/[{}]|not settled|undefined|NaN/);
      expect(reply.text.split('\n').at(-1)).toMatch(/^Basis: /);
      expect(reply.cards.length).toBeLessThanOrEqual(3);
      expect(reply.next.length).toBeLessThanOrEqual(4);
      expect(reply.cautions.length).toBeGreaterThan(0);
    }
  });

  test('figures come from the records, in the units of the answer', () => {
    // 110 lb/yd2/in: NAVEDTRA 14080, p. 8-31; one inch is 25.4 mm by definition.
    expect(cardReply(sceneOf('what does mix weigh', 'us'), 'weigh-mix').text).toMatch(/^About 110 lb/);
    expect(cardReply(sceneOf('what is a lift', 'us'), 'term-lift').text).toContain('at most about 1 in, rolled');
    expect(cardReply(sceneOf('what is a lift', 'metric'), 'term-lift').text).toContain('at most about 25 mm, rolled');
  });

  test("an agency's own figure stands there, and is named as theirs", () => {
    const engine = withRules({ defaults: { 'unit-weight': { number: 112, unit: 'lb/yd2/in' } } });
    expect(cardReply(sceneOf('what does mix weigh', 'us', engine), 'weigh-mix').text).toMatch(
      /^About 112 lb\S* .*\(Alder County\)/,
    );
  });

  test("so does an agency's own bound", () => {
    const engine = withRules({ limits: { 'air-temperature': { min: { number: 45, unit: 'degF' } } } });
    const { text } = cardReply(sceneOf('too cold to lay', 'us', engine), 'cold-day');
    expect(text).toMatch(/^Below 45 \S+ \(Alder County\) air/);
  });

  test('outside an emergency such a card says what to do if it happens', () => {
    expect(cardReply(sceneOf('show me the burn card'), 'emergency-burn').text).toMatch(
      /^If it happens, the emergency number comes first: 911 in the US, else your local one\. Cool the burn/,
    );
  });

  test('what to ask next finds its answer: the title of a card leads to that card', () => {
    const titled = cards
      .flatMap(({ id }) => cardReply(sceneOf('tell me'), id).next)
      .filter((text) => !text.endsWith('?'));
    const lost = [...new Set(titled)].filter((text) => {
      const wanted = cards.find(({ title }) => `card: ${title}`.toLowerCase() === text.toLowerCase());
      return !wanted || ask({ question: text }).topic !== wanted.id;
    });
    expect(titled.length).toBeGreaterThan(10);
    expect(lost).toEqual([]);
  });

  test('a card is answered by its title, whatever else the words could mean, and leaves the job alone', () => {
    const job = ask({ question: '300 x 12 ft at 2 in, how many tons' }).job;
    for (const { id, title } of cards) {
      const reply = ask({ question: `Card: ${title}`, job });
      expect([reply.kind, reply.topic]).toEqual(['card', id]);
      expect(reply.job).toEqual(job);
    }
  });

  test('a word of the trade alone asks which card is meant, and its choices lead there', () => {
    const reply = ask({ question: 'what about the roller' });
    expect(reply).toMatchObject({ kind: 'clarify', reason: 'no-goal' });
    for (const { send } of reply.clarify!.choices) expect(ask({ question: send }).kind).toBe('card');
    expect(ask({ question: 'where is the best pizza' })).toMatchObject({ kind: 'unknown', reason: 'out-of-scope' });
  });

  test('an id that no card has is refused', () => {
    expect(() => cardReply(sceneOf('tell me'), 'no-such-card')).toThrow(
      new RangeError('there is no card no-such-card'),
    );
  });
});

describe('cards beside an answer', () => {
  test('bear on the records it used, the first of them before the others', () => {
    const scene = sceneOf('how many gallons of tack for 300 x 12 ft');
    const hits = cardsFor(scene, ['quantity/tack-rate', 'quantity/tack-coats']);
    expect(hits).toHaveLength(3);
    const links = (id: string): readonly string[] => cards.find((card) => card.id === id)!.links;
    expect(links(hits[0]!.id)).toContain('quantity/tack-rate');
  });

  test('of those that bear on it, the one the question speaks of comes first', () => {
    expect(cardsFor(sceneOf('is the spray bar even'), ['quantity/tack-rate'])[0]?.id).toBe('even-spray');
    expect(cardsFor(sceneOf('residual or bar rate'), ['quantity/tack-rate'])[0]?.id).toBe('three-tack-rates');
  });

  test('without a record they are those the question finds', () => {
    expect(cardsFor(sceneOf('fog'), [])[0]?.id).toBe('fog-and-sun');
  });

  test('no emergency is among them: it would hide the one that is', () => {
    const hits = cardsFor(sceneOf('tack'), ['step/tack']);
    expect(hits.length).toBeGreaterThan(0);
    expect(hits.filter(({ id }) => id.startsWith('emergency-'))).toEqual([]);
  });

  test('an excerpt is the short answer the card opens with, its figures in it', () => {
    for (const card of cards) {
      const [hit] = cardsFor(sceneOf(card.title), []).filter(({ id }) => id === card.id);
      if (!hit) continue;
      expect(hit.excerpt.length).toBeGreaterThan(2);
      expect(hit.excerpt.length).toBeLessThanOrEqual(260);
      expect(hit.excerpt).toMatch(/[.?!:]$/);
      expect(hit.excerpt).not.toMatch(/[{}\n]/);
    }
  });
});

describe('a card in place of a record', () => {
  test.each([
    ['what is tack', 'term-tack'],
    ["bed's up and the load is stuck", 'bed-stuck'],
    ['wasps nest in the sign box', 'bees-and-snakes'],
    ['what can i spray the truck bed with', 'no-diesel'],
    ['tack between lifts or not', 'tack-between-lifts'],
  ])('where its own words are asked by: %s', (question, card) => {
    expect(cardInstead(sceneOf(question))).toBe(card);
    expect(ask({ question })).toMatchObject({ kind: 'card', topic: card });
  });

  test.each([
    'how many gallons of tack between the lifts',
    'how many tons for 300 x 12 ft at 2 in',
    'is 12 ton right for 12 x 150 at 1 in',
    'we have 15 ton trucks, how many loads for 300 x 12 ft at 2 in',
  ])('never where a figure is given or asked for: %s', (question) => {
    expect(cardInstead(sceneOf(question))).toBeUndefined();
  });

  test('nor where the record is what the card bears on: the rule answers, the card stands beside it', () => {
    const scene = sceneOf('can i get by with one flagger');
    expect(scene.understood.goal?.id).toBe('flagger-count');
    expect(cardInstead(scene)).toBeUndefined();
    expect(cardsFor(scene, ['practice/flagger-count'])[0]?.id).toBe('one-flagger');
  });

  test('nor an emergency card, and none where nothing is found', () => {
    expect(cardInstead(sceneOf('patch is bleeding'))).toBeUndefined();
    expect(cardInstead(sceneOf('how do i bake bread'))).toBeUndefined();
  });
});
