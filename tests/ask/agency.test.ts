import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';

const figure = (number: number, unit: string) => ({ number, unit });
const alder = {
  name: 'Alder County',
  source: 'Maintenance directive 7',
  defaults: { 'unit-weight': figure(112, 'lb/yd2/in') },
  limits: { 'air-temperature': { min: figure(45, 'degF') } },
};

describe("an agency's figures in a talk", () => {
  test("the asker's own goes before the agency's default: 400 × 2 × 115 ÷ 2000 = 46, then 112 is 44.8 again", () => {
    const own = ask({ question: 'how many tons for 300 x 12 ft at 2 in, 115 lb per sq yd per inch', agency: alder });
    expect(own.values[0]?.number).toBeCloseTo(46, 9);
    const general = ask({ question: 'how many tons for 300 x 12 ft at 2 in', agency: alder });
    expect(general.values[0]?.number).toBeCloseTo(44.8, 9);
  });

  test('a limit with cases is theirs in every case: 47 °F is warm enough, 43 is not', () => {
    expect(ask({ question: 'it is 47 F, can we patch', agency: alder }).verdict).toMatchObject({
      rule: 'air-temperature',
      status: 'ok',
    });
    expect(ask({ question: 'it is 43 F, can we patch', agency: alder }).verdict?.status).not.toBe('ok');
    // The general 50 °F holds for the next who asks.
    expect(ask({ question: 'it is 47 F, can we patch' }).verdict).toMatchObject({
      rule: 'air-temperature',
      status: 'caution',
    });
  });

  test('metres in a table are the same distance as feet', () => {
    const tables = { 'sign-spacing': [{ 'road-type': 'rural', a: 182.88, b: 213.36, c: 243.84, unit: 'm' }] };
    const { values } = ask({ question: 'sign spacing on a rural road, in feet', agency: { ...alder, tables } });
    const [a, b, c] = ['a', 'b', 'c'].map(
      (sign) => values.find(({ quantity }) => quantity === `sign-spacing-${sign}`)?.number,
    );
    expect(a).toBeCloseTo(600, 6);
    expect(b).toBeCloseTo(700, 6);
    expect(c).toBeCloseTo(800, 6);
  });

  test('the job outlives a broken file, and the figures go on from there: 400 × 2 × 112 ÷ 2000 = 44.8', () => {
    const { job } = ask({ question: 'tons for 300 x 12 ft', agency: alder });
    const refused = ask({ question: '2 in', job, agency: { ...alder, name: 7 } });
    expect(refused).toMatchObject({ kind: 'unknown', values: [], job });
    expect(ask({ question: '2 in', job: refused.job, agency: alder }).values[0]?.number).toBeCloseTo(44.8, 9);
  });

  test.each(['constructor', '__proto__', 'toString'])('a limit named %s is refused, and reaches nothing', (name) => {
    const agency = JSON.parse(`{"name":"Alder","source":"x","limits":{"${name}":{"max":{"number":1,"unit":"in"}}}}`);
    expect(ask({ question: 'how many lifts for 3 inches', agency })).toMatchObject({
      kind: 'unknown',
      reason: 'no-rule',
    });
    expect(ask({ question: 'how many lifts for 3 inches' }).values[0]?.number).toBe(3);
  });
});
