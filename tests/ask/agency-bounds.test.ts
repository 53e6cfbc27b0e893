import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import type { Check, Reply } from '../../src/ask/reply.ts';
import { readAgency } from '../../src/rules/agency.ts';
import { knowledge, knowledgeOf } from '../../src/rules/knowledge.ts';
import { overlay } from '../../src/rules/overlay.ts';
import { type Figure, isQuantity, type LimitRecord } from '../../src/rules/shapes.ts';

const figure = (number: number, unit: string) => ({ number, unit });
const birch = (parts: object) => ({ name: 'Birch County', source: 'Order 3', ...parts });
const longBuffer = birch({ limits: { 'buffer-length': { min: figure(500, 'ft') } } });
const feet = ({ values }: Reply, quantity: string) => values.find((value) => value.quantity === quantity)?.number;
const checksOf = ({ checks }: Reply, rule: string): readonly Check[] => checks.filter((check) => check.rule === rule);

// Stopping sight distances of Table 6B-2 of the manual: 360 ft at 45 mph, 820 ft at 75 mph.
describe('a flat figure over a bound that rules work out', () => {
  test('tightens it, in what is planned and in what is judged', () => {
    expect(feet(ask({ question: 'how long a buffer at 45 mph', agency: longBuffer }), 'buffer-length')).toBe(500);
    const { verdict } = ask({ question: 'is a 400 ft buffer enough at 45 mph', agency: longBuffer });
    expect(verdict).toMatchObject({ status: 'caution' });
    expect(verdict?.text).toContain("Birch County's figure; the general one is 360 ft");
  });

  test('does not loosen it', () => {
    expect(feet(ask({ question: 'how long a buffer at 75 mph', agency: longBuffer }), 'buffer-length')).toBe(820);
    const reply = ask({ question: 'is a 600 ft buffer enough at 75 mph', agency: longBuffer });
    expect(reply.verdict).toMatchObject({ status: 'caution' });
    expect(reply.verdict?.text).toContain('820 ft');
    expect(checksOf(reply, 'buffer-length').map(({ status }) => status)).toEqual(['caution', 'ok']);
    expect(reply.text).toContain('Birch County');
  });

  test('does not stand in for the speed', () => {
    expect(ask({ question: 'how long a buffer', agency: longBuffer })).toMatchObject({
      kind: 'clarify',
      clarify: { quantity: 'posted-speed' },
    });
  });
});

describe('a bound at one end', () => {
  const agency = birch({ limits: { 'tack-rate': { max: figure(0.1, 'gal/yd2') } } });

  test('is the agency’s there', () => {
    const { verdict } = ask({ question: 'is 0.09 gal/sy residual ok on worn pavement', agency });
    expect(verdict).toMatchObject({ rule: 'tack-rate', status: 'ok' });
    expect(verdict?.text).toContain('Birch County');
  });

  test('leaves the general one at the other end, under its own name', () => {
    const reply = ask({ question: 'is 0.01 gal/sy residual enough on worn pavement', agency });
    expect(reply.verdict).toMatchObject({ rule: 'tack-rate', status: 'caution' });
    expect(reply.text).not.toContain('Birch County');
    expect(checksOf(reply, 'tack-rate')[0]?.source).not.toContain('Order 3');
  });
});

test('a bound of one rule is not that of another which shares its figure', () => {
  const agency = birch({ limits: { 'stone-fits-lift': { max: figure(0.5, 'in') } } });
  expect(ask({ question: 'how many lifts for 3 in deep', agency }).values[0]).toMatchObject({ number: 3 });
});

test('an agency’s default stands whatever the choice the general one turns on, which is shown for that choice', () => {
  const agency = birch({ defaults: { 'tack-residual': figure(0.04, 'gal/yd2') } });
  const assumed = (question: string) =>
    ask({ question, agency }).assumed.find(({ quantity }) => quantity === 'tack-residual');
  expect(assumed('how much tack for 200 sq yd on a milled surface')).toMatchObject({ number: 0.04 });
  expect(assumed('how much tack for 200 sq yd on a milled surface')?.text).toContain('0.06');
  expect(assumed('how much tack for 200 sq yd')?.text).toContain('0.05');
});

/** A figure that the quantity of a limit can be. */
function middle({ on, ...rule }: LimitRecord): Figure {
  const bound = [rule, ...(rule.cases ?? [])].flatMap(({ max, min }) => [max, min]).find((each) => each !== undefined);
  if (on.plausible) return on.plausible.max;
  return bound && !isQuantity(bound) ? bound : ({ number: 1, unit: on.units.us } as Figure);
}

test.each([...knowledge.limits.keys()])('limit %s can be an agency’s', (id) => {
  const rule = knowledge.limits.get(id)!;
  const ends = (['min', 'max'] as const).filter((end) => [rule, ...(rule.cases ?? [])].some((each) => each[end]));
  for (const end of ends) {
    const agency = readAgency(birch({ limits: { [id]: { [end]: middle(rule) } } }), knowledge);
    const own = knowledgeOf(overlay(knowledge.records, agency));
    expect(own.limits.get(id)?.sources[0]).toMatchObject({ document: 'Order 3', issuer: 'Birch County' });
    expect(own.version).not.toBe(knowledge.version);
  }
});
