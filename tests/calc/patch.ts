import { larger, minus, over, plus, roundUp, type Term, times } from '../../src/calc/expression.ts';
import { toBase } from '../../src/calc/quantity.ts';
import { methodsOf, type RelationShape } from '../../src/calc/relation.ts';
import { type Known, type Network, network } from '../../src/calc/solve.ts';
import type { Unit } from '../../src/calc/units.ts';

/** The quantities of a patch, for networks to be tried on. */
export const length: Term = { id: 'length', dimension: 'length' };
export const width: Term = { id: 'width', dimension: 'length' };
export const area: Term = { id: 'area', dimension: 'area' };
export const depth: Term = { id: 'depth', dimension: 'length' };
export const weight: Term = { id: 'weight', dimension: 'density' };
export const mass: Term = { id: 'mass', dimension: 'mass' };
export const waste: Term = { id: 'waste', dimension: 'ratio' };
export const order: Term = { id: 'order', dimension: 'mass' };
export const payload: Term = { id: 'payload', dimension: 'mass' };
export const loads: Term = { id: 'loads', dimension: 'count' };
export const thickest: Term = { id: 'thickest', dimension: 'length' };
export const lifts: Term = { id: 'lifts', dimension: 'count' };
export const lift: Term = { id: 'lift', dimension: 'length' };
export const placed: Term = { id: 'placed', dimension: 'mass' };
export const left: Term = { id: 'left', dimension: 'mass' };

export const relations: readonly RelationShape[] = [
  { id: 'area', finds: area, by: times(length, width) },
  { id: 'left', finds: left, by: minus(mass, placed) },
  { id: 'lift', finds: lift, by: over(depth, lifts) },
  { id: 'lifts', finds: lifts, by: larger(roundUp(over(depth, thickest)), 1), bothWays: false },
  { id: 'loads', finds: loads, by: roundUp(over(mass, payload)) },
  { id: 'mass', finds: mass, by: times(area, depth, weight) },
  { id: 'order', finds: order, by: times(mass, plus(1, waste)) },
];

/** A network of relations, in the order of their ids as the solver wants them. */
export function networkOf(shapes: readonly RelationShape[], counted: readonly string[] = []): Network {
  return network([...shapes].sort((a, b) => (a.id < b.id ? -1 : 1)).flatMap(methodsOf), counted);
}

export const patch: Network = networkOf(relations, ['loads', 'lifts']);

/** A fact as somebody says it. */
export const said = (id: string, number: number, unit: Unit, ends?: readonly [low: number, high: number]): Known => ({
  id,
  value: toBase(number, unit),
  ...(ends ? { low: toBase(ends[0], unit), high: toBase(ends[1], unit) } : {}),
});

/** A default. */
export const assumed = (...fact: Parameters<typeof said>): Known => ({ ...said(...fact), assumed: true });

/** Mix weighs 105 to 120 lb a square yard and inch, 110 for planning (NAVEDTRA 14080 p. 8-31). */
export const defaults: readonly Known[] = [
  assumed('weight', 110, 'lb/yd2/in', [105, 120]),
  assumed('payload', 15, 'ton'),
  assumed('thickest', 1, 'in'),
  assumed('waste', 5, '%'),
];
