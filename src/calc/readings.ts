import { mustBeLengths } from './shapes.ts';

/**
 * Area under readings taken at equal steps, straight from one to the next (trapezoid rule):
 * step × (first ÷ 2 + those between + last ÷ 2). Throws RangeError for fewer than two readings.
 */
export function byTrapezoids(step: number, readings: readonly number[]): number {
  const [first, last] = endsOf(step, readings);
  return step * (sum(readings) - (first + last) / 2);
}

/**
 * Volume between sections at equal steps along the road (average end area): step × mean of each two neighbours. Half
 * too much where it runs out to a point: a cone or pyramid has a formula of its own.
 */
export function averageEndArea(step: number, areas: readonly number[]): number {
  return byTrapezoids(step, areas);
}

/**
 * Area under readings taken at equal steps, or volume between sections, by Simpson's rule:
 * step ÷ 3 × (first + 4 × odd ones + 2 × even ones between + last). Throws RangeError unless the number of steps is even.
 */
export function bySimpson(step: number, readings: readonly number[]): number {
  const [first, last] = endsOf(step, readings);
  if (readings.length % 2 === 0) {
    throw new RangeError(
      `Simpson's rule needs an even number of steps, so an odd number of readings; there are ${readings.length}: ` +
        'take one more, or use the trapezoid rule',
    );
  }
  const odd = sum(readings.filter((_, i) => i % 2 === 1));
  const even = sum(readings) - odd - first - last;
  return (step / 3) * (first + 4 * odd + 2 * even + last);
}

function endsOf(step: number, readings: readonly number[]): readonly [first: number, last: number] {
  mustBeLengths({ step, ...Object.fromEntries(readings.map((reading, i) => [`reading ${i + 1}`, reading])) });
  if (readings.length < 2) throw new RangeError('an area between readings needs at least two of them');
  return [readings[0]!, readings.at(-1)!];
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);
