import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Reply } from '../../src/ask/reply.ts';

const figure = (number: number, unit: string) => ({ number, unit });
const alder = {
  name: 'Alder County',
  source: 'Maintenance directive 7',
  date: '2026-03-01',
  defaults: { 'unit-weight': figure(112, 'lb/yd2/in'), 'truck-payload': figure(12, 'ton') },
  limits: { 'lift-max': { max: figure(1.5, 'in') }, 'air-temperature': { min: figure(45, 'degF') } },
  tables: { 'sign-spacing': [{ 'road-type': 'rural', a: 600, b: 700, c: 800, unit: 'ft' }] },
};
const asked = (question: string, agency: unknown = alder): Reply => ask({ question, agency });
const number = (reply: Reply, quantity: string): number | undefined => reply.values.find((each) => each.quantity === quantity)?.number;

describe("an agency's figures stand in place of the general ones", () => {
  test('a default: 400 sq yd × 2 in × 112 ÷ 2000 = 44.8 tons', () => {
    const reply = asked('how many tons for 300 x 12 ft at 2 in');
    expect(number(reply, 'premix-mass')).toBeCloseTo(44.8, 9);
    expect(reply.text).toContain('Alder County');
    // The general figure stands beside.
    expect(reply.text).toContain('110');
    expect(reply.assumed).toContainEqual(expect.objectContaining({ quantity: 'unit-weight', number: 112, unit: 'lb/yd2/in' }));
  });

  test("the asker's own figure goes before it: 400 × 2 × 115 ÷ 2000 = 46", () => {
    expect(number(asked('how many tons for 300 x 12 ft at 2 in, 115 lb per sq yd per inch'), 'premix-mass')).toBeCloseTo(46, 9);
  });

  test('a limit that others are worked out from: 3 ÷ 1.5 = 2 lifts', () => {
    const reply = asked('how many lifts for 3 inches');
    expect(number(reply, 'lift-count')).toBe(2);
    expect(reply.text).toContain('Alder County');
  });

  test('a limit that is judged by, with the general rule beside it', () => {
    const reply = asked('can we lay 1 1/2 inches in one lift');
    expect(reply.verdict).toMatchObject({ rule: 'lift-max', status: 'ok' });
    expect(reply.verdict?.text).toContain('Alder County');
    const general = reply.checks.find(({ rule }) => rule === 'lift-max');
    expect(general).toMatchObject({ status: 'stop' });
    expect(general?.source).not.toContain('Alder County');
  });

  test('a limit with cases: 47 F is warm enough for the county, and 43 is not', () => {
    expect(asked('it is 47 F, can we patch').verdict).toMatchObject({ rule: 'air-temperature', status: 'ok' });
    expect(asked('it is 43 F, can we patch').verdict?.status).not.toBe('ok');
  });

  test('a row of a table, and only that row; the agency is named', () => {
    const rural = asked('sign spacing on a rural road');
    expect(['sign-spacing-a', 'sign-spacing-b', 'sign-spacing-c'].map((id) => number(rural, id))).toEqual([600, 700, 800]);
    expect(number(asked('sign spacing on an expressway'), 'sign-spacing-a')).toBe(1000);
    expect(rural.text).toContain('Alder County');
    expect(JSON.stringify(rural.working)).toContain('Maintenance directive 7');
  });

  test('metres in a table are the same distance', () => {
    const agency = { ...alder, tables: { 'sign-spacing': [{ 'road-type': 'rural', a: 182.88, b: 213.36, c: 243.84, unit: 'm' }] } };
    expect(number(asked('sign spacing on a rural road', agency), 'sign-spacing-a')).toBeCloseTo(600, 6);
  });

  test('the general figures are untouched for the next one who asks', () => {
    asked('how many lifts for 3 inches');
    expect(number(ask({ question: 'how many lifts for 3 inches' }), 'lift-count')).toBe(3);
    expect(ask({ question: 'how many lifts for 3 inches' }).text).not.toContain('Alder');
  });

  test('another rules version is named', () => expect(asked('how many lifts for 3 inches').rules).not.toEqual(ask({ question: 'how many lifts for 3 inches' }).rules));
});

describe('a broken file never answers with the general figure in silence', () => {
  const broken = (change: object): unknown => ({ ...alder, ...change });
  test.each([
    ['no object', 'rules', 'the file must be an object', ''],
    ['no name', broken({ name: undefined }), 'name', ''],
    ['an empty source', broken({ source: ' ' }), 'source', ''],
    ['a part there is not', broken({ limit: {} }), 'limit', 'limits'],
    ['a default there is not', broken({ defaults: { 'unit-wieght': figure(112, 'lb/yd2/in') } }), 'defaults.unit-wieght', 'unit-weight'],
    ['a limit there is not', broken({ limits: { 'lift-mx': { max: figure(1, 'in') } } }), 'limits.lift-mx', 'lift-max'],
    ['a table there is not', broken({ tables: { 'sign-spacings': [] } }), 'tables.sign-spacings', 'sign-spacing'],
    ['a row there is not', broken({ tables: { 'sign-spacing': [{ 'road-type': 'rurel', a: 1, b: 1, c: 1, unit: 'ft' }] } }), 'tables.sign-spacing[0].road-type', 'rural'],
    ['a column missing', broken({ tables: { 'sign-spacing': [{ 'road-type': 'rural', a: 500, b: 500, unit: 'ft' }] } }), 'tables.sign-spacing[0].c', ''],
    ['a table that is no list', broken({ tables: { 'sign-spacing': {} } }), 'tables.sign-spacing', ''],
    ['another dimension', broken({ defaults: { 'truck-payload': figure(12, 'ft') } }), 'defaults.truck-payload.unit', 'ton'],
    ['a unit there is not', broken({ defaults: { 'truck-payload': figure(12, 'tonz') } }), 'defaults.truck-payload.unit', 'ton'],
    ['a number in words', broken({ defaults: { 'truck-payload': { number: '12', unit: 'ton' } } }), 'defaults.truck-payload.number', ''],
    ['a figure that cannot be', broken({ defaults: { 'truck-payload': figure(4000, 'ton') } }), 'defaults.truck-payload.number', ''],
    ['the end that a limit has not', broken({ limits: { 'lift-max': { min: figure(1, 'in') } } }), 'limits.lift-max.min', 'max'],
    ['an end there is not', broken({ limits: { 'lift-max': { most: figure(1, 'in') } } }), 'limits.lift-max.most', ''],
    ['a name every object has', broken({ limits: { constructor: { max: figure(1, 'in') } } }), 'limits.constructor', ''],
  ])('%s', (_, agency, place, nearest) => {
    const reply = asked('how many lifts for 3 inches', agency);
    expect(reply).toMatchObject({ kind: 'unknown', reason: 'no-rule', values: [] });
    expect(reply.text).toContain(place);
    expect(reply.text).toContain(nearest);
  });

  test('a file that is too large is refused', () => {
    expect(asked('how many lifts for 3 inches', broken({ defaults: Object.fromEntries(Array.from({ length: 3000 }, (_, i) => [`unit-weight-${i}`, figure(1, 'in')])) })).kind).toBe('unknown');
  });

  test('the job is kept over it', () => {
    const job = asked('tons for 300 x 12 ft').job;
    expect(ask({ question: '2 in', job, agency: broken({ name: 7 }) }).job).toEqual(job);
  });
});
