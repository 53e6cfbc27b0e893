import { groundRules } from './lint-ground.ts';
import type { ItemRule } from './lint-rule.ts';
import { wordRules } from './lint-words.ts';
import type { Draft } from './shapes.ts';

/** Every rule that an item is held to. */
export const itemRules: readonly ItemRule[] = [...wordRules, ...groundRules];

/** What is wrong with an item, by rule; nothing when it is fit to be asked. */
export function lintItem(draft: Draft): string[] {
  return itemRules.flatMap(({ id, broken }) => {
    const fault = broken(draft);
    return fault === undefined ? [] : [`${id}: ${fault}`];
  });
}
