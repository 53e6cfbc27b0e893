import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

/** NIST SP 811 (2008), appendix B: 1 in = 25.4 mm, 1 mi = 1.609344 km, 1 gal = 3.785411784 L, 1 lb = 0.45359237 kg. */
describe('a bare conversion', () => {
  test.each([
    ['1.5 in to mm', 38.1, 'mm'],
    ['convert 1 1/2 inches to millimetres', 38.1, 'mm'],
    ['50 mm in inches', 50 / 25.4, 'in'],
    ['12 ft to m', 3.6576, 'm'],
    ['3 miles in feet', 15840, 'ft'],
    ['55 mph to km/h', 55 * 1.609344, 'km/h'],
    ['2.5 mph to ft/min', 220, 'ft/min'],
    ['100 sq yd to m2', 83.612736, 'm2'],
    ['900 sq ft to square yards', 100, 'yd2'],
    ['600 gal to liters', 600 * 3.785411784, 'L'],
    ['20 tons to tonnes', 20 * 0.90718474, 't'],
    ['4000 lb to tons', 2, 'ton'],
    ['50 F to C', 10, 'degC'],
    ['0.05 gal/yd2 to L/m2', (0.05 * 3.785411784) / 0.83612736, 'L/m2'],
    ['145 lb/ft3 to kg/m3', (145 * 0.45359237) / 0.028316846592, 'kg/m3'],
    ['how many feet in 50 yards', 150, 'ft'],
    ['what is 6 ft in inches', 72, 'in'],
  ] as const)('%s', (question, number, unit) => {
    const reply = ask({ question });
    expect({ kind: reply.kind, topic: reply.topic }).toEqual({ kind: 'value', topic: 'conversion' });
    expect(reply.values).toHaveLength(1);
    expect(reply.values[0]).toMatchObject({ quantity: 'conversion', unit });
    expect(reply.values[0]!.number).toBeCloseTo(number, 6);
  });

  test.each([
    'how many tons for 300 x 12 ft at 2 in',
    '2 in lift in metric',
    'how many feet of taper at 45 mph',
    '1.5 in to tons',
    '12 ft wide in m by 300 long',
  ])('is not: %s', (question) => expect(ask({ question }).topic).not.toBe('conversion'));

  test('adds nothing to the job', () => {
    const job = ask({ question: 'tons for 300 x 12 ft' }).job;
    const after = ask({ question: '1.5 in to mm', job }).job;
    expect(after.facts).toEqual(job.facts);
    expect(after.goal).toBe(job.goal);
  });
});
