import { addPowers, type Dimension, dimensions, type Powers, samePowers } from './dimension.ts';
import { type ModelName, modelNamed, type Parameters } from './models.ts';
import { roundUp as ceiling, toBase } from './quantity.ts';
import { type Unit, unitRow } from './units.ts';

/** Something an expression can speak of: a quantity, known by its id and dimension. */
export interface Term {
  readonly id: string;
  readonly dimension: Dimension;
}

/**
 * A formula as data, so that one form is checked for dimension, worked out, turned round for any of its facts, and put
 * into words. Facts are quantities by id; all numbers inside are in base units.
 */
export type Expression =
  | { readonly op: 'fact'; readonly id: string; readonly dimension: Dimension }
  | { readonly op: 'constant'; readonly number: number; readonly unit: Unit }
  | { readonly op: 'times' | 'plus'; readonly of: readonly Expression[] }
  | { readonly op: 'over' | 'minus' | 'larger' | 'smaller'; readonly of: readonly [Expression, Expression] }
  | { readonly op: 'power'; readonly of: Expression; readonly exponent: number }
  | { readonly op: 'round-up' | 'round-down' | 'cosine'; readonly of: Expression }
  | {
      readonly op: 'split';
      readonly on: Expression;
      readonly at: Expression;
      readonly upTo: Expression;
      readonly above: Expression;
    }
  | { readonly op: 'lookup'; readonly on: Expression; readonly table: LookupTable }
  | ModelExpression;

/** A named function of `models.ts`, of its parts in their order, with its fixed numbers. */
interface ModelExpression {
  readonly op: 'model';
  readonly model: ModelName;
  readonly of: readonly Expression[];
  readonly parameters: Parameters;
}

/** A table read by one figure: rows in rising order of `key`; between two rows the next one up. All in base units. */
export interface LookupTable {
  readonly id: string;
  readonly key: Dimension;
  readonly value: Dimension;
  readonly rows: readonly (readonly [key: number, value: number])[];
}

type Part = Expression | Term | number;

const expression = (part: Part): Expression => {
  if (typeof part === 'number') return { op: 'constant', number: part, unit: '1' };
  if ('op' in part) return part;
  return { op: 'fact', id: part.id, dimension: part.dimension };
};

export const times = (...parts: Part[]): Expression => ({ op: 'times', of: parts.map(expression) });
export const plus = (...parts: Part[]): Expression => ({ op: 'plus', of: parts.map(expression) });
export const over = (a: Part, b: Part): Expression => ({ op: 'over', of: [expression(a), expression(b)] });
export const minus = (a: Part, b: Part): Expression => ({ op: 'minus', of: [expression(a), expression(b)] });
export const larger = (a: Part, b: Part): Expression => ({ op: 'larger', of: [expression(a), expression(b)] });
export const smaller = (a: Part, b: Part): Expression => ({ op: 'smaller', of: [expression(a), expression(b)] });
export const power = (a: Part, exponent: number): Expression => ({ op: 'power', of: expression(a), exponent });
export const roundUp = (a: Part): Expression => ({ op: 'round-up', of: expression(a) });
/** Largest whole number not above it: whole trips in a day. */
export const roundDown = (a: Part): Expression => ({ op: 'round-down', of: expression(a) });
export const cosine = (a: Part): Expression => ({ op: 'cosine', of: expression(a) });
export const constant = (number: number, unit: Unit): Expression => ({ op: 'constant', number, unit });
/** One formula up to a figure, the limit included, and another above it. */
export const split = (on: Part, at: Part, upTo: Part, above: Part): Expression => ({
  op: 'split',
  on: expression(on),
  at: expression(at),
  upTo: expression(upTo),
  above: expression(above),
});
export const lookup = (on: Part, table: LookupTable): Expression => ({ op: 'lookup', on: expression(on), table });
/** A named function of the parts in its order. It cannot be turned round. */
export const model = (name: ModelName, parameters: Parameters, ...parts: Part[]): Expression => ({
  op: 'model',
  model: name,
  of: parts.map(expression),
  parameters,
});

/** Powers of what an expression yields. Throws TypeError, naming the place, when unlike things are added or compared. */
export function powersOf(e: Expression): Powers {
  switch (e.op) {
    case 'fact':
      return dimensions[e.dimension];
    case 'constant':
      return dimensions[unitRow(e.unit).dimension];
    case 'times':
      return e.of.map(powersOf).reduce((a, b) => addPowers(a, b));
    case 'over':
      return addPowers(powersOf(e.of[0]), powersOf(e.of[1]), -1);
    case 'power':
      return powersOf(e.of).map((p) => p * e.exponent) as unknown as Powers;
    case 'round-up':
    case 'round-down':
      return alike([e.of, constant(1, '1')], `a count is rounded ${e.op === 'round-up' ? 'up' : 'down'}`);
    case 'cosine':
      return alike([e.of, constant(1, 'deg')], 'a cosine is taken of an angle');
    case 'split':
      alike([e.on, e.at], 'the two sides of a split');
      return alike([e.upTo, e.above], 'the two branches of a split');
    case 'lookup':
      if (!samePowers(powersOf(e.on), dimensions[e.table.key])) {
        throw new TypeError(`table ${e.table.id} is read by ${e.table.key}`);
      }
      return dimensions[e.table.value];
    case 'model':
      return powersOfModel(e);
    default:
      return alike(e.of, `the parts of a ${e.op}`);
  }
}

function powersOfModel({ model, of, parameters }: ModelExpression): Powers {
  const { takes, gives, parameters: wanted } = modelNamed(model);
  const missing = wanted.filter((name) => !Number.isFinite(parameters[name]));
  if (missing.length) throw new TypeError(`the ${model} model needs a number for ${missing.join(', ')}`);
  if (of.length !== takes.length) throw new TypeError(`the ${model} model takes ${takes.length} figures`);
  takes.forEach(([dimension], i) => {
    if (samePowers(powersOf(of[i]!), dimensions[dimension])) return;
    throw new TypeError(`figure ${i + 1} of the ${model} model is a ${dimension}`);
  });
  return dimensions[gives];
}

function alike(parts: readonly Expression[], what: string): Powers {
  const [first, ...rest] = parts.map(powersOf);
  if (!rest.every((powers) => samePowers(first!, powers))) throw new TypeError(`${what} differ in dimension`);
  return first!;
}

/** Tables an expression is read from. */
export function tablesIn(e: Expression): LookupTable[] {
  const own = e.op === 'lookup' ? [e.table] : [];
  return [...own, ...partsOf(e).flatMap(tablesIn)];
}

/** Ids of the facts an expression needs, each once, in the order they stand. */
export function factsOf(e: Expression, found: string[] = []): string[] {
  if (e.op === 'fact') {
    if (!found.includes(e.id)) found.push(e.id);
  } else for (const part of partsOf(e)) factsOf(part, found);
  return found;
}

/** The expressions an expression is made of. */
export function partsOf(e: Expression): readonly Expression[] {
  switch (e.op) {
    case 'fact':
    case 'constant':
      return [];
    case 'power':
    case 'round-up':
    case 'round-down':
    case 'cosine':
      return [e.of];
    case 'split':
      return [e.on, e.at, e.upTo, e.above];
    case 'lookup':
      return [e.on];
    default:
      return e.of;
  }
}

/** Works an expression out, facts and result in base units. NaN when it has no answer (over the end of a table, a root of less than nothing). */
export function evaluate(e: Expression, fact: (id: string) => number): number {
  switch (e.op) {
    case 'fact':
      return fact(e.id);
    case 'constant':
      return toBase(e.number, e.unit);
    case 'times': {
      let product = 1;
      for (const part of e.of) product *= evaluate(part, fact);
      return product;
    }
    case 'plus': {
      let sum = 0;
      for (const part of e.of) sum += evaluate(part, fact);
      return sum;
    }
    case 'over':
      return evaluate(e.of[0], fact) / evaluate(e.of[1], fact);
    case 'minus':
      return evaluate(e.of[0], fact) - evaluate(e.of[1], fact);
    case 'larger':
      return Math.max(evaluate(e.of[0], fact), evaluate(e.of[1], fact));
    case 'smaller':
      return Math.min(evaluate(e.of[0], fact), evaluate(e.of[1], fact));
    case 'power':
      return evaluate(e.of, fact) ** e.exponent;
    case 'round-up':
      return ceiling(evaluate(e.of, fact));
    case 'round-down':
      return 0 - ceiling(-evaluate(e.of, fact));
    case 'cosine':
      return Math.cos((evaluate(e.of, fact) * Math.PI) / 180);
    case 'split':
      return evaluate(isUpTo(evaluate(e.on, fact), evaluate(e.at, fact)) ? e.upTo : e.above, fact);
    case 'lookup':
      return rowFor(e.table, evaluate(e.on, fact));
    case 'model': {
      const inputs = e.of.map((part) => evaluate(part, fact));
      return modelNamed(e.model).run(inputs, e.parameters);
    }
  }
}

/** At most `b`, float dust forgiven. */
export const isUpTo = (a: number, b: number): boolean => a <= b + 1e-9 * Math.abs(b);

/** The value of the first row whose key is at least `key`; NaN over the end of the table. */
export function rowFor(table: LookupTable, key: number): number {
  for (const [row, value] of table.rows) if (isUpTo(key, row)) return value;
  return Number.NaN;
}

/** How tightly an expression holds together: one that is looser than its surroundings stands in brackets. */
const tightness: Partial<Record<Expression['op'], number>> = {
  'round-up': 0,
  'round-down': 0,
  split: 0,
  lookup: 0,
  model: 0,
  plus: 1,
  minus: 1,
  times: 2,
  over: 2,
  power: 3,
};

/** Puts an expression into words and signs, each fact and constant as `say` has it: `area × depth ÷ payload`, rounded up. */
export function inWords(
  e: Expression,
  say: (leaf: Expression & { op: 'fact' | 'constant' }) => string,
  join = wordsOfExpression,
): string {
  const all = (part: Expression): string => inWords(part, say, join);
  const inner = (part: Expression, outer: number, right = false): string => {
    const own = tightness[part.op] ?? 9;
    return own < outer || (right && own === outer) ? `(${all(part)})` : all(part);
  };
  switch (e.op) {
    case 'fact':
    case 'constant':
      return say(e);
    case 'times':
      return e.of.map((part) => inner(part, 2)).join(' × ');
    case 'plus':
      return e.of.map((part) => inner(part, 1)).join(' + ');
    case 'over':
      return `${inner(e.of[0], 2)} ÷ ${inner(e.of[1], 2, true)}`;
    case 'minus':
      return `${inner(e.of[0], 1)} − ${inner(e.of[1], 1, true)}`;
    case 'power': {
      if (e.exponent === 0.5) return `√(${all(e.of)})`;
      const base = inner(e.of, 3, true);
      const raised = e.exponent === 2 ? '²' : `^${Number(e.exponent.toPrecision(4))}`;
      return base.includes(' ') && !base.startsWith('(') ? `(${base})${raised}` : base + raised;
    }
    case 'cosine':
      return `cos(${all(e.of)})`;
    case 'round-up':
      return inner(e.of, 1) + join.roundedUp;
    case 'round-down':
      return inner(e.of, 1) + join.roundedDown;
    case 'larger':
    case 'smaller':
      return `${join[e.op]}(${e.of.map((part) => inner(part, 1)).join(', ')})`;
    case 'split':
      return `${inner(e.upTo, 1)} ${join.upTo} ${all(e.at)}, ${join.above} ${inner(e.above, 1)}`;
    case 'lookup':
      return `${join.table} ${inner(e.on, 4)}`;
    case 'model':
      return `${join.models[e.model]} ${e.of.map((part) => inner(part, 1)).join(', ')}`;
  }
}

/** The few words that join a formula; another language brings its own. */
export const wordsOfExpression = {
  roundedUp: ', rounded up',
  roundedDown: ', rounded down',
  larger: 'the larger of ',
  smaller: 'the smaller of ',
  upTo: 'up to',
  above: 'above that',
  table: 'table row for',
  models: { 'cooling-time': 'the heat equation for' },
};
