import { type Expression, evaluate, isUpTo, type LookupTable, rowFor } from './expression.ts';
import { modelNamed } from './models.ts';
import { roundUp } from './quantity.ts';

export type Ends = readonly [low: number, high: number];

/**
 * Lowest and highest an expression can come out when each fact lies between two ends. Exact while each fact stands once;
 * where one stands twice, never too narrow. Ends are not finite where there is no answer: over the end of a table, or
 * divided by a range that holds nothing.
 */
export function ends(e: Expression, fact: (id: string) => Ends): Ends {
  switch (e.op) {
    case 'fact':
      return fact(e.id);
    case 'constant': {
      const value = evaluate(e, noFact);
      return [value, value];
    }
    case 'times':
      return e.of.map((part) => ends(part, fact)).reduce((a, b) => corners(a, b, multiply));
    case 'plus':
      return e.of.map((part) => ends(part, fact)).reduce((a, b) => [a[0] + b[0], a[1] + b[1]]);
    case 'over': {
      const under = ends(e.of[1], fact);
      return under[0] <= 0 && under[1] >= 0 ? anything : corners(ends(e.of[0], fact), under, divide);
    }
    case 'minus':
      return corners(ends(e.of[0], fact), ends(e.of[1], fact), subtract);
    case 'larger':
      return corners(ends(e.of[0], fact), ends(e.of[1], fact), Math.max);
    case 'smaller':
      return corners(ends(e.of[0], fact), ends(e.of[1], fact), Math.min);
    case 'power':
      return powerEnds(ends(e.of, fact), e.exponent);
    case 'round-up': {
      const [low, high] = ends(e.of, fact);
      return [roundUp(low), roundUp(high)];
    }
    case 'round-down': {
      const [low, high] = ends(e.of, fact);
      return [0 - roundUp(-low), 0 - roundUp(-high)];
    }
    case 'cosine':
      return cosineEnds(ends(e.of, fact));
    case 'split': {
      const [on, at] = [ends(e.on, fact), ends(e.at, fact)];
      const branches: Ends[] = [];
      if (isUpTo(on[0], at[1])) branches.push(ends(e.upTo, fact));
      if (!isUpTo(on[1], at[0])) branches.push(ends(e.above, fact));
      return around(branches.flat());
    }
    case 'lookup':
      return rowEnds(e.table, ends(e.on, fact));
    case 'model': {
      const { takes, run } = modelNamed(e.model);
      const parts = e.of.map((part) => ends(part, fact));
      const at = (end: 0 | 1): number =>
        run(
          parts.map((part, i) => part[takes[i]![1] > 0 ? end : 1 - end]!),
          e.parameters,
        );
      const low = at(0);
      return [low, parts.every(([from, to]) => from === to) ? low : at(1)];
    }
  }
}

const anything: Ends = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
const noFact = (): number => Number.NaN;
const multiply = (x: number, y: number): number => x * y;
const divide = (x: number, y: number): number => x / y;
const subtract = (x: number, y: number): number => x - y;

function corners(a: Ends, b: Ends, join: (x: number, y: number) => number): Ends {
  const [one, two, three, four] = [join(a[0], b[0]), join(a[0], b[1]), join(a[1], b[0]), join(a[1], b[1])];
  return [Math.min(one, two, three, four), Math.max(one, two, three, four)];
}

const around = (values: readonly number[]): Ends => [Math.min(...values), Math.max(...values)];

function powerEnds([low, high]: Ends, exponent: number): Ends {
  const dips = low < 0 && high > 0;
  if (dips && exponent < 0) return anything;
  return around([low ** exponent, high ** exponent, ...(dips && exponent % 2 === 0 ? [0] : [])]);
}

function cosineEnds([low, high]: Ends): Ends {
  const cosine = (degrees: number): number => Math.cos((degrees * Math.PI) / 180);
  const turns = (from: number): boolean => Math.floor((high - from) / 360) * 360 + from >= low;
  const tops = [...(turns(0) ? [1] : []), ...(turns(180) ? [-1] : [])];
  return around([cosine(low), cosine(high), ...tops]);
}

/** Between two keys every row from the one that serves the low to the one that serves the high can come up. */
function rowEnds(table: LookupTable, [low, high]: Ends): Ends {
  const between = table.rows.filter(([key]) => isUpTo(low, key) && !isUpTo(high, key)).map(([, value]) => value);
  return around([...between, rowFor(table, low), rowFor(table, high)]);
}
