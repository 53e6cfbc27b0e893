import { compare, convert } from '../../calc/quantity.ts';
import { read } from '../../calc/read/read.ts';
import { isUnit, unitRow } from '../../calc/units.ts';
import type { QuizItem } from '../reply.ts';

/**
 * An answer as it is given: the places of the options that were marked, counted from nothing; for an item to put in order
 * the number beside each option; for a figure what was typed. Empty for one that was left out.
 */
export type Given = readonly string[];
export type Mark = 'right' | 'wrong' | 'open';

/** How an answer stands to its key. */
export function markItem(item: QuizItem, given: Given): Mark {
  const told = given.map((each) => each.trim()).filter(Boolean);
  if (told.length === 0) return 'open';
  return isRight(item, given) ? 'right' : 'wrong';
}

function isRight(item: QuizItem, given: Given): boolean {
  const { kind, key, options } = item;
  if (kind === 'number') return isNear(item, given[0] ?? '');
  const keys = typeof key === 'object' ? key : [String(key)];
  if (kind === 'order') return orderOf(item, given).join('\n') === keys.join('\n');
  const chosen = given.map((place) => options[Number(place)]?.text);
  return chosen.length === keys.length && keys.every((each) => chosen.includes(each));
}

/** The options in the order that the numbers beside them say; an option without a number, or two with the same, is in no order. */
export function orderOf({ options }: QuizItem, given: Given): string[] {
  const places = options.map((_, at) => Number(given[at]?.trim() || Number.NaN));
  if (places.some(Number.isNaN) || new Set(places).size < places.length) return [];
  return options
    .map(({ text }, at) => ({ text, place: places[at]! }))
    .sort((a, b) => a.place - b.place)
    .map(({ text }) => text);
}

/** A figure within the tolerance; one typed with another unit of its kind is turned over first. */
function isNear({ key, tolerance = 0, unit }: QuizItem, typed: string): boolean {
  const number = figureIn(typed, unit);
  // What stands in a key to four digits is compared to four digits: a count must be met.
  const slack = Math.max(tolerance, Math.abs(Number(key)) * 1e-9);
  return number !== undefined && compare(Math.abs(number - Number(key)), slack) <= 0;
}

/** The figure in what was typed, in the unit asked for; undefined where there is none, or several, or one of another kind. */
export function figureIn(typed: string, unit?: string): number | undefined {
  const figures = read(typed.slice(0, 60)).flatMap((item) => (item.kind === 'figure' ? [item] : []));
  const [figure] = figures;
  if (figures.length !== 1 || !figure || figure.low !== undefined) return undefined;
  if (figure.unit === undefined || unit === undefined || !isUnit(unit)) return figure.number;
  if (unitRow(figure.unit).dimension !== unitRow(unit).dimension) return undefined;
  return convert(figure.number, figure.unit, unit);
}

/** How a set was answered. */
export interface Score {
  readonly marks: readonly Mark[];
  readonly right: number;
  readonly of: number;
  readonly topics: readonly { readonly topic: string; readonly right: number; readonly of: number }[];
  /** Items that must be right and were not, by their number in the set, from 1. */
  readonly missedMusts: readonly number[];
}

/** Marks a whole set. `given` has the answers in the order of the items; one that is not there was left out. */
export function score(items: readonly QuizItem[], given: readonly (Given | undefined)[]): Score {
  const marks = items.map((item, at) => markItem(item, given[at] ?? []));
  const topics = [...new Set(items.map(({ topic }) => topic))].map((topic) => {
    const own = items.flatMap((item, at) => (item.topic === topic ? [marks[at]] : []));
    return { topic, right: own.filter((mark) => mark === 'right').length, of: own.length };
  });
  return {
    marks,
    right: marks.filter((mark) => mark === 'right').length,
    of: items.length,
    topics,
    missedMusts: items.flatMap(({ mustPass }, at) => (mustPass && marks[at] !== 'right' ? [at + 1] : [])),
  };
}
