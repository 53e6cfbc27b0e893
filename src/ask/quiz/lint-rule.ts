import type { Draft } from './shapes.ts';

/** One rule of item writing: what it asks, where it comes from, and what is wrong with an item by it (nothing when it holds). */
export interface ItemRule {
  readonly id: string;
  readonly says: string;
  readonly source: string;
  readonly broken: (draft: Draft) => string | undefined;
}

/** Keys of an item as texts, one or several. */
export const keysOf = ({ item }: Draft): string[] =>
  typeof item.key === 'object' ? [...item.key] : [String(item.key)];

/** The fault, when there is one. */
export const when = (broken: boolean, text: string): string | undefined => (broken ? text : undefined);
