import { quiz } from '../wording/quiz.en.ts';
import { lintItem } from './lint-item.ts';
import { placeOfKey } from './places.ts';
import type { Made } from './shapes.ts';
import { stemOf } from './tokens.ts';

/** What is wrong with a set beyond its items one by one; nothing when it is fit. */
export function lintSet(made: readonly Made[], count: number): string[] {
  return [
    ...made.flatMap(({ item, draft }) => lintItem({ ...draft, item }).map((fault) => `${item.id} ${fault}`)),
    ...(made.length === count ? [] : [`blueprint: ${made.length} items in place of ${count}`]),
    ...twice(
      'id',
      made.map(({ item }) => item.id),
    ),
    ...twice(
      'point',
      made.map(({ point }) => point),
    ),
    ...twice(
      'stem',
      made.map(({ draft }) => stemOf(draft)),
    ),
    ...uneven(made),
    ...oneSided(made),
  ];
}

const twice = (what: string, all: readonly string[]): string[] =>
  all.filter((each, at) => all.indexOf(each) !== at).map((each) => `${what} twice: ${each}`);

/** Keys that stand at one place more often than they need to: some item could be turned so that it came out more even. */
function uneven(made: readonly Made[]): string[] {
  const had = [0, 0, 0, 0];
  for (const { item } of made) if (item.kind === 'one') had[placeOfKey(item)]! += 1;
  const movable = made.filter(({ draft, item }) => draft.order === 'free' && item.kind === 'one');
  const better = movable.find(({ item }) => {
    const here = had[placeOfKey(item)]!;
    return item.options.some((_, place) => here - had[place]! > 1);
  });
  return better ? [`places of the keys: ${had.join(', ')}`] : [];
}

/** How many more of one answer than of the other so many yes-or-no items may have. */
export const mostOneSided = (items: number): number => Math.max(1, Math.floor(items / 3));

function oneSided(made: readonly Made[]): string[] {
  const keys = made.filter(({ item }) => item.kind === 'true-false').map(({ item }) => item.key);
  const yes = keys.filter((key) => key === quiz.yes).length;
  const gap = Math.abs(keys.length - 2 * yes);
  return gap > mostOneSided(keys.length) ? [`yes ${yes} of ${keys.length}`] : [];
}
