import type { Figure } from './reading.ts';
import { byFirstWord } from './tokens.ts';

export type Bound = NonNullable<Figure['bound']>;
export type Hedge = Bound | 'about';

/** Words before a figure that make it an end of a range, or about so much. Signs stand as their single characters. */
const before: readonly (readonly [Hedge, string])[] = [
  ['at-most', '< =|= <|no more than|not more than|at most|up to|max|maximum|max of|maximum of|not over|not to exceed'],
  [
    'at-most',
    'no greater than|no thicker than|no over|a lo más|a lo mas|máximo|maximo|como máximo|no más de|no mas de',
  ],
  ['at-least', '> =|= >|at least|no less than|not less than|min|minimum|min of|minimum of|not under|no under'],
  ['at-least', 'al menos|por lo menos|mínimo|minimo|como mínimo|no menos de'],
  ['under', '<|under|below|less than|fewer than|thinner than|menos de|bajo'],
  ['over', '>|over|above|more than|greater than|thicker than|más de|mas de|exceeding'],
  [
    'about',
    'about|around|roughly|approx|approximately|ca|circa|nearly|almost|~|más o menos|mas o menos|aproximadamente|como|unos|unas',
  ],
];

/** Words after a figure. */
const after: readonly (readonly [Hedge, string])[] = [
  ['at-most', 'or less|or under|or below|or fewer|or thinner|max|maximum|tops|at most|at the most|and under|and below'],
  ['at-most', 'o menos|máximo|maximo|como máximo'],
  [
    'at-least',
    'or more|or over|or above|or better|or greater|or thicker|and up|and over|and above|min|minimum|at least',
  ],
  ['at-least', 'o más|o mas|mínimo|minimo|como mínimo|and better|or warmer|or higher'],
  ['about', 'or so|or thereabouts|more or less|give or take|ish|approx|approximately|más o menos|mas o menos'],
];

export interface HedgeRow {
  readonly words: readonly string[];
  readonly hedge: Hedge;
}

export const hedgesBefore = phrases(before);
export const hedgesAfter = phrases(after);

function phrases(list: readonly (readonly [Hedge, string])[]): ReadonlyMap<string, readonly HedgeRow[]> {
  return byFirstWord(
    list.flatMap(([hedge, words]) => words.split('|').map((one) => ({ words: one.split(' '), hedge }))),
  );
}

/** "Over" is a bound only of what is limited, never of the ground that is covered. */
export const coveredUnits: ReadonlySet<string> = new Set([
  'ft',
  'm',
  'mi',
  'km',
  'yd',
  'ft2',
  'yd2',
  'm2',
  'acre',
  'ha',
]);

/** "What about 14 ft" proposes; it does not hedge. */
export const proposing = new Set(['what', 'how', 'y']);

/** Words that join the ends of a range. */
export const rangeWords = new Set(['-', 'to', 'thru', 'through', 'or', 'a', 'hasta', 'o', 'ó']);

export const trendWords: ReadonlyMap<string, 'rising' | 'falling'> = new Map([
  ['rising', 'rising'],
  ['climbing', 'rising'],
  ['warming', 'rising'],
  ['subiendo', 'rising'],
  ['falling', 'falling'],
  ['dropping', 'falling'],
  ['cooling', 'falling'],
  ['bajando', 'falling'],
]);
