import { convert } from '../../calc/quantity.ts';
import type { Unit } from '../../calc/units.ts';

/** The metric unit that takes the place of one of the manuals', and the step its figures are given in, by their size. */
const metricUnits: Readonly<Partial<Record<Unit, readonly [Unit, (figure: number) => number]>>> = {
  ft: ['m', (x) => (x < 3 ? 0.1 : x < 15 ? 0.5 : x < 100 ? 5 : 10)],
  in: ['mm', (x) => (x <= 15 ? 1 : 5)],
  mi: ['km', () => 1],
  yd2: ['m2', (x) => (x < 100 ? 5 : 50)],
  ft2: ['m2', (x) => (x < 10 ? 0.1 : 10)],
  ton: ['t', (x) => (x < 3 ? 0.5 : 1)],
  'lb/yd2/in': ['kg/m2/mm', () => 0.05],
  'lb/yd2': ['kg/m2', () => 5],
  gal: ['L', (x) => (x < 100 ? 5 : 50)],
  'gal/yd2': ['L/m2', () => 0.05],
  'gal/min': ['L/min', () => 5],
  mph: ['km/h', (x) => (x < 10 ? 0.5 : 5)],
  'ton/h': ['t/h', () => 5],
  degF: ['degC', () => 1],
};

/** A figure as a metric job would give it: turned over and put on a step that people give. One with no other unit stays. */
export function inMetric([figure, unit]: readonly [number, Unit]): readonly [number, Unit] {
  const metric = metricUnits[unit];
  if (!metric) return [figure, unit];
  const [to, stepOf] = metric;
  const exact = convert(figure, unit, to);
  const step = stepOf(Math.abs(exact));
  return [Number((Math.max(1, Math.round(exact / step)) * step).toPrecision(8)), to];
}

/** The unit that takes the place of this one in metric. */
export const metricUnit = (unit: Unit): Unit => metricUnits[unit]?.[0] ?? unit;

/** Step that metric figures of this size are given in; undefined for a unit that is none of these. */
export function metricStep(figure: number, unit: Unit): number | undefined {
  const found = Object.values(metricUnits).find(([to]) => to === unit);
  return found?.[1](Math.abs(figure));
}

/** Slips with feet, inches and short tons, which nobody makes in metric. */
export const slipsInFeet: ReadonlySet<string> = new Set([
  'feet-not-yards',
  'linear-yards',
  'took-one-inch',
  'half-for-one-and-half',
  'long-ton',
  'thousand-pounds',
  'inches-as-tenths',
  'roll-down-as-inches',
  'feet-as-ten-inches',
  'mile-an-hour-as-60-feet',
  'mile-a-minute',
]);
