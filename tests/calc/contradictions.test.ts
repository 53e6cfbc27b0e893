import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/calc/expression.ts';
import { fromBase } from '../../src/calc/quantity.ts';
import { contradictions, type Known, solve } from '../../src/calc/solve.ts';
import { sayFigure } from '../../src/calc/wording.ts';
import { networks } from './networks.ts';
import { assumed, defaults, patch, said } from './patch.ts';

const found = (...facts: readonly Known[]) => contradictions(patch, solve(patch, [...facts, ...defaults]), defaults);
const names = (...facts: readonly Known[]): string[] => found(...facts).map(({ method }) => method.relation.id);

describe('figures at odds', () => {
  /** 2,400 sq ft × 1 in at 110 lb/sq yd/in is 14.7 tons; 20 tons would be 20 × 2,000 × 9 ÷ 2,400 ÷ 110 = 1.36 in. By hand. */
  test('20 tons over 2,400 sq ft is 1.4 in, not 1 in', () => {
    const facts = [said('mass', 20, 'ton'), said('area', 2400, 'ft2'), said('depth', 1, 'in')];
    const [one, ...more] = found(...facts);
    expect(more).toEqual([]);
    expect(one!.against).toBe('weight');
    expect(one!.method.relation.id).toBe('mass');
    expect(one!.implied.map((base) => fromBase(base, 'ton').toFixed(2))).toEqual(['14.00', '16.00']);
    expect(one!.stated.map((base) => fromBase(base, 'ton'))).toEqual([20, 20]);

    const depth = patch.methods.find(({ finds, relation }) => finds === 'depth' && relation.id === 'mass')!;
    const figures = new Map([...facts, defaults[0]!].map(({ id, value }) => [id, value]));
    const inches = fromBase(
      evaluate(depth.by, (id) => figures.get(id)!),
      'in',
    );
    expect(sayFigure(inches, 'in', { rounding: 'tenth' })).toBe('1.4 in');
  });

  test('without the defaults the mix is taken to weigh what it must', () => {
    const solved = solve(patch, [
      said('mass', 20, 'ton'),
      said('area', 2400, 'ft2'),
      said('depth', 1, 'in'),
      ...defaults,
    ]);
    expect(contradictions(patch, solved)).toEqual([]);
    expect(fromBase(solved.get('weight')!.value, 'lb/yd2/in')).toBeCloseTo(150, 9);
  });

  test('an area that is not length times width', () => {
    const [one] = found(said('length', 300, 'ft'), said('width', 12, 'ft'), said('area', 300, 'yd2'));
    expect(one!.method.relation.id).toBe('area');
    expect(one!.implied.map((base) => fromBase(base, 'yd2'))).toEqual([400, 400]);
    expect(one).not.toHaveProperty('against');
  });

  test('an order that is less than the mix and its waste', () => {
    const order = [said('mass', 40, 'ton'), said('order', 38, 'ton'), said('waste', 5, '%')];
    expect(names(...order)).toEqual(['order']);
  });
});

describe('figures that agree', () => {
  test('to what people round in their heads, 2 %', () => {
    expect(names(said('length', 300, 'ft'), said('width', 12, 'ft'), said('area', 405, 'yd2'))).toEqual([]);
    expect(names(said('length', 300, 'ft'), said('width', 12, 'ft'), said('area', 409, 'yd2'))).toEqual(['area']);
  });

  test('where a range leaves room', () => {
    const depth = said('depth', 1.25, 'in', [1, 1.5]);
    expect(names(said('mass', 20, 'ton'), said('area', 2400, 'ft2'), depth)).toEqual([]);
  });

  test('within the band of a default', () => {
    expect(names(said('mass', 16, 'ton'), said('area', 2400, 'ft2'), said('depth', 1, 'in'))).toEqual([]);
  });

  test('with a default that has no band, which contradicts nobody', () => {
    expect(names(said('mass', 40, 'ton'), said('order', 60, 'ton'))).toEqual([]);
    expect(names(said('mass', 40, 'ton'), said('loads', 5, '1'))).toEqual([]);
  });

  test('though the figure they make is itself such a default', () => {
    expect(names(said('area', 2400, 'ft2'), said('depth', 1, 'in'), assumed('mass', 99, 'ton'))).toEqual([]);
  });

  test('when the figure was worked out from them by that very relation', () => {
    expect(names(said('length', 300, 'ft'), said('width', 12, 'ft'))).toEqual([]);
    expect(names(said('area', 400, 'yd2'), said('width', 12, 'ft'))).toEqual([]);
  });

  test('with a default area that has no band, though the mix would have to weigh the world', () => {
    expect(names(said('mass', 20, 'ton'), said('depth', 1, 'in'), assumed('area', 1, 'yd2'))).toEqual([]);
    expect(names(said('mass', 20, 'ton'), said('depth', 1, 'in'), assumed('area', 1, 'yd2', [1, 1.1]))).toEqual([
      'mass',
    ]);
  });
});

describe('laws, on random networks', () => {
  test('figures that all relations agree on are never at odds', () => {
    fc.assert(
      fc.property(networks, ({ net, values }) => {
        const facts = [...values].map(([id, value]): Known => ({ id, value }));
        expect(contradictions(net, solve(net, facts))).toEqual([]);
      }),
      { seed: 44, numRuns: 300 },
    );
  });

  test('one figure put out by half is at odds with every relation that finds it', () => {
    fc.assert(
      fc.property(networks, fc.nat(), ({ net, values }, pick) => {
        const finding = net.methods.filter(({ finds, relation }) => finds === relation.finds.id);
        const { finds } = finding[pick % finding.length]!;
        const facts = [...values].map(([id, value]): Known => ({ id, value: id === finds ? value * 1.5 : value }));
        const odd = contradictions(net, solve(net, facts)).map(({ method }) => method.finds);
        expect(odd).toContain(finds);
      }),
      { seed: 44, numRuns: 300 },
    );
  });
});
