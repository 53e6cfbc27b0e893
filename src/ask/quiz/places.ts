import type { QuizItem } from '../reply.ts';
import type { Random } from './random.ts';
import type { Draft } from './shapes.ts';

/** Place of the key among the options of a choose-one item, counted from nothing; -1 for another kind. */
export const placeOfKey = ({ kind, options, key }: Pick<QuizItem, 'kind' | 'options' | 'key'>): number =>
  kind === 'one' ? options.findIndex(({ text }) => text === key) : -1;

/** Puts the options of free items in an order by which the places of the keys come out even over the set. */
export function placed(drafts: readonly Draft[], random: Random): Draft[] {
  const had = [0, 0, 0, 0];
  const isFree = ({ order, item }: Draft): boolean => order === 'free' && item.kind === 'one';
  for (const draft of drafts) {
    const place = isFree(draft) ? -1 : placeOfKey(draft.item);
    if (place >= 0) had[place] = (had[place] ?? 0) + 1;
  }
  // Items with three options first: they cannot take the fourth place.
  const order = drafts
    .map((_, at) => at)
    .sort((a, b) => drafts[a]!.item.options.length - drafts[b]!.item.options.length || a - b);
  const result = [...drafts];
  for (const at of order) {
    const draft = drafts[at]!;
    if (draft.order !== 'free') continue;
    const { item } = draft;
    const others = random.shuffle(item.options.filter(({ text }) => item.kind !== 'one' || text !== item.key));
    if (item.kind !== 'one') {
      result[at] = { ...draft, item: { ...item, options: others } };
      continue;
    }
    const open = had.slice(0, item.options.length);
    const place = open.indexOf(Math.min(...open));
    had[place] = had[place]! + 1;
    const options = [
      ...others.slice(0, place),
      item.options.find(({ text }) => text === item.key)!,
      ...others.slice(place),
    ];
    result[at] = { ...draft, item: { ...item, options } };
  }
  return result;
}
