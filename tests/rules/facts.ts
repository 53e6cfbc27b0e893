import { toBase } from '../../src/calc/quantity.ts';
import { type Known, solve } from '../../src/calc/solve.ts';
import type { Unit } from '../../src/calc/units.ts';
import { type Knowledge, knowledge, knowledgeOf, optionFact } from '../../src/rules/knowledge.ts';
import type { Facts, RelationRecord } from '../../src/rules/shapes.ts';
import { startOf } from '../../src/rules/start.ts';

/** Facts of an example as the solver takes them. */
export function knownOf(facts: Facts): Known[] {
  return Object.entries(facts).map(([id, fact]) =>
    typeof fact === 'string' ? { id: optionFact(id, fact), value: 1 } : { id, value: toBase(...fact) },
  );
}

/** Everything that follows from facts, by all the records and their defaults. */
export function solved(facts: Facts, from: Knowledge = knowledge) {
  return solve(from.network, startOf(from, knownOf(facts)));
}

/** What a quantity comes out at from facts, in a unit. Throws when nothing leads there. */
export function found(facts: Facts, quantity: string, unit: Unit): number {
  const fact = solved(facts).get(quantity);
  if (!fact) throw new Error(`nothing leads to ${quantity} from ${JSON.stringify(facts)}`);
  const [zero, one] = [toBase(0, unit), toBase(1, unit)];
  return (fact.value - zero) / (one - zero);
}

/** A knowledge base of one relation only, without defaults. */
export function alone(relation: RelationRecord): Knowledge {
  return knowledgeOf({
    quantities: [],
    choices: [],
    relations: [relation],
    limits: [],
    practices: [],
    tables: [],
  } as unknown as Parameters<typeof knowledgeOf>[0]);
}
