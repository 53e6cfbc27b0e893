import { mistakeNames } from '../wording/quiz-mistakes.en.ts';
import { isFirm } from './facts.ts';
import { type ItemRule, keysOf, when } from './lint-rule.ts';
import { nearMiss } from './make/options.ts';

const own = 'rule of this tool';

/** Rules on what an item rests on. */
export const groundRules: readonly ItemRule[] = [
  {
    id: 'clear-of-the-key',
    says: 'A wrong figure is off by more than the tolerance and by more than a near miss.',
    source: own,
    broken: ({ item, numbers }) => {
      if (!numbers || item.kind === 'many') return undefined;
      const least = Math.max(numbers.tolerance, nearMiss * Math.abs(numbers.right));
      const near = numbers.wrong.find(({ figure }) => Math.abs(figure - numbers.right) <= least);
      return when(near !== undefined, `${near?.text} is too near the key`);
    },
  },
  {
    id: 'reproduced',
    says: 'A wrong figure comes from a mistake that people make, and its formula gives it again.',
    source: own,
    broken: ({ item, numbers }) => {
      if (!numbers) return undefined;
      const offered = item.options.filter(({ mistake }) => mistake !== undefined);
      if (offered.length !== numbers.wrong.length) return 'an option has no figure behind it';
      const lost = numbers.wrong.find(({ figure, mistake }) => {
        return !numbers.reproduce(mistake).some((again) => Math.abs(again - figure) <= 1e-9 * Math.abs(figure));
      });
      return when(lost !== undefined, `${lost?.mistake} does not give ${lost?.text}`);
    },
  },
  {
    id: 'tagged',
    says: 'Every wrong option names its mistake, no right one does.',
    source: own,
    broken: (draft) => {
      const { item } = draft;
      if (item.kind === 'order') return undefined;
      const keys = keysOf(draft);
      const off = item.options.find(({ text, mistake }) => keys.includes(text) === (mistake !== undefined));
      const unnamed = item.options.find(
        ({ mistake }) => mistake !== undefined && !Object.hasOwn(mistakeNames, mistake),
      );
      return when(off !== undefined || unnamed !== undefined, `"${(off ?? unnamed)?.text}"`);
    },
  },
  {
    id: 'firm',
    says: 'No key rests on a figure from memory, unless the stem prints the rule and whose it is.',
    source: own,
    broken: ({ rests, printed }) => when(!printed && !isFirm(rests), 'it rests on memory'),
  },
  {
    id: 'no-collision',
    says: 'No key rests on rules that collide.',
    source: own,
    broken: ({ collides }) => when(collides.length > 0, `collides with ${collides.join(', ')}`),
  },
  {
    id: 'said',
    says: 'Every figure the key rests on stands in the stem.',
    source: own,
    broken: ({ unsaid }) => when(unsaid.length > 0, `unsaid: ${unsaid.join(', ')}`),
  },
  {
    id: 'complete',
    says: 'Every item says why, by which rule and from where.',
    source: own,
    broken: ({ item }) => {
      const all = [item.stem, item.why, item.rule, item.source, ...item.options.map(({ text }) => text)];
      return when(
        all.some((text) => text.trim() === '' || /NaN|undefined|Infinity|[[\]{}]/.test(text)),
        'something is missing or left open',
      );
    },
  },
];
