import type { Source } from '../../../rules/shapes.ts';
import type { Random } from '../random.ts';
import type { Draft } from '../shapes.ts';
import { alikeTo } from './options.ts';

/** Where the key of an item in words comes from, and why it is so. */
export interface Ground {
  readonly stem: string;
  readonly why: string;
  readonly rule: string;
  readonly source: string;
  readonly rests: readonly Source[];
}

export interface Wrong {
  readonly text: string;
  readonly mistake: string;
  /** Of the same piece of work as the key, and so likelier to be taken for it. */
  readonly near?: boolean;
}

/** An item to choose one from texts: the key and up to three others like it in length. Undefined with fewer than two others. */
export function oneOf(random: Random, ground: Ground, key: string, wrong: readonly Wrong[]): Draft | undefined {
  const taken = alikeTo(random, key, wrong, 3);
  if (taken.length < 2) return undefined;
  return {
    ...grounded(ground),
    order: 'free',
    item: { ...itemOf(ground), kind: 'one', options: [{ text: key }, ...taken.map(optionOf)], key },
  };
}

/** An item for yes or no. */
export function yesOrNo(ground: Ground, words: { readonly yes: string; readonly no: string }, yes: boolean): Draft {
  const [key, other] = yes ? [words.yes, words.no] : [words.no, words.yes];
  const options = [words.yes, words.no].map((text) => (text === other ? { text, mistake: 'wrong-way' } : { text }));
  return { ...grounded(ground), order: 'fixed', item: { ...itemOf(ground), kind: 'true-false', options, key } };
}

/** An item to mark every right one of several texts. */
export function manyOf(ground: Ground, right: readonly string[], wrong: readonly Wrong[]): Draft {
  const options = [...right.map((text) => ({ text })), ...wrong.map(optionOf)];
  return { ...grounded(ground), order: 'free', item: { ...itemOf(ground), kind: 'many', options, key: right } };
}

/** An item to put in order; `right` is the order that is right. */
export function inOrder(random: Random, ground: Ground, right: readonly string[]): Draft | undefined {
  const shuffled = random.shuffle(right);
  if (shuffled.every((text, at) => text === right[at])) shuffled.push(shuffled.shift()!);
  return {
    ...grounded(ground),
    order: 'fixed',
    item: { ...itemOf(ground), kind: 'order', options: shuffled.map((text) => ({ text })), key: right },
  };
}

const optionOf = ({ text, mistake }: Wrong) => ({ text, mistake });
const itemOf = ({ stem, why, rule, source }: Ground) => ({ stem, why, rule, source });
const grounded = ({ rests }: Ground) => ({ rests, collides: [], printed: false, unsaid: [] });
