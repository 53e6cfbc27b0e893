import { hashText } from './random.ts';
import type { Draft } from './shapes.ts';

/** Names a point asked in one form, the same in every set: what a swap refers to, and what a phone keeps of an answer. */
export const tokenOf = (point: { readonly id: string }, form: { readonly id: string }): string =>
  hashText(`${point.id}|${form.id}`);

/** Hash in the id of an item, from what the set was made with and the point and form asked. */
export const markOf = (salt: string, point: { readonly id: string }, form: { readonly id: string }): string =>
  hashText(`${salt}|${point.id}|${form.id}`);

/** What is asked: a drawing is a part of its question. */
export const stemOf = ({ item: { stem, drawing = '' } }: Pick<Draft, 'item'>): string => `${stem} ${drawing}`;
