import { describe, expect, test } from 'vitest';
import { judgeLimit, judgePractice } from '../../src/rules/judge.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Facts } from '../../src/rules/shapes.ts';
import { found, solved } from '../rules/facts.ts';
import { type TrafficCheck, trafficChecks } from './traffic-checks.ts';
import { flaggers, zoneChecks } from './traffic-zones.ts';

const named = (checks: readonly TrafficCheck[]) =>
  checks.map((check) => [`${check.what} (${check.source})`, check] as const);
const run = (_: string, { facts, finds: [quantity, number, unit], as }: TrafficCheck): void => {
  const value = found(facts, quantity, unit);
  if (as === 'rounded up') expect(Math.ceil(value - 1e-9)).toBe(number);
  else expect(value).toBeCloseTo(number, as ?? 9);
};

describe('published', () => {
  test.each(named(trafficChecks.filter(({ ours }) => !ours)))('%s', run);
});

describe('regression: worked out here from published parts', () => {
  test.each(named([...trafficChecks.filter(({ ours }) => ours), ...zoneChecks]))('%s', run);

  test('one more buffer at the far end: 4,320 ft, and 1,320 ft from flagger to flagger', () => {
    const facts = flaggers('rural', 45, 400);
    const buffer = found(facts, 'buffer-length', 'ft');
    expect(found(facts, 'zone-length', 'ft') + buffer).toBeCloseTo(4320, 9);
    expect(found(facts, 'one-lane-length', 'ft') + buffer).toBeCloseTo(1320, 9);
  });

  test('tapers of 50 to 100 ft give the zone a range', () => {
    const { 'flagger-taper': _flagger, 'downstream-taper': _downstream, ...rest } = flaggers('rural', 45, 400);
    const zone = solved(rest).get('zone-length')!;
    expect([zone.value, zone.low, zone.high].map((inches) => inches / 12)).toEqual([3960, 3860, 3960]);
  });
});

describe('limits with a published figure', () => {
  const status = (rule: string, facts: Facts) => judgeLimit(knowledge.limits.get(rule)!, solved(facts)).status;

  const figures: readonly (readonly [rule: string, facts: Facts, is: string, source: string])[] = [
    ['open-lane', { 'open-lane-width': [10, 'ft'] }, 'ok', 'MUTCD 11th ed., section 6N.07: 10 ft'],
    ['open-lane', { 'open-lane-width': [9.9, 'ft'] }, 'caution', 'MUTCD 11th ed., section 6N.07: 10 ft'],
    ['open-lane-least', { 'open-lane-width': [9, 'ft'] }, 'ok', 'MUTCD 11th ed., section 6N.07: 9 ft as an option'],
    ['open-lane-least', { 'open-lane-width': [8.9, 'ft'] }, 'stop', 'MUTCD 11th ed., section 6N.07: 9 ft as an option'],
    ['speed-drop', { 'speed-drop': [10, 'mph'] }, 'ok', 'MUTCD 11th ed., section 6B.01: 10 mph'],
    ['speed-drop', { 'speed-drop': [30, 'mph'] }, 'caution', 'MUTCD 11th ed., section 6B.01: 10 mph'],
    [
      'cone-height',
      { 'cone-height': [18, 'in'], 'cone-use': 'day-and-slow' },
      'ok',
      'MUTCD 11th ed., section 6K.03: 18 in',
    ],
    [
      'cone-height',
      { 'cone-height': [18, 'in'], 'cone-use': 'night-or-fast' },
      'caution',
      'MUTCD 11th ed., section 6K.03: 28 in',
    ],
    [
      'cone-height',
      { 'cone-height': [28, 'in'], 'cone-use': 'night-or-fast' },
      'ok',
      'MUTCD 11th ed., section 6K.03: 28 in',
    ],
    [
      'sign-height',
      { 'sign-height': [5, 'ft'], 'sign-place': 'rural-post' },
      'ok',
      'MUTCD 11th ed., section 6F.02: 5 ft',
    ],
    [
      'sign-height',
      { 'sign-height': [6.9, 'ft'], 'sign-place': 'parking-or-walkers' },
      'caution',
      'MUTCD 11th ed., section 6F.02: 7 ft',
    ],
    [
      'sign-height',
      { 'sign-height': [1, 'ft'], 'sign-place': 'portable' },
      'ok',
      'MUTCD 11th ed., section 6F.02: 1 ft',
    ],
    ['full-closure', { 'closure-time': [20, 'min'] }, 'ok', 'California MUTCD 2026, TA-13: 20 minutes'],
    ['full-closure', { 'closure-time': [21, 'min'] }, 'caution', 'California MUTCD 2026, TA-13: 20 minutes'],
    ['hold-time', { 'stop-time': [15, 'min'] }, 'ok', 'Iowa DOT flagger training: 15 minutes'],
    ['pilot-car', { 'one-lane-length': [1320, 'ft'] }, 'ok', 'Iowa DOT Design Manual 9C-3: a quarter mile'],
    ['pilot-car', { 'one-lane-length': [1500, 'ft'] }, 'caution', 'Iowa DOT Design Manual 9C-3: a quarter mile'],
    ['pilot-car', flaggers('rural', 45, 400), 'ok', 'Iowa DOT Design Manual 9C-3, a zone of 960 ft'],
  ];
  test.each(figures)('%s of %o is %s (%s)', (rule, facts, expected) => {
    expect(status(rule, facts)).toBe(expected);
  });

  test.each([
    ['merging', 300, 'stop'],
    ['merging', 660, 'ok'],
    ['shifting', 329, 'caution'],
    ['shoulder', 219, 'caution'],
    ['flagger', 49, 'caution'],
    ['flagger', 50, 'ok'],
    ['flagger', 100, 'ok'],
    ['flagger', 101, 'caution'],
    ['downstream', 100, 'ok'],
  ] as const)(
    'a %s taper of %i ft at 55 mph, 12 ft, is %s (MUTCD 11th ed., Tables 6B-3 and 6B-4)',
    (kind, feet, expected) => {
      const facts = {
        'speed-unit': 'us',
        'taper-kind': kind,
        'taper-length': [feet, 'ft'],
        'posted-speed': [55, 'mph'],
        offset: [12, 'ft'],
      } as const;
      expect(status('taper-length', facts)).toBe(expected);
    },
  );

  test('a taper of a kind nobody named cannot be told, and the kind is what would settle it', () => {
    const judged = judgeLimit(
      knowledge.limits.get('taper-length')!,
      solved({ 'taper-length': [300, 'ft'], 'posted-speed': [55, 'mph'] }),
    );
    expect(judged).toMatchObject({ status: 'cannot-tell', needs: ['taper-kind'] });
  });
});

describe('what the manual makes a standard, and what can kill, is a stop', () => {
  test.each([
    ['traffic-control-first', 'traffic-control-state', 'none'],
    ['traffic-control-last', 'control-removal', 'signs-first'],
    ['advance-sign', 'advance-signs', 'missing'],
    ['buffer-empty', 'buffer-use', 'occupied'],
    ['machine-inside-lane', 'lane-edge', 'over-with-traffic'],
    ['night-lighting', 'night-station', 'unlit'],
    ['apparel', 'apparel', 'none'],
    ['queue-end', 'queue-place', 'on-tracks'],
  ])('%s: %s=%s', (rule, choice, option) => {
    const judged = judgePractice(knowledge.practices.get(rule)!, solved({ [choice]: option }));
    expect(judged.status).toBe('stop');
  });

  test.each([
    ['flagger-count', 'flaggers-posted', 'one'],
    ['apparel', 'apparel', 'class-2-night-flagger'],
    ['backing-spotter', 'backing', 'no-spotter'],
    ['signs-true', 'signs-idle', 'left-up'],
  ])('guidance is a caution: %s: %s=%s', (rule, choice, option) => {
    expect(judgePractice(knowledge.practices.get(rule)!, solved({ [choice]: option })).status).toBe('caution');
  });

  test('an ok on a length says at least, and never that a layout is safe or approved', () => {
    for (const id of ['taper-length', 'buffer-length', 'sign-spacing', 'open-lane', 'flagger-sight']) {
      expect(knowledge.limits.get(id)!.text.ok).toContain('at least the recommended');
    }
    const said = [...knowledge.limits.values(), ...knowledge.practices.values()].map((rule) =>
      rule.kind === 'limit'
        ? rule.text.ok
        : Object.values(rule.judged)
            .map(({ text }) => text)
            .join(' '),
    );
    for (const text of said) expect(text).not.toMatch(/\b(approved|is safe|are safe)\b/);
  });
});
