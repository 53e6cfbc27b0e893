import { describe, expect, test } from 'vitest';
import { ask } from '../../src/ask/ask.ts';
import { engine } from '../../src/ask/engine.ts';
import { factsOf } from '../../src/calc/expression.ts';
import { isolate } from '../../src/calc/isolate.ts';
import { toBase } from '../../src/calc/quantity.ts';
import { knowledge } from '../../src/rules/knowledge.ts';
import type { RelationRecord } from '../../src/rules/shapes.ts';
import { notAskedYet } from './not-asked-yet.ts';
import { factsIn } from './over-determined.ts';
import { sayFacts } from './said-facts.ts';

/** What a relation can be asked for: what it finds, and every member that it can be solved for. */
function unknownsOf({ by, finds, bothWays, keeps = [] }: RelationRecord): string[] {
  const turned = factsOf(by).filter(
    (id) =>
      knowledge.quantities.has(id) &&
      !keeps.some((kept) => kept.id === id) &&
      isolate(by, id, { op: 'fact', ...finds }) !== undefined,
  );
  return [finds.id, ...(bothWays === false ? [] : turned)];
}

const askings = [...knowledge.relations.values()].flatMap((record) =>
  unknownsOf(record).map((unknown) => [`${record.id}: ${unknown}`, factsIn(record), unknown] as const),
);

test('no two quantities are read alike by their titles', () => {
  const read = [...engine.titles().values()].flat().map(({ words }) => words.join(' '));
  expect(read.filter((title, at) => read.indexOf(title) !== at)).toEqual([]);
});

describe('with all the others stated, each quantity of a relation can be asked in words', () => {
  test.each(askings)('%s', (name, facts, unknown) => {
    const { [unknown]: wanted, ...rest } = facts;
    const question = `${sayFacts(rest)}. What is the ${knowledge.quantities.get(unknown)!.title}?`;
    const { values, text } = ask({ question });
    const found = values.find(({ quantity }) => quantity === unknown);
    const [number, unit] = wanted as readonly [number, Parameters<typeof toBase>[1]];
    const [want, got] = [toBase(number, unit), found && toBase(found.number, found.unit)];
    const isRight = got !== undefined && Math.abs(got - want) <= 1e-3 * Math.abs(want);
    if (notAskedYet.has(name)) expect(isRight, 'it can be asked now: take it off the list').toBe(false);
    else expect(isRight, `${question}\n${text}`).toBe(true);
  });
});
