import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply } from '../../src/ask/reply.ts';

const fileOf = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../docs/examples/${name}.json`, import.meta.url), 'utf8'));
const alder = fileOf('alder-county');
const california = fileOf('california-signs');

const name = 'Alder County Road Department';
const source = 'Maintenance directive 7';
const by = (question: string, agency: unknown = alder): Reply => ask({ question, agency });

/** Every line of a reply in which a source may stand: checks, assumed figures, workings. */
const sourcesIn = ({ checks, assumed, working }: Reply): string[] => [
  ...checks.map((check) => check.source),
  ...assumed.map(({ text }) => text),
  ...working.map((step) => step.source),
];

describe('an example agency', () => {
  test('its unit weight is the one reckoned with: 400 sq yd x 2 in x 112 lb = 89,600 lb = 44.8 tons', () => {
    const reply = by('how many tons for 300 x 12 ft at 2 in');
    expect(reply.values[0]).toMatchObject({ quantity: 'premix-mass', unit: 'ton' });
    expect(reply.values[0]?.number).toBeCloseTo((((300 * 12) / 9) * 2 * 112) / 2000, 9);
    expect(reply.values.find(({ quantity }) => quantity === 'truck-count')?.number).toBe(Math.ceil(44.8 / 12));
    const weight = reply.assumed.find(({ quantity }) => quantity === 'unit-weight');
    expect(weight).toMatchObject({ number: 112, unit: 'lb/yd2/in' });
    for (const words of [name, source, '112', '110']) expect(weight?.text).toContain(words);
    expect(reply.text).toContain(name);
  });

  test('its thickest lift drives the lifts: 3 in in lifts of 1 1/2 in is 2, where in general it is 3', () => {
    const reply = by('how many lifts for 3 in deep');
    expect(reply.values[0]).toMatchObject({ quantity: 'lift-count', number: 2 });
    expect(ask({ question: 'how many lifts for 3 in deep' }).values[0]).toMatchObject({ number: 3 });
    expect(reply.text).toContain(`1 1/2 in (${name}'s figure; the general one is 1 in`);
    const [own, general] = [
      reply.checks.find(({ rule, source: from }) => rule === 'lift-max' && from.includes(source)),
      reply.checks.find(({ rule, source: from }) => rule === 'lift-max' && !from.includes(source)),
    ];
    expect(own).toMatchObject({ status: 'ok' });
    // An inch and a half is where the general rule turns from a caution into a stop.
    expect(general).toMatchObject({ status: 'stop' });
    expect(general?.text).toContain('1 in a lift may be');
    expect(general?.text).toContain('2 lifts');
  });

  test('its plain bound judges, and the general one stands beside', () => {
    const reply = by('is 47 degrees warm enough to patch');
    expect(reply.verdict).toMatchObject({ rule: 'air-temperature', status: 'ok' });
    for (const words of ['45 °F', name, '50 °F']) expect(reply.verdict?.text).toContain(words);
    const checks = reply.checks.filter(({ rule }) => rule === 'air-temperature');
    expect(checks.map(({ status }) => status)).toEqual(['caution', 'ok']);
    expect(checks[1]?.source).toContain(source);
    expect(checks[0]?.source).not.toContain(source);
  });

  test('its row of a table answers, and a row it did not change keeps its own source', () => {
    const rural = by('how far out do the signs go on a county road');
    expect(rural.values.slice(0, 3).map(({ number, unit }) => `${number} ${unit}`)).toEqual(Array(3).fill('600 ft'));
    expect(rural.text).toContain(`600 ft (${name}'s figure; the general one is 500 ft; ${source}`);
    expect(rural.working[0]?.source).toContain(source);

    const street = by('sign spacing on an urban high speed street');
    expect(street.values[0]).toMatchObject({ number: 350, unit: 'ft' });
    expect(sourcesIn(street).filter((text) => text.includes(source))).toEqual([]);
    expect(street.text).not.toContain(name);
  });

  test('a checklist whose lifts it sets names it', () => {
    const reply = by('checklist for 3 in deep');
    expect(reply.text).toContain('2 lifts');
    expect(reply.text).toContain(name);
  });

  test("an asker's own rule comes before the agency's, and both others are shown", () => {
    const { verdict, checks } = by('our county lets us lay 2 in lifts. can I lay 2 in in one lift?');
    expect(verdict).toMatchObject({ status: 'ok' });
    expect(verdict?.text).toContain('your own rule');
    const others = checks.filter(({ rule, status }) => rule === 'lift-max' && status === 'stop');
    expect(others).toHaveLength(2);
    expect(others.find(({ source: from }) => from.includes(source))?.text).toContain('the 1 1/2 in a lift may be');
    expect(others.find(({ source: from }) => !from.includes(source))?.text).toContain('the 1 in a lift may be');
  });

  test('nothing of it stays for the next request, and the rules have another version', () => {
    const question = 'how many tons for 300 x 12 ft at 2 in';
    const before = ask({ question });
    expect(by(question).rules.version).not.toBe(before.rules.version);
    expect(ask({ question })).toEqual(before);
    expect(by(question)).toEqual(by(question));
  });
});

describe('an agency of a State', () => {
  // California MUTCD 2026, Table 6B-1: urban rows by speed (all three distances alike), the others as in the federal table.
  test.each([
    [25, 100],
    [30, 150],
    [40, 250],
    [45, 300],
    [50, 350],
    [55, 350],
  ])('in town at %d mph its signs stand %d ft apart', (speed, distance) => {
    const reply = by(`how far out do the signs go in town at ${speed} mph`, california);
    expect(reply.values.slice(0, 3).map(({ number, unit }) => `${number} ${unit}`)).toEqual(
      Array(3).fill(`${distance} ft`),
    );
    expect(reply.text).toContain('Caltrans');
    expect(reply.working[0]?.source).toContain('California MUTCD');
  });

  test.each([
    ['on a county road', [500, 500, 500]],
    ['on the freeway', [1000, 1500, 2640]],
  ])('%s they are the federal ones', (road, distances) => {
    const reply = by(`sign spacing ${road}`, california);
    expect(reply.values.slice(0, 3).map(({ number }) => number)).toEqual(distances);
  });

  test('its row by speed asks for the speed, and is not guessed without it', () => {
    expect(by('sign spacing on a residential street', california)).toMatchObject({
      kind: 'clarify',
      clarify: { quantity: 'posted-speed' },
    });
  });

  test('a sign is judged by its row, with the federal one beside', () => {
    const { verdict, checks } = by('is 275 ft far enough for the sign in town at 40 mph', california);
    expect(verdict).toMatchObject({ rule: 'sign-spacing', status: 'ok' });
    expect(verdict?.text).toContain('350 ft');
    const general = checks.find(({ rule, status }) => rule === 'sign-spacing' && status === 'caution');
    expect(general?.source).toContain('Uniform Traffic Control Devices');
  });
});
