import { restsOn } from '../calc/solve.ts';
import { whatFollows } from '../rules/start.ts';
import type { Cue } from './cue.ts';
import type { Engine } from './engine.ts';
import { knownFrom } from './facts.ts';
import type { Goal, Scored } from './goal.ts';
import type { Taken } from './taken.ts';

/** What is heard this much less clearly than the best is still looked at. */
const nearly = 9;

/**
 * The goal itself where the figures given lead to it, or where nothing else does; else the next best one heard that they
 * do lead to: "3 trucks of 14 tons, 50 min round trip, how many tons an hour" is no call for the trucks needed.
 */
export function workable(
  { knowledge }: Engine,
  best: Scored | undefined,
  heard: readonly Scored[],
  take: (goal: Goal, cue: Cue) => Taken,
): Scored | undefined {
  if (best?.kind !== 'quantity') return best;
  const others = heard.filter(
    ({ kind, id, score }) => kind === 'quantity' && id !== best.id && score >= best.score - nearly,
  );
  if (others.length === 0 || ledTo(best) !== undefined) return best;
  const led = others
    .map((goal) => ({ goal, used: ledTo(goal) ?? 0 }))
    .filter(({ used }) => used > 1)
    .sort((a, b) => b.used - a.used);
  return led[0]?.goal ?? best;

  /** How many of the figures given a goal is worked out from; undefined where it cannot be. */
  function ledTo(goal: Scored): number | undefined {
    const { facts } = take(goal, goal.cue);
    const solved = whatFollows(knowledge, knownFrom(facts));
    if (!solved.get(goal.id)?.by) return undefined;
    const rests = restsOn(solved, [goal.id]);
    return facts.filter((fact) => 'unit' in fact && rests.has(fact.quantity)).length;
  }
}
