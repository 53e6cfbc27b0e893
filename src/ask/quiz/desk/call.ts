import { usualCount } from '../ask.ts';
import { mostSwaps, type QuizRequest } from '../request.ts';
import { kinds, levels } from '../shapes.ts';
import { topics } from '../topics.ts';

/** Fields of an address or a form, as a browser sends them. */
export interface Fields {
  readonly get: (name: string) => FormDataValue | null;
  readonly getAll: (name: string) => FormDataValue[];
}
type FormDataValue = string | object;

/** How a set is answered on the page: all at the end, or each question at once. */
export type Feedback = 'end' | 'each';

/** What the desk was called with. */
export interface Call {
  readonly request: QuizRequest;
  readonly feedback: Feedback;
}

/** Longest text that a field of the desk takes; the rest is cut off. */
const longest = 200;

/** Reads a call. Nothing is refused here: what there is none of is told by the builder, in words. */
export function readCall(fields: Fields): Call {
  const text = (name: string): string | undefined => {
    const value = fields.get(name);
    return typeof value === 'string' && value !== '' ? value.slice(0, longest) : undefined;
  };
  const list = (name: string): string[] =>
    fields
      .getAll(name)
      .flatMap((value) => (typeof value === 'string' && value !== '' ? [value.slice(0, longest)] : []));
  const [seat, seed, count, variant] = ['seat', 'seed', 'count', 'variant'].map(text);
  const lists = {
    topics: inTheirOrder(list('topic'), topics),
    levels: inTheirOrder(list('level'), levels),
    kinds: inTheirOrder(list('kind'), kinds),
    about: list('about').slice(0, 12),
    swaps: list('swap').slice(0, mostSwaps + 1),
  };
  const request: QuizRequest = {
    ...Object.fromEntries(Object.entries(lists).filter(([, values]) => values.length > 0)),
    ...(seat === undefined ? {} : { seat }),
    ...(text('units') === 'metric' ? { units: 'metric' } : {}),
    count: count === undefined ? usualCount : Number(count),
    ...(seed === undefined ? {} : { seed }),
    ...(variant === 'B' ? { variant } : {}),
  };
  return { request, feedback: text('feedback') === 'each' ? 'each' : 'end' };
}

/** The same list whatever order it was ticked in: the same boxes make the same set. All of them is none of them. */
function inTheirOrder(named: readonly string[], all: readonly string[]): string[] {
  const known = all.filter((each) => named.includes(each));
  return known.length === all.length ? [] : [...known, ...named.filter((each) => !all.includes(each))];
}

/** The call as fields, in one order. */
export function fieldsOf({ request, feedback }: Call): [string, string][] {
  const {
    topics: on = [],
    seat,
    levels: at = [],
    kinds: sorts = [],
    count,
    seed,
    variant,
    units,
    swaps,
    about,
  } = request;
  const several = (name: string, values: readonly string[] = []): [string, string][] =>
    values.map((value) => [name, value]);
  const one = (name: string, value: string | undefined): [string, string][] =>
    value === undefined ? [] : [[name, value]];
  return [
    ...several('topic', on),
    ...one('seat', seat),
    ...several('level', at),
    ...several('kind', sorts),
    ...one('count', String(count)),
    ...one('seed', seed),
    ...(variant === 'B' ? one('variant', 'B') : []),
    ...one('units', units),
    ...several('about', about),
    ...several('swap', swaps),
    ...(feedback === 'each' ? one('feedback', 'each') : []),
  ];
}

/** The address of a screen of the desk with this call: the whole set stands in it. */
export const addressOf = (screen: Screen, call: Call): string =>
  `${screens[screen]}?${fieldsOf(call)
    .map((field) => field.map(encodeURIComponent).join('='))
    .join('&')}`;

/** Where the screens of the desk are. */
export const screens = {
  desk: '/quiz',
  sheet: '/quiz/sheet',
  key: '/quiz/key',
  tailgate: '/quiz/tailgate',
  take: '/quiz/take',
  file: '/quiz/file',
  kept: '/quiz/kept',
  signOff: '/quiz/sign-off',
  practice: '/quiz/practice',
  classes: '/quiz/class',
} as const;
export type Screen = keyof typeof screens;
