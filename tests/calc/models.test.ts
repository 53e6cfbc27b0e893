import { describe, expect, test } from 'vitest';
import { ends } from '../../src/calc/ends.ts';
import { constant, evaluate, factsOf, inWords, model, over, powersOf, roundDown } from '../../src/calc/expression.ts';
import { isolate } from '../../src/calc/isolate.ts';
import { toBase } from '../../src/calc/quantity.ts';

const thickness = { id: 'thickness', dimension: 'length' } as const;
const start = { id: 'start', dimension: 'temperature' } as const;
const wind = { id: 'wind', dimension: 'speed' } as const;
const parameters = {
  conductivity: 1.21,
  heatCapacity: 921,
  density: 2243,
  stillFilm: 7.4,
  windFilm: 6.39,
  windPower: 0.75,
  emissivity: 0.95,
};
const degrees = (number: number) => constant(number, 'degF');
const cooling = model('cooling-time', parameters, thickness, start, degrees(60), degrees(60), wind, degrees(175));

const facts: Readonly<Record<string, number>> = {
  thickness: toBase(1, 'in'),
  start: toBase(300, 'degF'),
  wind: toBase(10, 'mph'),
};
const minutes = (e: typeof cooling, given = facts): number => evaluate(e, (id) => given[id]!) / 60;

describe('a model in a formula', () => {
  test('is worked from its parts, in any unit they came in', () => {
    // An independent explicit solution of the same equation: 7.48 min with 20 and 40 cells.
    expect(minutes(cooling)).toBeCloseTo(7.48, 1);
    const metric = { ...facts, thickness: toBase(25.4, 'mm'), start: toBase(148.888889, 'degC') };
    expect(minutes(cooling, metric)).toBeCloseTo(minutes(cooling), 5);
  });

  test('lies between its ends, and wind works against it', () => {
    const at = (id: string): readonly [number, number] =>
      id === 'wind' ? [toBase(5, 'mph'), toBase(20, 'mph')] : [facts[id]!, facts[id]!];
    const [low, high] = ends(cooling, at);
    expect(low).toBe(evaluate(cooling, (id) => at(id)[1]));
    expect(high).toBe(evaluate(cooling, (id) => at(id)[0]));
    expect(low).toBeLessThan(high);
  });

  test('names its facts, cannot be turned round, and is put into words', () => {
    expect(factsOf(cooling)).toEqual(['thickness', 'start', 'wind']);
    expect(isolate(cooling, 'wind', constant(7, 'min'))).toBeUndefined();
    const words = inWords(cooling, (leaf) => (leaf.op === 'fact' ? leaf.id : `${leaf.number}`));
    expect(words).toMatch(/^the heat equation for thickness, start, 60, 60, wind, 175$/);
  });

  test('gives a time, and is held to what it takes', () => {
    expect(powersOf(cooling)).toEqual([0, 0, 1, 0, 0]);
    expect(() => powersOf(model('cooling-time', parameters, start, start, start, start, wind, start))).toThrow(
      'figure 1 of the cooling-time model is a length',
    );
    expect(() => powersOf(model('cooling-time', parameters, thickness))).toThrow('takes 6 figures');
    const { emissivity: _left, ...fewer } = parameters;
    const short = model('cooling-time', fewer, thickness, start, start, start, wind, start);
    expect(() => powersOf(short)).toThrow('needs a number for emissivity');
  });
});

describe('rounding down', () => {
  const trips = roundDown(over({ id: 'day', dimension: 'time' }, { id: 'trip', dimension: 'time' }));
  const whole = (day: number, trip: number): number => evaluate(trips, (id) => (id === 'day' ? day : trip));

  test.each([
    [480, 66, 7],
    [480, 60, 8],
    [0.3, 0.1, 3],
    [59, 60, 0],
  ])('%d over %d is %d whole ones, dust forgiven', (day, trip, wanted) => {
    expect(Object.is(whole(day, trip), wanted)).toBe(true);
  });

  test('keeps its ends, counts only counts, and says so', () => {
    expect(ends(trips, (id) => (id === 'day' ? [480, 480] : [60, 66]))).toEqual([7, 8]);
    expect(() => powersOf(roundDown(thickness))).toThrow('rounded down');
    expect(inWords(trips, (leaf) => (leaf.op === 'fact' ? leaf.id : ''))).toBe('day ÷ trip, rounded down');
  });
});
