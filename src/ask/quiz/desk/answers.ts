import type { QuizItem } from '../../reply.ts';
import type { Given } from '../mark.ts';
import type { Fields } from './call.ts';

/** Name of the field that an answer comes in. */
export const fieldOf = ({ id }: Pick<QuizItem, 'id'>): string => `answer-${id}`;
/** Of an item to put in order each option has a field of its own. */
export const placeFieldOf = ({ id }: Pick<QuizItem, 'id'>, at: number): string => `answer-${id}-${at + 1}`;

/** Longest answer that is read. */
const longest = 60;

/** The answers of a form, in the order of the items. */
export function readAnswers(items: readonly QuizItem[], fields: Fields): Given[] {
  const text = (value: unknown): string => (typeof value === 'string' ? value.slice(0, longest) : '');
  return items.map((item) =>
    item.kind === 'order'
      ? item.options.map((_, at) => text(fields.get(placeFieldOf(item, at))))
      : fields.getAll(fieldOf(item)).map(text),
  );
}

/** The fields by which one answer is carried on. */
export function answerFields(item: QuizItem, given: Given): [string, string][] {
  return given.map((value, at) => [item.kind === 'order' ? placeFieldOf(item, at) : fieldOf(item), value]);
}
