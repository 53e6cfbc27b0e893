import { expect, test } from 'vitest';
import { compare, toBase } from '../../src/calc/quantity.ts';
import { unitRow } from '../../src/calc/units.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { Figure, QuantityRecord } from '../../src/rules/shapes.ts';

const quantities = [...knowledge.quantities].map(([id, record]) => [id, record] as const);
const base = ({ number, unit }: Figure): number => toBase(number, unit);

const within = ({ plausible }: QuantityRecord, figure: Figure): boolean =>
  !plausible || (compare(base(figure), base(plausible.min)) >= 0 && compare(base(figure), base(plausible.max)) <= 0);

test.each(quantities)('%s is shown in units of its dimension that replies use', (_, { dimension, units, bare }) => {
  for (const unit of [units.us, units.metric, ...(bare ? [bare.us, bare.metric] : [])]) {
    expect(unitRow(unit)).toMatchObject({ dimension, shown: true });
  }
});

test.each(quantities.filter(([, record]) => record.plausible))('%s can be what it says it can be', (_, record) => {
  const { plausible, default: figure, question } = record;
  expect(base(plausible!.min)).toBeLessThan(base(plausible!.max));
  if (figure) {
    const { number, low = number, high = number, unit } = figure;
    for (const each of [number, low, high])
      expect(within(record, { number: each, unit }), `default ${each} ${unit}`).toBe(true);
  }
  for (const choice of question?.choices ?? [])
    expect(within(record, choice), `${choice.number} ${choice.unit}`).toBe(true);
});

test.each(quantities.filter(([, record]) => record.default?.low !== undefined))(
  'the default of %s lies in its own band',
  (_, record) => {
    const { number, low = number, high = number } = record.default!;
    expect(low).toBeLessThanOrEqual(number);
    expect(number).toBeLessThanOrEqual(high);
  },
);

test('what can be asked is a question', () => {
  const asked = quantities.filter(([, { question }]) => question && !/[?.]$/.test(question.text.trim()));
  expect(asked.map(([id]) => id)).toEqual([]);
});
