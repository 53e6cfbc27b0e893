import type { Solution, Solved } from './fact.ts';

/** The steps that led to a quantity, each after those it rests on. */
export function derivation(solved: Solution, goal: string, into: Solved[] = []): Solved[] {
  const fact = solved.get(goal);
  if (!fact || into.includes(fact)) return into;
  if (fact.by) {
    for (const need of fact.by.needs) derivation(solved, need, into);
    into.push(fact);
  }
  return into;
}

/** Quantities that these rest on, themselves included: given figures, defaults, and what was worked out on the way. */
export function restsOn(solved: Solution, goals: readonly string[]): Set<string> {
  const found = new Set<string>();
  const walk = (id: string): void => {
    const fact = solved.get(id);
    if (!fact || found.has(id)) return;
    found.add(id);
    for (const need of fact.by?.needs ?? []) walk(need);
  };
  for (const goal of goals) walk(goal);
  return found;
}
