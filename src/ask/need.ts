import type { Solution, Solved } from '../calc/solve.ts';
import { whatFollows } from '../rules/start.ts';
import type { Engine } from './engine.ts';
import { type Fact, knownFrom } from './facts.ts';

/** What the other facts make of a quantity the asker gave a figure for; undefined when nothing leads there. */
export function needOf(
  { knowledge }: Engine,
  facts: readonly Fact[],
  id: string,
): { need: Solved; solved: Solution; others: Fact[] } | undefined {
  const others = facts.filter((fact) => fact.quantity !== id);
  const solved = whatFollows(knowledge, knownFrom(others));
  const need = solved.get(id);
  return need?.by ? { need, solved, others } : undefined;
}
