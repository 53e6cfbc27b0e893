import { describe, expect, test } from 'vitest';
import { found } from '../rules/facts.ts';
import * as published from './traffic-tables.ts';

const us = { 'speed-unit': 'us' } as const;
const metric = { 'speed-unit': 'metric' } as const;

describe('stopping sight distance', () => {
  test.each(published.stoppingSight)('%i mph: %i ft', (mph, feet) => {
    expect(found({ ...us, 'posted-speed': [mph, 'mph'] }, 'buffer-length', 'ft')).toBeCloseTo(feet, 9);
  });

  test.each(published.stoppingSight)(
    '%i mph by the formula of the AASHTO policy, up to the next 5 ft: %i ft',
    (mph, feet) => {
      const exact = 1.47 * mph * 2.5 + (1.075 * mph ** 2) / 11.2;
      expect(Math.ceil(exact / 5) * 5).toBe(feet);
      expect(found({ ...us, 'posted-speed': [mph, 'mph'] }, 'buffer-length', 'ft')).toBeCloseTo(
        Math.ceil(exact / 5) * 5,
        9,
      );
    },
  );

  test.each(published.stoppingSightMetric)(
    '%i km/h: %i m, and by the metric formula up to the next 5 m',
    (kmh, metres) => {
      const exact = 0.278 * kmh * 2.5 + (0.039 * kmh ** 2) / 3.4;
      expect(Math.ceil(exact / 5) * 5).toBe(metres);
      expect(found({ ...metric, 'posted-speed': [kmh, 'km/h'] }, 'buffer-length', 'm')).toBeCloseTo(metres, 9);
    },
  );

  const downgrades = published.stoppingSightDown.flatMap(([mph, ...feet]) =>
    feet.map((each, column) => [mph, [3, 6, 9][column]!, each] as const),
  );
  test.each(downgrades)('%i mph, %i % down: %i ft', (mph, percent, feet) => {
    expect(found({ ...us, 'posted-speed': [mph, 'mph'], grade: [percent, '%'] }, 'buffer-length', 'ft')).toBeCloseTo(
      feet,
      9,
    );
  });

  // The grade form of the formula, each part to a tenth of a foot and the sum up to a whole one, gives all 36 cells.
  test.each(downgrades)('%i mph, %i % down by the formula: %i ft', (mph, percent, feet) => {
    const tenth = (x: number): number => Math.round(x * 10) / 10;
    const sum = tenth(1.47 * mph * 2.5) + tenth(mph ** 2 / (30 * (0.348 - percent / 100)));
    expect(Math.ceil(tenth(sum))).toBe(feet);
  });
});

describe('between rows and past the ends of a table', () => {
  test.each([
    [42, 0, 360],
    [46, 0, 425],
    [15, 0, 115],
    [45, 4, 400],
    [45, -6, 360],
  ])('%i mph on %i %: %i ft, the next row and the steeper column', (mph, percent, feet) => {
    expect(found({ ...us, 'posted-speed': [mph, 'mph'], grade: [percent, '%'] }, 'buffer-length', 'ft')).toBeCloseTo(
      feet,
      9,
    );
  });

  test.each([
    [{ 'posted-speed': [80, 'mph'], ...us }],
    [{ 'posted-speed': [130, 'km/h'], ...metric }],
    [{ 'posted-speed': [45, 'mph'], grade: [12, '%'], ...us }],
    [{ 'posted-speed': [60, 'km/h'], grade: [12, '%'], ...metric }],
  ] as const)('no figure past the end: %o', (facts) => {
    expect(() => found(facts, 'buffer-length', 'ft')).toThrow('nothing leads to buffer-length');
  });
});

describe('sign spacing', () => {
  test.each(published.signSpacing)('%s: %i, %i, %i ft', (road, a, b, c) => {
    const facts = { 'road-type': road };
    expect(['a', 'b', 'c'].map((sign) => found(facts, `sign-spacing-${sign}`, 'ft'))).toEqual([a, b, c]);
  });
});

describe('taper lengths', () => {
  test.each(published.tapers)('%i mph, 12 ft: %i, %i, %i ft', (mph, merging, shifting, shoulder) => {
    const facts = { ...us, 'posted-speed': [mph, 'mph'], offset: [12, 'ft'] } as const;
    expect(found(facts, 'merging-taper', 'ft')).toBeCloseTo(merging, 9);
    expect(Math.round(found(facts, 'shifting-taper', 'ft') + 1e-9)).toBe(shifting);
    expect(Math.round(found(facts, 'shoulder-taper', 'ft') + 1e-9)).toBe(shoulder);
  });
});

describe('device spacing', () => {
  test.each(published.deviceSpacing)('%i mph: %i ft on a merging taper, %i ft on a tangent', (mph, taper, tangent) => {
    const facts = { 'posted-speed': [mph, 'mph'], 'taper-kind': 'merging' } as const;
    expect(found(facts, 'device-spacing-taper', 'ft')).toBeCloseTo(taper, 9);
    expect(found(facts, 'device-spacing-tangent', 'ft')).toBeCloseTo(tangent, 9);
  });

  test.each(['flagger', 'downstream'])(
    'about 20 ft on a %s taper at any speed (MUTCD 11th ed., section 6B.08)',
    (kind) => {
      for (const mph of [25, 45, 65]) {
        expect(found({ 'posted-speed': [mph, 'mph'], 'taper-kind': kind }, 'device-spacing-taper', 'ft')).toBeCloseTo(
          20,
          9,
        );
      }
    },
  );
});
