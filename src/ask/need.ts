import { type Solved, solve } from '../calc/solve.ts';
import { startOf } from '../rules/knowledge.ts';
import type { Engine } from './engine.ts';
import { type Fact, knownFrom } from './facts.ts';

/** What the other facts make of a quantity the asker gave a figure for; undefined when nothing leads there. */
export function needOf(
  { knowledge }: Engine,
  facts: readonly Fact[],
  id: string,
): { need: Solved; solved: Map<string, Solved>; others: Fact[] } | undefined {
  const others = facts.filter((fact) => fact.quantity !== id);
  const solved = solve(knowledge.network, startOf(knowledge, knownFrom(others)));
  const need = solved.get(id);
  return need?.by ? { need, solved, others } : undefined;
}
