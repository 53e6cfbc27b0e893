import { type ItemRule, keysOf, when } from './lint-rule.ts';
import { alike } from './make/options.ts';
import type { Draft } from './shapes.ts';
import { contentWords } from './words.ts';

/** Rules from the review of 31 item-writing guidelines that Haladyna, Downing and Rodriguez published in 2002. */
const review =
  'Applied Measurement in Education 15(3), 2002, pp. 309-334: review of item-writing guidelines (as restated by others)';

const texts = ({ item }: Draft): string[] => item.options.map(({ text }) => text);
const isChoice = ({ item }: Draft): boolean => item.kind === 'one' || item.kind === 'many';
const normal = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9./]/g, '')
    .replace(/\.$/, '');

const counts: Readonly<Record<Draft['item']['kind'], readonly [number, number]>> = {
  'true-false': [2, 2],
  one: [3, 4],
  many: [3, 6],
  order: [3, 8],
  number: [0, 0],
};

/** Rules on how an item is worded. */
export const wordRules: readonly ItemRule[] = [
  {
    id: 'one-key',
    says: 'Exactly one answer is right, or exactly those that are marked.',
    source: review,
    broken: (draft) => {
      const { item } = draft;
      if (item.kind === 'number') return when(!Number.isFinite(item.key), `the key is ${String(item.key)}`);
      const keys = keysOf(draft);
      const found = texts(draft).filter((text) => keys.includes(text)).length;
      const wanted = item.kind === 'order' ? item.options.length : keys.length;
      const all = item.kind === 'many' && keys.length === item.options.length;
      const several = item.kind !== 'many' && item.kind !== 'order' && keys.length !== 1;
      return when(found !== wanted || keys.length === 0 || several || all, `${found} options are the key`);
    },
  },
  {
    id: 'enough-options',
    says: 'Three options or four; more do not make it fairer.',
    source: review,
    broken: ({ item }) => {
      const [least, most] = counts[item.kind];
      return when(item.options.length < least || item.options.length > most, `${item.options.length} options`);
    },
  },
  {
    id: 'distinct',
    says: 'No two options say the same.',
    source: review,
    broken: (draft) => when(new Set(texts(draft).map(normal)).size < texts(draft).length, 'two options read alike'),
  },
  {
    id: 'rising',
    says: 'Figures stand in rising order.',
    source: review,
    broken: ({ item, order, numbers }) => {
      if (order !== 'rising' || !numbers || item.kind !== 'one') return undefined;
      const figures = item.options.map(
        ({ text }) => numbers.wrong.find((each) => each.text === text)?.figure ?? numbers.right,
      );
      return when(
        figures.some((figure, at) => at > 0 && figure <= figures[at - 1]!),
        'figures do not rise',
      );
    },
  },
  {
    id: 'like-lengths',
    says: 'The right answer does not stand out by its length.',
    source: review,
    broken: (draft) => {
      if (!isChoice(draft) || draft.numbers) return undefined;
      const all = texts(draft).sort((a, b) => a.length - b.length);
      return when(!alike(all[0]!, all.at(-1)!), `lengths ${all[0]!.length} to ${all.at(-1)!.length}`);
    },
  },
  {
    id: 'no-absolutes',
    says: 'No option gives itself away with always, never, all or none.',
    source: review,
    broken: (draft) => {
      const found = texts(draft).find((text) =>
        /\b(?:always|never|all|none|nobody|nothing|every|anything)\b/i.test(text),
      );
      return when(isChoice(draft) && found !== undefined, `"${found}"`);
    },
  },
  {
    id: 'not-in-capitals',
    says: 'A question asks for what is so; a NOT that cannot be helped is in capitals.',
    source: review,
    broken: ({ item }) => when(/\b(?:not|except)\b[^.?]{0,200}\?$/.test(item.stem), 'a small "not" in the question'),
  },
  {
    id: 'no-echo',
    says: 'The right answer is not the only one to repeat a word of the question.',
    source: review,
    broken: ({ item, order }) => {
      if (item.kind !== 'one' || order !== 'free') return undefined;
      const stem = contentWords(item.stem);
      const echoes = (text: string): boolean => [...contentWords(text)].some((word) => stem.has(word));
      const [right, wrong] = [
        item.options.filter(({ text }) => text === item.key),
        item.options.filter(({ text }) => text !== item.key),
      ];
      return when(
        right.some(({ text }) => echoes(text)) && !wrong.some(({ text }) => echoes(text)),
        'only the key repeats the stem',
      );
    },
  },
  {
    id: 'plain',
    says: 'Plain words, short sentences, the whole idea in the question.',
    source: review,
    broken: ({ item }) => {
      const words = item.stem.split(' ');
      const longest = Math.max(...item.stem.split(/[.?:] /).map((sentence) => sentence.split(' ').length));
      const wide = words.find((word) => word.replace(/[^a-z]/gi, '').length > 16);
      if (!/[.?]$/.test(item.stem)) return 'the stem has no end';
      return when(
        words.length > 75 || longest > 32 || wide !== undefined,
        `${words.length} words, sentence of ${longest}, ${wide ?? ''}`,
      );
    },
  },
];
