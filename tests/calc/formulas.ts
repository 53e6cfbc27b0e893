import fc from 'fast-check';
import {
  cosine,
  type Expression,
  evaluate,
  larger,
  minus,
  over,
  partsOf,
  plus,
  power,
  roundUp,
  smaller,
  times,
} from '../../src/calc/expression.ts';

/** A formula without its facts: an operation and the parts under it. */
type Bare = { op: keyof typeof makers; parts: Bare[]; exponent: number } | undefined;

const makers = {
  times: (parts: Expression[]) => times(...parts),
  plus: (parts: Expression[]) => plus(...parts),
  over: ([a, b]: Expression[]) => over(a!, b!),
  minus: ([a, b]: Expression[]) => minus(a!, b!),
  larger: ([a, b]: Expression[]) => larger(a!, b!),
  smaller: ([a, b]: Expression[]) => smaller(a!, b!),
  power: ([a]: Expression[], exponent: number) => power(a!, exponent),
  'round-up': ([a]: Expression[]) => roundUp(a!),
  cosine: ([a]: Expression[]) => cosine(a!),
};

type Maker = keyof typeof makers;
const partsWanted: Record<Maker, [least: number, most: number]> = {
  times: [2, 3],
  plus: [2, 3],
  over: [2, 2],
  minus: [2, 2],
  larger: [2, 2],
  smaller: [2, 2],
  power: [1, 1],
  'round-up': [1, 1],
  cosine: [1, 1],
};

/** Random formulas of pure numbers made by these operations, every fact (`a`, `b`, …) standing once. */
export function formulas(...ops: Maker[]): fc.Arbitrary<Expression> {
  const { bare } = fc.letrec<{ bare: Bare }>((tie) => ({
    bare: fc.oneof(
      { maxDepth: 4, depthSize: 'medium' },
      fc.constant(undefined),
      ...ops.map((op) =>
        fc.record({
          op: fc.constant(op),
          parts: fc.array(tie('bare'), { minLength: partsWanted[op][0], maxLength: partsWanted[op][1] }),
          exponent: fc.constantFrom(2, 0.5, 3, -1),
        }),
      ),
    ),
  }));
  return bare.map((shape) => {
    let facts = 0;
    const dress = (part: Bare): Expression =>
      part
        ? makers[part.op](part.parts.map(dress), part.exponent)
        : { op: 'fact', id: `f${facts++}`, dimension: 'count' };
    return dress(shape);
  });
}

/** What a formula and each of its parts come out as, the whole first. */
export function valuesWithin(formula: Expression, fact: (id: string) => number): number[] {
  return [evaluate(formula, fact), ...partsOf(formula).flatMap((part) => valuesWithin(part, fact))];
}
