import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { knowledge } from '../../src/rules/knowledge.ts';
import { type LayoutKind, layoutOf, needsOfLayout, type ZoneLayout } from '../../src/rules/layout.ts';
import { partNames } from '../../src/rules/layout-names.ts';
import { plans } from '../../src/rules/layout-plans.ts';
import type { Facts } from '../../src/rules/shapes.ts';
import { closure, flaggers } from '../published/traffic-zones.ts';
import { found, solved } from './facts.ts';

const kinds = Object.keys(plans) as LayoutKind[];
const laid = (kind: LayoutKind, facts: Facts): ZoneLayout => layoutOf(kind, solved(facts));
const count = (layout: ZoneLayout, part: string): number | undefined =>
  layout.devices.find((each) => each.part === part)?.count;
const places = ({ places: all }: ZoneLayout) =>
  all.map(({ part, side, at }) => `${part} ${side} ${Number(at.toFixed(6))}`);

describe('flaggers on two lanes', () => {
  // Order of the signs: a standard drawing numbered 102.603 (issuer not shown); distances: MUTCD 11th ed., Tables 6B-1 to 6B-3.
  test('every sign and space in the order a driver meets them, with its distance from the work', () => {
    expect(places(laid('flaggers', flaggers('rural', 45, 400)))).toEqual([
      'road-work-ahead approach 1960',
      'one-lane-road-ahead approach 1460',
      'flagger-ahead approach 960',
      'flagger approach 460',
      'flagger-taper approach 460',
      'buffer approach 360',
      'work approach 0',
      'work-end past 0',
      'downstream-taper past 0',
      'flagger past 100',
      'flagger-ahead past 600',
      'one-lane-road-ahead past 1100',
      'road-work-ahead past 1600',
    ]);
  });

  test('signs are W20-1, W20-4, W20-7 toward the work, as the drawing has them', () => {
    const signs = laid('flaggers', flaggers('rural', 45, 400))
      .places.map(({ what }) => what.match(/W20-\d/)?.[0])
      .filter(Boolean);
    expect(signs).toEqual(['W20-1', 'W20-4', 'W20-7', 'W20-7', 'W20-4', 'W20-1']);
  });

  // 100 ft at 20 ft, 760 ft at 90 ft, 100 ft at 20 ft: 5 + 9 + 5 spaces and one more device.
  test.each([
    ['rural 45 mph, 400 ft', flaggers('rural', 45, 400), 3960, 20],
    ['rural 55 mph, 1,000 ft', flaggers('rural', 55, 1000), 4695, 25],
    ['urban low speed 25 mph, 60 ft, tapers of 50 ft', flaggers('urban-low', 25, 60, 50), 915, 12],
  ])('%s: regression of length and devices', (_, facts, total, cones) => {
    const layout = laid('flaggers', facts);
    expect(layout.total).toBeCloseTo(total, 9);
    expect(count(layout, 'cones')).toBe(cones);
    expect(count(layout, 'paddle')).toBe(2);
    expect(count(layout, 'stand')).toBe(6);
  });
});

describe('a lane of a multilane road', () => {
  test('rural 55 mph, 1,000 ft: regression of length and devices', () => {
    const layout = laid('lane-closed', closure('rural', 55, 1000));
    expect(layout.total).toBeCloseTo(3755, 9);
    expect(count(layout, 'cones')).toBe(32);
    expect(count(layout, 'arrow-board')).toBe(1);
  });

  test('the same with the spacing California caps at 50 and 100 ft (Table 6K-101(CA)): 35 devices', () => {
    const facts: Facts = {
      ...closure('rural', 55, 1000),
      'long-taper-spacing': [50, 'ft'],
      'device-spacing-tangent': [100, 'ft'],
    };
    expect(count(laid('lane-closed', facts), 'cones')).toBe(35);
  });

  test('freeway 65 mph, 1,500 ft: regression of length', () => {
    expect(laid('lane-closed', closure('expressway', 65, 1500)).total).toBeCloseTo(8165, 9);
  });
});

test('a shoulder closed: signs, taper of a third, buffer, work', () => {
  const facts: Facts = { ...closure('rural', 55, 300), offset: [10, 'ft'] };
  const layout = laid('shoulder', facts);
  // 300 ft of work, 495 ft of buffer, a taper of 10 × 55 ÷ 3 ft, and two signs 500 ft apart (MUTCD 11th ed., Tables 6B-1 to 6B-4).
  expect(layout.total).toBeCloseTo(300 + 495 + 550 / 3 + 1000, 6);
  expect(layout.places.map(({ part }) => part)).toEqual([
    'road-work-ahead',
    'shoulder-closed-ahead',
    'shoulder-taper',
    'buffer',
    'work',
    'work-end',
  ]);
});

describe.each(kinds)('%s', (kind) => {
  const facts = (mph: number, work: number, road: string): Facts => ({
    ...closure(road, mph, work),
    'flagger-taper': [100, 'ft'],
  });
  const anywhere = [
    fc.integer({ min: 10, max: 75 }),
    fc.integer({ min: 1, max: 5000 }),
    fc.constantFrom('urban-low', 'urban-high', 'rural', 'expressway'),
  ] as const;

  test('places follow one another, and the outermost two are its length apart', () => {
    fc.assert(
      fc.property(...anywhere, (mph, work, road) => {
        const layout = laid(kind, facts(mph, work, road));
        const along = layout.places.map(({ side, at }) => (side === 'approach' ? -at : work + at));
        expect(along).toEqual([...along].sort((a, b) => a - b));
        const ends = layout.places.map(({ side, at, length = 0 }) => (side === 'approach' ? -at : work + at) + length);
        expect(Math.max(...ends) - along[0]!).toBeCloseTo(layout.total, 6);
      }),
      { numRuns: 40 },
    );
  });

  test('stretches meet: each ends where the next begins', () => {
    const layout = laid(kind, facts(45, 400, 'rural'));
    const stretches = layout.places
      .filter(({ length }) => length !== undefined)
      .map(({ side, at, length }) => [side === 'approach' ? -at : 400 + at, length!] as const);
    for (let i = 1; i < stretches.length; i++)
      expect(stretches[i - 1]![0] + stretches[i - 1]![1]).toBeCloseTo(stretches[i]![0], 9);
  });

  test('nothing is laid out while a figure is wanting, and it is named', () => {
    const { 'road-type': _road, ...rest } = facts(45, 400, 'rural');
    expect(laid(kind, rest)).toMatchObject({
      places: [],
      devices: [],
      needs: expect.arrayContaining(['sign-spacing-a']),
    });
    expect(laid(kind, facts(80, 400, 'rural')).needs).toEqual(['buffer-length']);
  });

  test('rests on quantities that there are, and every part has a name', () => {
    expect(needsOfLayout(kind).filter((id) => !knowledge.quantities.has(id))).toEqual([]);
    for (const { part, what } of laid(kind, facts(45, 400, 'rural')).places) expect(what).toBe(partNames[part]);
  });

  test('is the same in meters', () => {
    const known = solved(facts(45, 400, 'rural'));
    expect(layoutOf(kind, known, { unit: 'm' }).total).toBeCloseTo(layoutOf(kind, known).total * 0.3048, 9);
  });
});

test('a zone is as long as the quantity of that name says', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 75 }),
      fc.integer({ min: 10, max: 3000 }),
      fc.constantFrom('urban-low', 'urban-high', 'rural'),
      (mph, patch, road) => {
        const facts = flaggers(road, mph, patch);
        expect(laid('flaggers', facts).total).toBeCloseTo(found(facts, 'zone-length', 'ft'), 6);
        expect(layoutOf('flaggers', solved(facts), { work: 'work-length' }).total).toBeCloseTo(
          found(facts, 'zone-length-turning', 'ft'),
          6,
        );
      },
    ),
    { numRuns: 40 },
  );
});
