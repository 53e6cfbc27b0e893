import type { Dimension } from './dimension.ts';
import { type Unit, type UnitOf, unitRow } from './units.ts';

/**
 * A figure with its dimension in the type. `base` is in inches, pounds and seconds (degF for temperatures, a fraction
 * for a ratio, degrees for an angle). Made by `of`, read by `inUnit`; adding feet to tons does not compile.
 */
export interface Quantity<D extends Dimension = Dimension> {
  readonly dimension: D;
  readonly base: number;
}

/** A figure as people write it. */
export interface Measure<D extends Dimension = Dimension> {
  readonly number: number;
  readonly unit: UnitOf<D>;
}

/** The quantity that `number` of `unit` is. Throws RangeError when the number is not finite. */
export function of<U extends Unit>(number: number, unit: U): Quantity<DimensionOf<U>> {
  if (!Number.isFinite(number)) throw new RangeError(`${number} ${unit} is not a figure`);
  return { dimension: unitRow(unit).dimension as DimensionOf<U>, base: toBase(number, unit) };
}

/** The dimension a unit measures. */
export type DimensionOf<U extends Unit> = { [D in Dimension]: U extends UnitOf<D> ? D : never }[Dimension];

/** The number of `unit` that a quantity is. Throws TypeError when the unit measures something else. */
export function inUnit<D extends Dimension>(quantity: Quantity<D>, unit: UnitOf<NoInfer<D>>): number {
  mustMatch(quantity.dimension, unitRow(unit).dimension, unit);
  return fromBase(quantity.base, unit);
}

/** Sum of two quantities of one dimension. */
export function add<D extends Dimension>(a: Quantity<D>, b: Quantity<NoInfer<D>>): Quantity<D> {
  mustMatch(a.dimension, b.dimension, 'the second figure');
  return { dimension: a.dimension, base: a.base + b.base };
}

/** A number in base units, from one in `unit`. */
export function toBase(number: number, unit: Unit): number {
  const { size, zero = 0 } = unitRow(unit);
  return (number * size[0]) / size[1] + zero;
}

/** A number in `unit`, from one in base units. */
export function fromBase(base: number, unit: Unit): number {
  const { size, zero = 0 } = unitRow(unit);
  return ((base - zero) * size[1]) / size[0];
}

/** Converts a bare number between two units of one dimension. Throws TypeError when they differ in dimension. */
export function convert(number: number, from: Unit, to: Unit): number {
  mustMatch(unitRow(from).dimension, unitRow(to).dimension, to);
  return from === to ? number : fromBase(toBase(number, from), to);
}

/** Slack of a comparison: float dust, far below anything a tape can read. */
const slack = 1e-9;

/** -1, 0 or 1; figures that differ by float dust only are equal. */
export function compare(a: number, b: number): -1 | 0 | 1 {
  const gap = a - b;
  if (Math.abs(gap) <= slack * Math.max(Math.abs(a), Math.abs(b), 1e-12)) return 0;
  return gap < 0 ? -1 : 1;
}

/** Smallest whole number not below `x`, float dust forgiven: 3.0000000001 is 3. Never minus zero. */
export function roundUp(x: number): number {
  const nearest = Math.round(x);
  const dust = slack * Math.max(Math.abs(x), 1);
  return (Math.abs(x - nearest) <= dust ? nearest : Math.ceil(x)) + 0;
}

function mustMatch(a: Dimension, b: Dimension, what: string): void {
  if (a !== b) throw new TypeError(`${what} is of ${b}, where ${a} is wanted`);
}
