import { describe, expect, test } from 'vitest';
import { itemRules, lintItem } from '../../src/ask/quiz/lint-item.ts';
import { lintSet } from '../../src/ask/quiz/lint-set.ts';
import type { Draft, Made } from '../../src/ask/quiz/shapes.ts';
import { setOf } from './sets.ts';

/** A fair item in figures: 44 tons, and two mistakes. */
const figured: Draft = {
  item: {
    kind: 'one',
    stem: 'How many tons is that?',
    options: [
      { text: '22 tons', mistake: 'took-one-inch' },
      { text: '44 tons' },
      { text: '88 tons', mistake: 'two-lanes' },
    ],
    key: '44 tons',
    why: 'It is worked out so.',
    rule: 'relation/premix-mass',
    source: 'geometry',
  },
  order: 'rising',
  rests: [{ document: 'a manual', seen: 'read' }],
  collides: [],
  printed: false,
  unsaid: [],
  numbers: {
    right: 44,
    tolerance: 1,
    wrong: [
      { text: '22 tons', figure: 22, mistake: 'took-one-inch' },
      { text: '88 tons', figure: 88, mistake: 'two-lanes' },
    ],
    reproduce: (mistake) => [mistake === 'two-lanes' ? 88 : 22],
  },
};

/** A fair item in words. */
const { numbers: _numbers, ...rest } = figured;
const worded: Draft = {
  ...rest,
  order: 'free',
  item: {
    ...figured.item,
    stem: 'You see ripples across the mat. What is a likely cause?',
    options: [
      { text: 'The machine goes too fast' },
      { text: 'A nozzle is plugged', mistake: 'other-fault' },
      { text: 'The drum has run dry', mistake: 'other-fault' },
    ],
    key: 'The machine goes too fast',
  },
};

const item = (draft: Draft, change: Partial<Draft['item']>): Draft => ({
  ...draft,
  item: { ...draft.item, ...change },
});
const options = (draft: Draft, ...texts: string[]): Draft =>
  item(draft, {
    options: texts.map((text) => (text === draft.item.key ? { text } : { text, mistake: 'other-fault' })),
  });
const numbers = (change: Partial<NonNullable<Draft['numbers']>>): Draft => ({
  ...figured,
  numbers: { ...figured.numbers!, ...change },
});
const key = String(worded.item.key);

/** For each rule an item that it must find fault with. */
const broken: Readonly<Record<string, readonly Draft[]>> = {
  'one-key': [
    item(figured, { key: '45 tons' }),
    item(figured, { kind: 'number', options: [], key: Number.NaN }),
    item(worded, { kind: 'many', key: worded.item.options.map(({ text }) => text) }),
  ],
  'enough-options': [options(worded, key, 'A nozzle is plugged')],
  distinct: [options(worded, key, 'A nozzle is plugged', 'a nozzle is plugged.')],
  rising: [item(figured, { options: [...figured.item.options].reverse() })],
  'like-lengths': [
    options(worded, key, 'Dry', 'A drum that has run dry because nobody has filled the tank of it since noon'),
  ],
  'no-absolutes': [options(worded, key, 'The drum is never wet', 'A nozzle is plugged')],
  'not-in-capitals': [item(worded, { stem: 'You see ripples. Which is not a cause?' })],
  'no-echo': [item(worded, { stem: 'The machine makes ripples across the mat. What is a likely cause?' })],
  plain: [
    item(worded, { stem: 'What is a likely cause' }),
    item(worded, { stem: `${'word '.repeat(40)}is what?` }),
    item(worded, { stem: 'Is this interconnectedness?' }),
  ],
  'clear-of-the-key': [numbers({ right: 81.5 }), numbers({ tolerance: 25 })],
  reproduced: [numbers({ reproduce: () => [] }), numbers({ reproduce: () => [22] }), numbers({ wrong: [] })],
  tagged: [
    item(figured, { options: figured.item.options.map(({ text }) => ({ text })) }),
    item(figured, { options: [{ text: '22 tons', mistake: 'no-such-slip' }, ...figured.item.options.slice(1)] }),
  ],
  firm: [
    {
      ...figured,
      rests: [
        { document: 'a manual', seen: 'read' },
        { document: 'recalled', seen: 'memory' },
      ],
    },
  ],
  'no-collision': [{ ...figured, collides: ['lift-min'] }],
  said: [{ ...figured, unsaid: ['unit-weight'] }],
  complete: [
    item(figured, { why: ' ' }),
    item(figured, { stem: 'How many {tons} is that?' }),
    item(figured, { source: 'undefined' }),
  ],
};

describe('rules of item writing', () => {
  test('a fair item passes them all', () => {
    expect(lintItem(figured)).toEqual([]);
    expect(lintItem(worded)).toEqual([]);
    expect(lintItem({ ...figured, printed: true, rests: [{ document: 'recalled', seen: 'memory' }] })).toEqual([]);
  });

  test.each(itemRules.map((rule) => [rule.id, rule] as const))(
    '%s finds what breaks it, and says where it comes from',
    (id, rule) => {
      expect(rule.source.length).toBeGreaterThan(5);
      expect(broken[id]!.length).toBeGreaterThan(0);
      for (const draft of broken[id]!) expect(lintItem(draft).join('; ')).toContain(`${id}:`);
    },
  );
});

describe('rules of a set', () => {
  const { made } = setOf({ topics: ['faults'], kinds: ['one'], levels: ['easy'], count: 8, seed: 'a' });

  test('a fair set passes', () => expect(lintSet(made, 8)).toEqual([]));
  test('one item short', () => expect(lintSet(made.slice(1), 8).join()).toContain('blueprint'));
  test('the same twice', () =>
    expect(lintSet([...made.slice(1), made[1]!], 8).join()).toMatch(/id twice.*point twice.*stem twice/));
  test('keys all at the first place', () => {
    const turned = made.map((each): Made => {
      const { options } = each.item;
      const sorted = [...options].sort((a, b) => Number(b.text === each.item.key) - Number(a.text === each.item.key));
      return { ...each, item: { ...each.item, options: sorted } };
    });
    expect(lintSet(turned, 8).join()).toContain('places of the keys: 8, 0, 0, 0');
  });
  test('every answer yes', () => {
    const all = setOf({ kinds: ['true-false'], count: 12, seed: 'a' }).made.filter(({ item }) => item.key === 'Yes');
    expect(lintSet(all, all.length).join()).toContain(`yes ${all.length} of ${all.length}`);
  });
});
